import { expect, test } from 'vitest'

import { listenToKeys } from '@/components/map/listen-to-keys'
import { sceneOf } from '@/lib/map/scene'

import { aBlock, treesOf } from '../../lib/domain/an-orchard'

const scene = sceneOf(treesOf(['TTTT', 'TTTT']), [aBlock()])

/** What the keys ask for, written down; without a page. */
function aMap() {
  const said: string[] = []
  const element = Object.assign(new EventTarget(), {
    tabIndex: -1,
    setAttribute: () => {},
    matches: () => true,
  })
  const stop = listenToKeys(element as unknown as HTMLElement, {
    scene,
    startAt: 1,
    focus: (tree) => said.push(`at ${tree?.no}`),
    choose: (tree) => said.push(`chosen ${tree.no}`),
    zoom: (by, tree) => said.push(`${by > 0 ? 'nearer' : 'farther'} at ${tree?.no}`),
  })
  const press = (key: string, held: Partial<KeyboardEvent> = {}) => {
    const event = Object.assign(new Event('keydown', { cancelable: true }), { key, ...held })
    element.dispatchEvent(event)
    return event.defaultPrevented
  }
  return { said, press, stop, focus: () => element.dispatchEvent(new Event('focus')) }
}

test('arrows walk, Enter chooses, plus and minus zoom at the tree where one is', () => {
  const { said, press, focus } = aMap()

  focus()
  for (const key of ['ArrowUp', '+', '=', '-', 'Enter']) press(key)

  expect(said).toEqual(['at 1', 'at 2', 'nearer at 2', 'nearer at 2', 'farther at 2', 'chosen 2'])
})

test('the browser keeps its own zoom and every other key', () => {
  const { said, press } = aMap()

  expect(press('+', { ctrlKey: true })).toBe(false)
  expect(press('-', { metaKey: true })).toBe(false)
  expect(press('Tab')).toBe(false)
  expect(said).toEqual([])
})

test('whoever stops listening hears no more', () => {
  const { said, press, stop } = aMap()

  stop()

  expect(press('ArrowUp')).toBe(false)
  expect(said).toEqual([])
})
