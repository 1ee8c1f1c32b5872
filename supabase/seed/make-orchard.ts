/**
 * Writes the demo orchard's inventory, the same every time: `npx tsx supabase/seed/make-orchard.ts`.
 * The file is checked in, so that it can be read and brought in like anybody's own.
 */

import { writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

import { csvField } from '@/lib/domain/orchard/csv'
import { step } from '@/lib/domain/orchard/distance'
import type { Column } from '@/lib/domain/orchard/inventory-columns'
import type { Life, Position, Species } from '@/lib/domain/orchard/types'
import {
  type DemoBlock,
  type DemoRow,
  demoBlockSettings,
  demoBlocks,
  demoCultivars,
} from './demo-blocks'
import { randomFrom } from './random'

const thisYear = 2026
const seed = 20_261_124
let random = randomFrom(seed)

const header: readonly Column[] = [
  'block',
  'block_name',
  'row',
  'place',
  'species',
  'cultivar',
  'habit',
  'buds',
  'planted_year',
  'trunk_cm',
  'height_cm',
  'asks_saw',
  'life',
  'lat',
  'lon',
]

export function demoInventory(): string {
  random = randomFrom(seed)
  const lines = demoBlocks.flatMap((block) =>
    block.rows.flatMap((row, index) => rowLines(block, index + 1, row))
  )
  return `${[[...header], ...lines].map((line) => line.map(csvField).join(',')).join('\n')}\n`
}

type Line = (string | number | null)[]

function rowLines(block: DemoBlock, row: number, [first, last, species, planted]: DemoRow): Line[] {
  const cultivar = random.pick(demoCultivars[species])
  const places = Array.from({ length: last - first + 1 }, (_, index) => first + index)
  return places.flatMap((place): Line[] => {
    const position = positionOf(block, row, place, (place - first) / Math.max(1, last - first))
    const line = (...tree: Line): Line => {
      const [lat, lon] = position ? [position.lat.toFixed(7), position.lon.toFixed(7)] : ['', '']
      return [block.code, block.name, row, place, ...tree, lat, lon]
    }
    // A row begins and ends with a tree; within it, some places are empty and some replanted.
    const fate = place === first || place === last ? 1 : random.share()
    if (fate < 0.045) return [line('', '', '', '', null, null, null, '', 'gap')]
    const isStray = fate > 0.45 && fate < 0.56
    const own: Species = isStray ? (random.pick(block.strays) ?? species) : species
    const picked = isStray ? random.pick(demoCultivars[own]) : cultivar
    const [name, habit, buds] = picked ?? ['', 'unknown', 'unknown']
    const year = isStray ? Math.min(2024, planted + 4 + Math.floor(random.share() * 14)) : planted
    const life: Life = fate < 0.065 ? 'removed' : fate < 0.08 ? 'dead' : 'standing'
    return [line(own, name, habit, buds, year, ...sizes(own, year), life)]
  })
}

/** Trunk, height and whether it asks for a saw. Every fourth height was never measured. */
function sizes(species: Species, planted: number): Line {
  const age = thisYear - planted
  const vigour = species === 'walnut' ? 1.7 : species === 'peach' || species === 'quince' ? 0.8 : 1
  const trunkCm = Math.round((2 + age * 0.75 * vigour) * (0.85 + random.share() * 0.3))
  const grownCm = 120 + 330 * vigour * (1 - Math.exp(-age / 9))
  // Old trees were kept low enough to work on foot, most of them.
  const keptCm = species === 'walnut' || random.share() < 0.2 ? grownCm : Math.min(grownCm, 245)
  const heightCm = Math.round((keptCm * (0.88 + random.share() * 0.12)) / 5) * 5
  return [
    trunkCm,
    random.share() < 0.25 ? null : heightCm,
    trunkCm > 16 && random.share() < 0.4 ? 'yes' : 'no',
  ]
}

function positionOf(block: DemoBlock, row: number, place: number, share: number): Position | null {
  if (!block.corner) return null
  const { bearingDeg, rowSpacingM, treeSpacingM } = demoBlockSettings[block.code]
  const bearing = bearingDeg ?? 0
  const bendM = block.bendM * Math.sin(share * Math.PI + row * 0.25)
  const alongM = (place - 1) * treeSpacingM + (random.share() - 0.5) * 0.7
  const acrossM = (row - 1) * rowSpacingM + bendM + (random.share() - 0.5) * 0.6
  return step(step(block.corner, bearing, alongM), bearing + 90, acrossM)
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(new URL('orchard.csv', import.meta.url), demoInventory())
