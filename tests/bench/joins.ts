/**
 * Disease statistics on 10,000 trees in a worker of a headless Chromium. Target: who stands beside
 * whom, 999 shuffles, every figure and the scouting list in under 2 s.
 */

import { fileURLToPath } from 'node:url'

import { bundled, openChromium } from './browser'
import { type Figure, ms, print } from './figures'
import type { Timing } from './joins-worker'

const rounds = 5

export async function benchJoins(): Promise<Figure[]> {
  const browser = await openChromium()
  try {
    const page = await browser.newPage()
    const script = await bundled('joins-worker.ts')
    const timings: Timing[] = []
    // A new worker each time, as in the app: nothing is warm.
    for (let round = 0; round < rounds; round++) timings.push(await page.evaluate(inWorker, script))
    const middle = (of: keyof Timing) =>
      timings.map((timing) => timing[of]).toSorted((a, b) => a - b)[Math.floor(rounds / 2)] ?? 0
    const [survey, shuffled, plain] = [middle('surveyMs'), middle('shuffleMs'), middle('plainMs')]
    const [moran, turf] = [middle('moranMs'), middle('turfMs')]
    return [
      {
        what: 'survey of 10,000 trees, 999 shuffles',
        value: ms(survey),
        target: 'under 2 s',
        met: survey < 2000,
      },
      {
        what: '999 shuffles alone',
        value: `${ms(shuffled)}; all labels and all joins ${ms(plain)}; ${(plain / shuffled).toFixed(1)} times as fast`,
        target: 'faster',
        met: shuffled < plain,
      },
      {
        what: 'Moran’s I once, 900 trees',
        value: `${ms(moran)}; @turf/moran-index ${ms(turf)}; ${(turf / moran).toFixed(0)} times as fast`,
        target: 'faster',
        met: moran < turf,
      },
    ]
  } finally {
    await browser.close()
  }
}

/** Runs in the page. */
function inWorker(script: string): Promise<Timing> {
  const worker = new Worker(URL.createObjectURL(new Blob([script], { type: 'text/javascript' })))
  return new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => {
      worker.terminate()
      resolve(data)
    }
    worker.onerror = (event) => reject(new Error(event.message))
    worker.postMessage(null)
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) print('Disease', await benchJoins())
