import type { Metadata, Viewport } from 'next'
import { connection } from 'next/server'
import type { ReactNode } from 'react'
import './globals.css'

export const metadata: Metadata = {
  title: { default: 'Tellwright', template: '%s · Tellwright' },
  description: 'Turns a recorded service walkthrough into a step-by-step procedure, on your own machine.',
}

export const viewport: Viewport = { width: 'device-width', initialScale: 1 }

/** Every page is answered afresh, because the script nonce of its Content-Security-Policy is (see proxy.ts). */
export default async function Layout({ children }: { children: ReactNode }) {
  await connection()
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  )
}
