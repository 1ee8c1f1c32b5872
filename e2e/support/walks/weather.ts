/** Weather: as leads write it down, and as it empties the trees. */

import { routes } from '@/lib/routes'

import type { Orchard } from '../orchard'
import type { Walk } from './walk'

const wet = { temperatureC: 36, humidity: 40, gustKmh: 33, canopy: 'wet', rainInH: 6 } as const

/** Wet, hot and windy, with an exception and a forecast: everything that can be said. */
async function badDay(orchard: Orchard): Promise<void> {
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  await orchard.must('Lee', 'write_weather', wet)
  await orchard.must('Lee', 'make_exception', { what: 'pear', because: 'bark_is_dry', note: '7' })
  const from = Math.floor(Date.now() / 3_600_000) * 3_600_000
  const hours = Array.from({ length: 60 }, (_, at) => [
    new Date(from + at * 3_600_000).toISOString(),
    14,
    60,
    8,
    at % 9 === 0 ? 34 : 12,
    at === 20 ? 1.5 : 0,
  ])
  await orchard.must('Lee', 'bring_in_forecast', { hours })
}

export const walksOfWeather: readonly Walk[] = [
  {
    of: 'a lead in bad weather',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await badDay(orchard)
      return [
        routes.weather(),
        routes.shift(),
        {
          path: routes.weather(),
          press: (words) => words.weather.exceptOf(words.species.apple.many),
        },
        routes.map(),
      ]
    },
  },
  {
    of: 'a volunteer whose tree is put off',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      await badDay(orchard)
      return [
        routes.tree(1),
        { path: routes.tree(1), press: (words) => words.stop.leaveTree.iAmDown },
      ]
    },
  },
  {
    of: 'a volunteer who waits for the weather',
    who: 'Bo',
    device: 'phone',
    screens: async (orchard) => {
      await badDay(orchard)
      return [routes.nextTree()]
    },
  },
  {
    of: 'a manager who reads of an exception',
    who: 'Mo',
    device: 'desktop',
    screens: async (orchard) => {
      await badDay(orchard)
      return [routes.board(), routes.weather()]
    },
  },
]
