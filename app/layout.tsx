import type { Metadata, Viewport } from 'next'
import localFont from 'next/font/local'
import { headers } from 'next/headers'
import { connection } from 'next/server'
import type { ReactNode } from 'react'

import { BackendAddress } from '@/components/layout/BackendAddress'
import { themeScript } from '@/components/layout/device-choices'
import { requestLanguage } from '@/components/layout/request-language'
import { TilesAddress } from '@/components/layout/TilesAddress'
import { Sprite } from '@/components/ui/Sprite'
import './globals.css'

const font = localFont({
  src: './fonts/atkinson-hyperlegible-next-latin-wght-normal.woff2',
  weight: '200 800',
  display: 'swap',
  variable: '--font-file',
})

export const metadata: Metadata = {
  title: { default: 'Rowcall', template: '%s · Rowcall' },
  // Join links are secrets, and an orchard is nobody's search result.
  robots: { index: false, follow: false },
  referrer: 'no-referrer',
  formatDetection: { telephone: false },
}

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  viewportFit: 'cover',
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#fffdf7' },
    { media: '(prefers-color-scheme: dark)', color: '#1f1b16' },
  ],
}

/** Every page: its language, its theme before the first paint, the drawings, and where the backend is. */
export default async function RootLayout({ children }: { children: ReactNode }) {
  // A page made at build time would carry no nonce, and its scripts would be dead.
  await connection()
  const nonce = (await headers()).get('x-nonce') ?? undefined
  return (
    // The theme script writes data-theme before React looks at it.
    <html lang={await requestLanguage()} className={font.variable} suppressHydrationWarning>
      <head>
        {/* Browsers hide a nonce from scripts, so React would see it as changed. */}
        <script nonce={nonce} suppressHydrationWarning>
          {themeScript}
        </script>
      </head>
      <body>
        <Sprite />
        <BackendAddress
          url={process.env.ROWCALL_BACKEND_URL ?? null}
          anonKey={process.env.ROWCALL_ANON_KEY ?? null}
        />
        <TilesAddress
          url={process.env.ROWCALL_TILES ?? null}
          by={process.env.ROWCALL_TILES_BY ?? null}
        />
        {children}
      </body>
    </html>
  )
}
