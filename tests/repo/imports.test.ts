import { describe, expect, test } from 'vitest'

import { filesOfRepository, textOf } from './files'
import { type Import, importsOf } from './imports'

type Layer = { ours: readonly string[]; npm: readonly string[] }

const pure = ['lib/domain', 'lib/events', 'lib/text', 'lib/util']
/** The screens of an area, which may borrow from each other. */
const areas = [
  'components/aerial',
  'components/alarm',
  'components/board',
  'components/call',
  'components/bring-in',
  'components/brush',
  'components/count',
  'components/crew',
  'components/cuts',
  'components/day',
  'components/disease',
  'components/flags',
  'components/ground',
  'components/history',
  'components/join',
  'components/labels',
  'components/layout',
  'components/limbs',
  'components/look-over',
  'components/map',
  'components/openness',
  'components/paper',
  'components/planning',
  'components/ready',
  'components/rooms',
  'components/screens',
  'components/shift',
  'components/sync',
  'components/tree',
  'components/where',
  'components/weather',
]
const screen: Layer = {
  ours: ['components/ui', ...areas, 'lib/hooks', 'lib/routes', ...pure],
  npm: ['next', 'react'],
}

/** Each layer, and what its files may import besides their own layer. Whatever is not here is refused. */
const layers: Record<string, Layer> = {
  'lib/util': { ours: [], npm: [] },
  'lib/routes': { ours: [], npm: [] },
  // The earth as it is measured; only the screens that lay out a block fetch it.
  'lib/domain': { ours: ['lib/util'], npm: ['geographiclib-geodesic'] },
  'lib/events': { ours: ['lib/domain', 'lib/util'], npm: [] },
  'lib/data': {
    ours: ['lib/events', 'lib/domain', 'lib/util'],
    npm: ['@supabase/supabase-js', '@supabase/realtime-js'],
  },
  'lib/sync': { ours: ['lib/events', 'lib/util'], npm: ['idb'] },
  'lib/map': { ours: ['lib/domain', 'lib/util'], npm: ['leaflet'] },
  'lib/state': {
    ours: ['lib/data', 'lib/sync', 'lib/events', 'lib/domain', 'lib/util'],
    npm: [],
  },
  'lib/hooks': { ours: ['lib/state', ...pure], npm: ['react'] },
  'lib/text': { ours: ['lib/domain', 'lib/events', 'lib/util'], npm: [] },

  'lib/offline': { ours: [], npm: ['node', 'esbuild'] },

  'components/ui': { ours: ['lib/util'], npm: ['react'] },
  ...Object.fromEntries(areas.map((area) => [area, screen])),
  // Has the device keep what it has fetched.
  'components/screens': { ...screen, ours: [...screen.ours, 'lib/offline'] },
  'components/map': {
    ours: [...screen.ours, 'lib/map'],
    npm: [...screen.npm, 'leaflet', 'react-leaflet'],
  },
  // Links are shown for a phone's camera to read.
  'components/crew': { ours: screen.ours, npm: [...screen.npm, 'uqr'] },
  'components/day': { ours: screen.ours, npm: [...screen.npm, 'uqr'] },

  app: {
    ours: ['components/ui', ...areas, 'lib/hooks', 'lib/routes'],
    npm: ['next', 'react'],
  },
  proxy: { ours: [], npm: ['next'] },
  'next.config': { ours: [], npm: [] },

  'supabase/local': {
    ours: ['lib/events', 'lib/util'],
    npm: [
      '@electric-sql/pglite',
      'esbuild',
      'jose',
      'next',
      'node',
      'pg',
      'tsx',
      'uqr',
      'ws',
      'zod',
    ],
  },
  'supabase/seed': {
    ours: ['supabase/local', 'lib/data', 'lib/routes', ...pure],
    npm: ['node', 'ws'],
  },
  e2e: { ours: ['e2e/support', 'lib/routes'], npm: ['node', '@playwright/test', 'jsqr'] },
  'e2e/support': {
    ours: ['lib/data', 'lib/events', 'lib/routes', 'lib/text', 'supabase/local', 'supabase/seed'],
    npm: ['node', '@playwright/test', 'axe-core'],
  },
}

/** One file each, where two layers are put together. */
const joints: Record<string, string> = {
  // What starts the host also loads the demo and prints the links.
  'supabase/local/start.ts': 'supabase/seed',
}

const sources = filesOfRepository().filter(
  (path) => /\.(?:ts|tsx|mjs|css)$/.test(path) && !isFree(path)
)

test('every source belongs to a layer of the table, and every layer has sources', () => {
  const strays = sources.filter((path) => !Object.hasOwn(layers, layerOf(path)))
  const found = new Set(sources.map(layerOf))
  // Areas come and go.
  const empty = Object.keys(layers).filter((layer) => !found.has(layer) && !areas.includes(layer))

  expect(strays).toEqual([])
  expect(empty).toEqual([])
})

test.each(Object.keys(layers))('%s imports only what the table allows it', (layer) => {
  const own = sources.filter((path) => layerOf(path) === layer)
  const wrong = own.flatMap((path) =>
    importsOf(path, textOf(path))
      .filter((found) => !mayImport(path, found))
      .map((found) => `${path} imports ${Object.values(found)[0]}`)
  )
  expect(wrong).toEqual([])
})

describe('what the reader of imports sees', () => {
  test.each<[string, Import[]]>([
    [`import { a } from './one'`, [{ ours: 'lib/state/one' }]],
    [`import type { A } from '../data/one'`, [{ ours: 'lib/data/one' }]],
    [`import {\n  a,\n  b,\n} from '@/lib/util/one'`, [{ ours: 'lib/util/one' }]],
    [`export * from "../sync/one"`, [{ ours: 'lib/sync/one' }]],
    [`import '@/components/ui/one.css'`, [{ ours: 'components/ui/one' }]],
    [`const one = () => import('../map/one')`, [{ ours: 'lib/map/one' }]],
    [`const one = await import(\n  '@/lib/map/one'\n)`, [{ ours: 'lib/map/one' }]],
    [`type One = import('@supabase/supabase-js').One`, [{ npm: '@supabase/supabase-js' }]],
    [`import * as zod from 'zod/mini'`, [{ npm: 'zod' }]],
    [`const fs = require('node:fs')`, [{ npm: 'node' }]],
    ['await import(name)', [{ unreadable: 'name' }]],
    [`@import './one.css';`, [{ ours: 'lib/state/one' }]],
    [`// import { a } from './one'\n/* import './two' */`, []],
    [`const far = 'https://one.example/from'`, []],
  ])('%s', (text, imports) => {
    expect(importsOf('lib/state/file.ts', text)).toEqual(imports)
  })
})

function mayImport(path: string, found: Import): boolean {
  const layer = layers[layerOf(path)]
  if (!layer || 'unreadable' in found) return false
  if ('npm' in found) return layer.npm.includes(found.npm)
  const target = layerOf(found.ours)
  return target === layerOf(path) || target === joints[path] || layer.ours.includes(target)
}

/** The layer of a path, with or without its ending: the most exact one. */
function layerOf(path: string): string {
  const [first = '', second = '', third] = path.replace(/\.(?:ts|tsx|mjs|css)$/, '').split('/')
  const isOneFolder = first === 'app' || (first === 'e2e' && third === undefined)
  return isOneFolder || second === '' ? first : `${first}/${second}`
}

/** Tests look at everything. */
function isFree(path: string): boolean {
  return path.startsWith('tests/') || path === 'next-env.d.ts'
}
