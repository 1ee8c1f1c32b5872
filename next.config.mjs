const leftOut = './lib/data/left-out.ts'

/** @type {import('next').NextConfig} */
export default {
  reactStrictMode: true,
  poweredByHeader: false,
  // `npm test` has read them in a step of its own, with `npm run types`.
  typescript: { ignoreBuildErrors: process.env.ROWCALL_TYPES_READ === '1' },
  // The service worker answers for the whole site, so its address is at the top.
  rewrites: async () => [{ source: '/sw.js', destination: '/_next/static/sw.js' }],
  turbopack: {
    resolveAlias: {
      // Comes when somebody listens: see lib/data/client.ts.
      '@supabase/realtime-js': leftOut,
      '@supabase/storage-js': leftOut,
      '@supabase/functions-js': leftOut,
      // As @supabase/auth-js writes them; nothing of ours may be called so.
      './GoTrueAdminApi': leftOut,
      './lib/webauthn': leftOut,
    },
  },
}
