import type { MetadataRoute } from 'next'

import icon192 from './icons/icon-192.png'
import icon512 from './icons/icon-512.png'
import iconMaskable from './icons/icon-maskable-512.png'

/** What a phone needs to keep Rowcall on its home screen. */
export default function manifest(): MetadataRoute.Manifest {
  return {
    name: 'Rowcall',
    short_name: 'Rowcall',
    start_url: '/',
    display: 'standalone',
    background_color: '#fffdf7',
    theme_color: '#fffdf7',
    icons: [
      { src: icon192.src, sizes: '192x192', type: 'image/png' },
      { src: icon512.src, sizes: '512x512', type: 'image/png' },
      { src: iconMaskable.src, sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  }
}
