/**
 * Canopy openness of a photo of one and a half megapixels in a headless Chromium, as it is and slowed
 * four times, on the page itself, since only the page is slowed: where no worker comes it is there,
 * too. Targets: under 1 s slowed, within two points.
 */

import { fileURLToPath } from 'node:url'

import { bundled, openChromium } from './browser'
import { type Figure, ms, print, share } from './figures'
import type { Measured, OpennessBench } from './openness-page'

declare const bench: OpennessBench

const rounds = 7

export async function benchOpenness(): Promise<Figure[]> {
  const browser = await openChromium()
  try {
    const page = await browser.newPage()
    await page.setContent(`<!doctype html><script>${await bundled('openness-page.ts')}</script>`)
    const devtools = await page.context().newCDPSession(page)
    await page.evaluate(() => bench.make())
    const figures: Figure[] = []
    for (const [slowedTimes, mostMs] of [
      [1, 250],
      [4, 1000],
    ] as const) {
      await devtools.send('Emulation.setCPUThrottlingRate', { rate: slowedTimes })
      const measured: Measured[] = []
      for (let round = 0; round < rounds; round++)
        measured.push(await page.evaluate(() => bench.measure()))
      const took = share(
        measured.map((one) => one.ms),
        0.5
      )
      const error = measured[0]?.errorPoints ?? Number.NaN
      figures.push({
        what: `1.5 megapixels${slowedTimes === 1 ? '' : `, slowed ${slowedTimes} times`}`,
        value: `${ms(took)}; off by ${error.toFixed(2)} points`,
        target: `under ${ms(mostMs)}, 2 points`,
        met: took < mostMs && error <= 2,
      })
    }
    return figures
  } finally {
    await browser.close()
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) print('Openness', await benchOpenness())
