/** Files under a versioned folder never change; everything else is asked for anew. */
const forGood = [{ key: 'Cache-Control', value: 'public, max-age=31536000, immutable' }]

const everywhere = [
  { key: 'X-Content-Type-Options', value: 'nosniff' },
  { key: 'Referrer-Policy', value: 'no-referrer' },
  { key: 'Cross-Origin-Opener-Policy', value: 'same-origin' },
  { key: 'Cross-Origin-Resource-Policy', value: 'same-origin' },
  { key: 'Permissions-Policy', value: 'camera=(), microphone=(), geolocation=()' },
]

/** @type {import('next').NextConfig} */
const config = {
  reactStrictMode: true,
  poweredByHeader: false,
  devIndicators: false,
  productionBrowserSourceMaps: false,
  // Server and browser are on one machine: packing 4 MB of models and lexicons takes longer than handing them over.
  compress: false,
  headers: async () => [
    { source: '/:path*', headers: everywhere },
    { source: '/vendor/:path*', headers: forGood },
  ],
}

export default config
