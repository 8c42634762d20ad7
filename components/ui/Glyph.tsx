import type { ReactNode } from 'react'
import type { Kind } from '@/lib/procedure/kinds'

/** Own drawings on a 16 px field, one stroke weight. */
const DRAWINGS: Readonly<Record<Kind, ReactNode>> = {
  step: (
    <>
      <path d="M2.5 3.5 4 2.5v5" />
      <path d="m6 11 3 3 5.5-8" />
    </>
  ),
  caution: <path d="M8 2.2 14.6 13.6H1.4Z M8 6.4v3.4 M8 11.6v.4" />,
  spec: <path d="M1.5 3v10 M14.5 3v10 M2.5 8h11 M5 5.8 2.5 8 5 10.2 M11 5.8 13.5 8 11 10.2" />,
  tool: <path d="M6.2 14.3V9.6C3.6 8.8 2.6 6 3.6 3.4L6 5.2h4l2.4-1.8c1 2.6 0 5.4-2.6 6.2v4.7" />,
  material: <path d="M2 2h12v12H2Z M8 4.5c2 2.5 2.8 3.6 2.8 4.9a2.8 2.8 0 0 1-5.6 0C5.2 8.1 6 7 8 4.500Z" />,
  check: <path d="M1.5 6.500C5 2.3 11 2.3 14.5 6.5 11 10.7 5 10.7 1.5 6.500Z M8 5.200v2.6 M2 14h12" />,
  reason: <path d="M2.5 13.500V7.500a3 3 0 0 1 3-3h7.5 M10 1.500l3 3-3 3" />,
  symptom: <path d="M1 9h3.500l2-4 1 3 M9 7l1.5 5L12 9h3" />,
}

/** The glyph of a kind. Decorative: the word always stands beside it or in the label around it. */
export const Glyph = ({ kind, size = 16 }: { readonly kind: Kind; readonly size?: number }) => (
  <svg
    aria-hidden="true"
    width={size}
    height={size}
    viewBox="0 0 16 16"
    fill="none"
    stroke="currentColor"
    strokeWidth="1.4"
    strokeLinecap="round"
    strokeLinejoin="round"
  >
    {DRAWINGS[kind]}
  </svg>
)
