import { expect, test } from 'vitest'

import { countFlagsThatWait, flagsInOrder, keepOutToLeave } from '@/lib/state/flags'
import { startingView, type View } from '@/lib/state/view'

import { aFlag, ann, aState, bo, idOf, later } from '../events/a-state'

const [hazard, danger, old, sick] = [idOf('h'), idOf('d'), idOf('o'), idOf('s')]

function viewOf(flags: NonNullable<View['state']>['flags']): View {
  return {
    ...startingView,
    state: aState({ flags }),
    me: { personId: ann } as View['me'],
  }
}

test('hazards come first, then danger now, then what waits longest', () => {
  const view = viewOf({
    [sick]: { ...aFlag(1, 'disease'), severity: 'danger_now' },
    [hazard]: { ...aFlag(2, 'arborist'), raisedAt: later },
    [old]: aFlag(3, 'arborist'),
    [danger]: { ...aFlag(4, 'arborist'), severity: 'danger_now', raisedAt: later },
  })

  expect(flagsInOrder(view).map(({ id }) => id)).toEqual([danger, old, hazard, sick])
})

test('a lead is waited for until they confirmed, wrote what is done, and saw everybody out', () => {
  const out = { tree: 2, out: true }
  const waiting = viewOf({
    [sick]: aFlag(1, 'disease'),
    [hazard]: aFlag(2, 'arborist'),
    [old]: { ...aFlag(3, 'arborist'), notes: 1, inside: { [bo]: { tree: 2, out: false } } },
  })
  const seenTo = viewOf({
    [sick]: { ...aFlag(1, 'disease'), state: 'confirmed' },
    [hazard]: { ...aFlag(2, 'arborist'), notes: 1, inside: { [bo]: out } },
    // Somebody who was put out since answers nothing any more.
    [old]: {
      ...aFlag(3, 'arborist'),
      notes: 1,
      inside: { [idOf('gone')]: { ...out, out: false } },
    },
  })

  expect(countFlagsThatWait(waiting)).toBe(3)
  expect(countFlagsThatWait(seenTo)).toBe(0)
})

test('I leave the keep-out that I was told first, until I said that I am out', () => {
  const inside = (isOut: boolean) => ({ [ann]: { tree: 2, out: isOut } })
  const first = { ...aFlag(1, 'arborist'), inside: inside(false) }
  const second = { ...aFlag(3, 'arborist'), raisedAt: later, inside: inside(false) }

  const both = viewOf({ [danger]: second, [hazard]: first })
  const one = viewOf({ [danger]: second, [hazard]: { ...first, inside: inside(true) } })
  const none = viewOf({ [hazard]: { ...first, inside: { [bo]: { tree: 2, out: false } } } })

  expect(keepOutToLeave(both)?.id).toBe(hazard)
  expect(keepOutToLeave(one)?.id).toBe(danger)
  expect(keepOutToLeave(none)).toBeNull()
})
