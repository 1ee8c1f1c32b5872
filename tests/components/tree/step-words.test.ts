import { describe, expect, test } from 'vitest'

import { originWords, stepWords } from '@/components/tree/step-words'
import { species } from '@/lib/domain/orchard/types'
import { shoots } from '@/lib/domain/pruning/last-years-wood'
import { factsOf } from '@/lib/domain/pruning/species-facts'
import { stepCodes, type WorkStep } from '@/lib/domain/pruning/work-card'
import { crew as en } from '@/lib/text/en/crew'
import { crew as es } from '@/lib/text/es/crew'
import { formatFor } from '@/lib/text/format'

const origin = { source: null, trust: 'practice' } as const
const share = { least: 0.4, most: 0.5 }

/** Every step there can be. */
const steps: WorkStep[] = stepCodes.flatMap((code): WorkStep[] => {
  if (code === 'last_years_wood') return shoots.map((what) => ({ code, what, usual: null, origin }))
  if (code === 'renew_shoots') return [{ code, share, origin }]
  if (code === 'renew_spurs')
    return (['pome', 'stone'] as const).map((spurs) => ({ code, share, spurs, origin }))
  return [{ code, origin }]
})

describe.each([
  ['en', en],
  ['es', es],
] as const)('in %s', (language, words) => {
  const metric = formatFor({ language, units: 'metric', timeZone: 'UTC' })
  const us = formatFor({ language, units: 'us', timeZone: 'UTC' })

  test('every step says what to look for, to do and never to do, why, and what the picture shows', () => {
    for (const step of steps) {
      const said = stepWords(words, metric, step)
      const sentences = [said.title, said.look, ...said.do, said.never, said.why, said.done]
      for (const sentence of [...sentences, said.picture])
        expect(sentence, JSON.stringify(step)).toMatch(/\S{2}/)
    }
  })

  test('what may never be shortened is never told to go', () => {
    for (const what of shoots.filter((each) => !each.startsWith('outer'))) {
      const said = stepWords(words, metric, { code: 'last_years_wood', what, usual: null, origin })
      expect(said.do.join(' ')).not.toMatch(/can go|Se puede quitar/)
    }
  })

  test('lengths are in the reader’s unit', () => {
    const step: WorkStep = { code: 'renew_shoots', share, origin }
    expect(stepWords(words, metric, step).do.join(' ')).toMatch(/30 cm.*60 cm/)
    expect(stepWords(words, us, step).do.join(' ')).toMatch(/12 in.*24 in/)
  })

  test('of a tip-bearing apple the long shoots may be cut to a bud, the short ones stay', () => {
    const step: WorkStep = { code: 'last_years_wood', what: 'leave_short', usual: null, origin }
    expect(stepWords(words, metric, step).do.join(' ')).toContain('23 cm')
    expect(stepWords(words, us, step).do.join(' ')).toContain('9 in')
  })

  test('every fact of a species says where it is from', () => {
    for (const each of species) {
      const { bornOn, spurYears, take, form, season } = factsOf(each)
      for (const fact of [bornOn, ...(spurYears ? [spurYears] : []), take, form, season])
        expect(originWords(words, fact)).toMatch(/\S{3}/)
    }
  })
})

test('what was read names its source, what was seen second hand says so too', () => {
  expect(originWords(en, { source: 'wisconsin', trust: 'read' })).toBe(
    'Wisconsin woodland programme'
  )
  expect(originWords(en, { source: 'wisconsin', trust: 'second_hand' })).toContain('Second hand')
  expect(originWords(en, { source: null, trust: 'not_confirmed' })).toContain('not agree')
})
