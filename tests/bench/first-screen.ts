/** What a volunteer's phone loads before the first screen can be used: over 1.6 Mbit/s, 150 ms, processor slowed four times. */

import { type CDPSession, chromium } from '@playwright/test'

import { findChromium } from '../support/find-programs.mjs'
import { atMost, type Figure, kB, noted } from './figures'

const line = {
  latency: 150,
  downloadThroughput: 1.6e6 / 8,
  uploadThroughput: 750e3 / 8,
  offline: false,
}
const slowedTimes = 4

export async function benchFirstScreen(joinLink: string): Promise<Figure[]> {
  const executablePath = findChromium()
  if (!executablePath)
    throw new Error('The first screen is measured in Chromium, and none was found.')
  const browser = await chromium.launch({
    executablePath,
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  })
  try {
    const page = await browser.newPage({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    })
    const devtools = await page.context().newCDPSession(page)
    const weighed = weigh(devtools)
    await devtools.send('Network.enable')
    await devtools.send('Network.emulateNetworkConditions', line)
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowedTimes })
    const startedAt = performance.now()
    await page.goto(joinLink, { waitUntil: 'commit' })
    const name = page.getByRole('textbox').first()
    await name.waitFor()
    // Server-rendered fields are there before React is; usable is when React has them.
    await page.waitForFunction(() => {
      const field = document.querySelector('input')
      return field && Object.keys(field).some((key) => key.startsWith('__reactProps'))
    })
    const usableS = (performance.now() - startedAt) / 1000
    await page.waitForLoadState('networkidle')
    return [
      atMost('JavaScript of the first screen, gzipped', weighed.scripts, 215_000, kB),
      noted('everything it loads', kB(weighed.all)),
      atMost('first screen usable', usableS, 3, (value) => `${value.toFixed(2)} s`),
    ]
  } finally {
    await browser.close()
  }
}

function weigh(devtools: CDPSession): { scripts: number; all: number } {
  const weighed = { scripts: 0, all: 0 }
  const scripts = new Set<string>()
  devtools.on('Network.responseReceived', ({ requestId, type }) => {
    if (type === 'Script') scripts.add(requestId)
  })
  devtools.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    weighed.all += encodedDataLength
    if (scripts.has(requestId)) weighed.scripts += encodedDataLength
  })
  return weighed
}
