import { type NextRequest, NextResponse } from 'next/server'

/**
 * The Content-Security-Policy of every page: nothing comes from, and nothing goes to, another origin. Scripts need the
 * nonce of their own answer; WebAssembly may be compiled; the user's own footage plays from blob addresses.
 *
 * @source W3C Content Security Policy Level 3
 */
const policy = (nonce: string, isDevelopment: boolean): string =>
  [
    "default-src 'none'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic' 'wasm-unsafe-eval'${isDevelopment ? " 'unsafe-eval'" : ''}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "media-src 'self' blob:",
    "font-src 'self' data:",
    "connect-src 'self' blob: data:",
    "worker-src 'self' blob:",
    "frame-src 'self' blob:",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ')

export const proxy = (request: NextRequest): NextResponse => {
  const nonce = crypto.randomUUID().replaceAll('-', '')
  const value = policy(nonce, process.env.NODE_ENV === 'development')
  const headers = new Headers(request.headers)
  headers.set('Content-Security-Policy', value)
  const response = NextResponse.next({ request: { headers } })
  response.headers.set('Content-Security-Policy', value)
  return response
}

export const config = { matcher: ['/((?!_next/static|vendor/|demo/|icon).*)'] }
