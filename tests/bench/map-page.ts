/** Runs in the browser: ten or a hundred thousand trees, drawn by our layer and by Leaflet's best general way. */

import L from 'leaflet'

import type { Look, Status, TreeLooks } from '@/lib/domain/orchard/status'
import type { Block, Tree } from '@/lib/domain/orchard/types'
import { OrchardLayer } from '@/lib/map/orchard-layer'
import { type Scene, sceneOf } from '@/lib/map/scene'
import { PagedMap } from '@/lib/util/paged-map'

const rows = 100
const places = 100
const colours: Record<Status, string> = {
  unpruned: '#524839',
  in_progress: '#0a4c8a',
  done: '#105030',
  disease: '#86175a',
  arborist: '#c03a00',
}
const statuses = Object.keys(colours) as Status[]

/** Blocks of ten thousand trees each, five side by side. */
function orchardOf(blockCount: number): { blocks: Block[]; trees: Tree[] } {
  const blocks = Array.from({ length: blockCount }, (_, at) => blockAt(at))
  const trees = blocks.flatMap((block, at) =>
    Array.from({ length: rows * places }, (_, index) => treeAt(block, at, index))
  )
  return { blocks, trees }
}

function blockAt(at: number): Block {
  const [east, north] = [at % 5, Math.floor(at / 5)]
  return {
    no: at + 1,
    code: `B${at + 1}`,
    name: `Bench ${at + 1}`,
    rowSpacingM: 6,
    treeSpacingM: 5,
    bearingDeg: 12,
    firstTree: { lat: 41.05 + north * 0.006, lon: -97.9 + east * 0.0078 },
    taggedEnd: 'low',
  }
}

function treeAt(block: Block, at: number, index: number): Tree {
  return {
    no: at * rows * places + index + 1,
    block: block.no,
    row: Math.floor(index / places) + 1,
    place: (index % places) + 1,
    species: 'apple',
    cultivar: null,
    sizeClass: 'medium',
    plantedYear: null,
    heightCm: null,
    trunkCm: null,
    asksSaw: false,
    life: 'standing',
    position: null,
  }
}

let { blocks, trees } = orchardOf(1)
/** Only to know where the middle is: each contender does its own work inside the clock. */
let plane: Scene = sceneOf(trees, blocks)
let zoom = 18

type Contender = {
  add: (map: L.Map) => void
  /** Gives one tree another status. */
  change: (no: number, status: Status) => void
}

let map: L.Map | null = null
let contender: Contender | null = null

const bench = {
  setUp(blockCount: number, atZoom: number): void {
    zoom = atZoom
    if (blocks.length === blockCount) return
    ;({ blocks, trees } = orchardOf(blockCount))
    plane = sceneOf(trees, blocks)
  },

  /** Builds and draws everything; ends when the second frame is over. */
  async firstDraw(name: 'ours' | 'circles'): Promise<number> {
    map?.remove()
    map = emptyMap()
    await twoFrames()

    const start = performance.now()
    contender = name === 'ours' ? ours() : circles()
    contender.add(map)
    await twoFrames()
    return performance.now() - start
  },

  /** Script time of one tree's change, the painting of its frame included. */
  async oneChange(no: number): Promise<number> {
    const status = statuses[no % statuses.length] ?? 'done'
    let paintStart = 0
    requestAnimationFrame(() => {
      paintStart = performance.now()
    })
    const start = performance.now()
    contender?.change(no, status)
    const changeMs = performance.now() - start
    // Callbacks of one frame run in the order they were asked for: ours around the layer's.
    return new Promise((resolve) =>
      requestAnimationFrame(() => resolve(changeMs + performance.now() - paintStart))
    )
  },

  /** From asking for another zoom to the end of the frame that shows it. */
  async zoomStep(by: number): Promise<number> {
    const start = performance.now()
    map?.setZoom((map?.getZoom() ?? 18) + by, { animate: false })
    await twoFrames()
    return performance.now() - start
  },

  /** Notes the length of every frame until it is told to stop. */
  watchFrames(): void {
    const lengths: number[] = []
    let last = performance.now()
    let isWatching = true
    const note = () => {
      const now = performance.now()
      lengths.push(now - last)
      last = now
      if (isWatching) requestAnimationFrame(note)
    }
    requestAnimationFrame(note)
    bench.stopWatching = () => {
      isWatching = false
      return lengths.slice(1)
    }
  },
  stopWatching: (): number[] => [],
}

export type Bench = typeof bench
Object.assign(window, { bench })

function emptyMap(): L.Map {
  const made = L.map('map', {
    zoomControl: false,
    attributionControl: false,
    zoomAnimation: false,
    fadeAnimation: false,
    inertia: false,
    maxZoom: 24,
    preferCanvas: true,
  })
  const { minX, minY, maxX, maxY } = plane.box
  const { lat, lon } = plane.plane.leafletAt({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 })
  return made.setView([lat, lon], zoom)
}

function ours(): Contender {
  const layer = new OrchardLayer(sceneOf(trees, blocks), 'not surveyed')
  let looks: TreeLooks = PagedMap.empty()
  looks = looks.with(trees.map(({ no }) => [no, lookOf(statusAt(no))] as const))
  layer.setLooks(looks)
  return {
    add: (onto) => layer.addTo(onto),
    change: (no, status) => {
      looks = looks.with([[no, lookOf(status)]])
      layer.setLooks(looks)
    },
  }
}

/** Positions are given to it for free; we compute ours. */
function circles(): Contender {
  const markers = trees.map((tree, index) => {
    const { lat, lon } = plane.plane.leafletAt({ x: plane.xs[index] ?? 0, y: plane.ys[index] ?? 0 })
    return L.circleMarker([lat, lon], { radius: 4, weight: 1.5, color: colours[statusAt(tree.no)] })
  })
  return {
    add: (onto) => L.layerGroup(markers).addTo(onto),
    change: (no, status) => markers[no - 1]?.setStyle({ color: colours[status] }),
  }
}

function statusAt(no: number): Status {
  return statuses[(no * 7) % statuses.length] ?? 'unpruned'
}

function lookOf(status: Status): Look {
  return {
    status,
    badge: null,
    dealtToMe: false,
    heldByMe: false,
    dealtTo: [],
    closed: false,
    initials: [],
  }
}

function twoFrames(): Promise<void> {
  return new Promise((resolve) =>
    requestAnimationFrame(() => requestAnimationFrame(() => resolve()))
  )
}
