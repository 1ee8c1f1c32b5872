/** A headless Chromium for a bench, and our code bundled for it. */

import { fileURLToPath } from 'node:url'
import { type Browser, chromium } from '@playwright/test'
import { build } from 'esbuild'

import { findChromium } from '../support/find-programs.mjs'

const args = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
]

export async function openChromium(): Promise<Browser> {
  const executablePath = findChromium()
  if (!executablePath) throw new Error('This is measured in Chromium, and none was found.')
  return chromium.launch({ executablePath, args })
}

/** One script of a file beside this one and all that it needs. */
export async function bundled(file: string): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL(file, import.meta.url))],
    bundle: true,
    minify: true,
    write: false,
    alias: { '@': fileURLToPath(new URL('../..', import.meta.url)) },
    logLevel: 'silent',
  })
  return outputFiles[0]?.text.replaceAll('</script', '<\\/script') ?? ''
}
