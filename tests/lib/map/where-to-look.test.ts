import type { Map as LeafletMap } from 'leaflet'
import { expect, test } from 'vitest'

import { sceneOf } from '@/lib/map/scene'
import { begin } from '@/lib/map/where-to-look'

import { aBlock, treesOf } from '../domain/an-orchard'

const scene = sceneOf(treesOf(['TTTT', 'TTTT']), [aBlock()])

test('everything is shown again when the box gets its final size', () => {
  const { map, looks, tell } = aMap()
  begin(map, scene, null)

  tell('resize')

  expect(looks).toEqual(['all', 'all'])
})

test.each(['movestart', 'click'])('after a %s nothing jumps any more', (touch) => {
  const { map, looks, tell } = aMap()
  begin(map, scene, null)

  tell(touch)
  tell('resize')

  expect(looks).toEqual(['all'])
})

test('a map at the next tree stays there', () => {
  const { map, looks, tell } = aMap()
  begin(map, scene, 1)
  begin(map, scene, null)

  tell('resize')

  expect(looks).toEqual(['tree'])
})

test('whoever stops listening hears no more', () => {
  const { map, looks, tell } = aMap()
  const stop = begin(map, scene, null)

  stop()
  tell('resize')

  expect(looks).toEqual(['all'])
})

/** What of Leaflet's map is used: it tells of a move also when the page moved it. */
function aMap() {
  const hears = new Map<string, Set<() => void>>()
  const looks: string[] = []
  const tell = (event: string) => {
    for (const hear of [...(hears.get(event) ?? [])]) hear()
  }
  const look = (what: string) => () => {
    looks.push(what)
    tell('movestart')
  }
  const map = {
    on(events: string, hear: () => void) {
      for (const event of events.split(' '))
        hears.set(event, new Set([...(hears.get(event) ?? []), hear]))
      return map
    },
    off(events: string, hear: () => void) {
      for (const event of events.split(' ')) hears.get(event)?.delete(hear)
      return map
    },
    fitBounds: look('all'),
    setView: look('tree'),
    getSize: () => ({ x: 390, y: 300 }),
    getMaxZoom: () => 24,
  }
  return { map: map as unknown as LeafletMap, looks, tell }
}
