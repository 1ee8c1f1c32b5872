/**
 * Pictures of every component, to be looked at: `npx tsx tests/components/gallery/look.tsx`
 * writes them to test-results/gallery, in both languages and both themes.
 */

import { mkdirSync, writeFileSync } from 'node:fs'
import { resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { chromium } from '@playwright/test'
import { build } from 'esbuild'
import type { ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'

import { Sprite } from '@/components/ui/Sprite'
import { languages } from '@/lib/text/language'
import { leadMessages, messages } from '@/lib/text/messages'
import { Gallery } from './Gallery'
import { PhoneScreen, WideScreen } from './Screens'

const folder = resolve('test-results/gallery')
const fontFile = resolve('app/fonts/atkinson-hyperlegible-next-latin-wght-normal.woff2')
const flags = ['--disable-gpu', '--disable-quic', '--no-first-run', '--no-sandbox']

const css = await stylesheet()
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: flags })
mkdirSync(folder, { recursive: true })
for (const language of languages) {
  const text = await messages(language)
  const lead = await leadMessages(language)
  for (const theme of ['light', 'dark']) {
    const look = { language, theme }
    await picture('gallery', 1100, 900, look, <Gallery text={text} />)
    await picture('phone', 390, 844, look, <PhoneScreen text={text} />)
    await picture('small-phone', 320, 568, look, <PhoneScreen text={text} />)
    await picture('tablet', 820, 1180, look, <WideScreen text={text} lead={lead} />)
    await picture('laptop', 1440, 900, look, <WideScreen text={text} lead={lead} />)
  }
}
await browser.close()
console.log(`Pictures are in ${folder}`)

async function picture(
  name: string,
  width: number,
  height: number,
  { language, theme }: { language: string; theme: string },
  content: ReactNode
): Promise<void> {
  const file = `${folder}/${name}-${language}-${theme}`
  writeFileSync(`${file}.html`, page(language, theme, renderToStaticMarkup(content)))
  const view = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: 2 })
  await view.goto(pathToFileURL(`${file}.html`).href)
  await view.evaluate(() => document.fonts.ready)
  const overflow = await view.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  if (overflow > 0) console.log(`${file} is ${overflow} px too wide`)
  await view.screenshot({ path: `${file}.png`, fullPage: true })
  await view.close()
}

async function stylesheet(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: ['app/globals.css'],
    bundle: true,
    write: false,
  })
  return outputFiles[0]?.text ?? ''
}

function page(language: string, theme: string, body: string): string {
  return `<!doctype html><html lang="${language}" data-theme="${theme}"><meta charset="utf-8"><style>
    @font-face { font-family: 'Atkinson Hyperlegible Next'; font-weight: 200 800; src: url('${pathToFileURL(fontFile)}') }
    ${css}
    .gallery { background: var(--paper); padding: 24px; display: grid; gap: 24px }
    .gallery .group { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 18px; align-items: start }
    .gallery .icons { flex-wrap: wrap; grid-column: 1 / -1 } .gallery .net { margin: 0; justify-self: start }
    .gallery .mapbox { height: 140px }
  </style>${renderToStaticMarkup(<Sprite />)}${body}</html>`
}
