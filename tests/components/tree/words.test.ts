import { describe, expect, test } from 'vitest'

import { refusalWords } from '@/components/sync/refusal-words'
import { keptWords, writtenIn } from '@/components/tree/kept-words'
import { commandOf } from '@/lib/events/commands'
import { crew as en } from '@/lib/text/en/crew'
import { crew as es } from '@/lib/text/es/crew'

const naming = {
  tree: (no: number) => `S 7·${no}`,
  person: (id: string) => ({ teo: 'Teo', ines: 'Inés' })[id] ?? 'Somebody',
  tool: (no: number) => `P${no}`,
  block: () => 'S',
  clock: () => '10:42',
}

describe('a refusal in words', () => {
  test('names who was first and what to take instead', () => {
    const refusal = { code: 'tree_held', detail: { tree: 14, person: 'teo' } }

    expect(refusalWords(en, refusal, naming, { take: 15 })).toBe('Teo holds S 7·14. Take S 7·15.')
    expect(refusalWords(es, refusal, naming, { take: 15 })).toBe('Teo tiene S 7·14. Toma S 7·15.')
  })

  test('about a neighbour speaks of the tree that was asked for', () => {
    const refusal = { code: 'inside_keep_out', detail: { tree: 11 } }

    expect(refusalWords(en, refusal, naming, { tree: 14 })).toContain('S 7·14')
    expect(refusalWords(en, refusal, naming, { tree: 14 })).not.toContain('S 7·11')
  })

  test('a detail from another day is left out, not shown raw', () => {
    const refusal = { code: 'tree_held', detail: { tree: { no: 14 }, person: 7 } }

    expect(refusalWords(en, refusal, naming)).toBe('Somebody holds this tree. Take another.')
  })
})

describe('what is kept', () => {
  const whose = { id: 'a', orchardId: 'b', personId: 'c' }
  const kept = { tag: naming.tree, tool: naming.tool }

  test('is called by what was done to which tree', () => {
    const finish = commandOf('finish_tree', { tree: 14 }, whose)
    const flag = commandOf(
      'flag_tree',
      { tree: 14, kind: 'disease', sign: 'gum', severity: 'low', note: 'at the fork' },
      whose
    )

    expect(keptWords(en, finish, kept).title).toBe('Tree S 7·14 finished')
    expect(keptWords(en, flag, kept)).toMatchObject({
      title: 'S 7·14 flagged for disease',
      detail: 'Gum',
    })
    expect(writtenIn(flag)).toBe('at the fork')
    expect(writtenIn(finish)).toBeNull()
  })

  test('a call for help says what for, with the words that were written', () => {
    const call = commandOf('call_for_help', { kind: 'tool', note: 'the saw sticks' }, whose)
    expect(keptWords(en, call, kept).title).toBe('Call for help: A tool')
    expect(writtenIn(call)).toBe('the saw sticks')
  })

  test('half done and not begun are told apart', () => {
    const left = (share: number | null) =>
      keptWords(en, commandOf('release_tree', { tree: 14, share }, whose), kept).title

    expect(left(50)).toBe('Tree S 7·14 left half done')
    expect(left(null)).toBe('S 7·14 given back')
  })
})
