import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

import { type AuditNaming, auditDetail } from '../../../components/rooms/audit-detail'
import { auditGroups } from '../../../components/rooms/audit-groups'
import { audit as en } from '../../../lib/text/en/audit'
import { audit as es } from '../../../lib/text/es/audit'

const [ann, lee, claim, flag] = ['ann', 'lee', 'a-claim', 'a-flag']
const naming: AuditNaming = {
  person: (id) => ({ ann: 'Ann', lee: 'Lee', bo: 'Bo' })[id] ?? 'somebody',
  tree: (no) => `A 1·${no}`,
  block: () => 'A',
  tool: (no) => `P${no}`,
  day: (date) => `day ${date}`,
  minutes: (seconds) => `${seconds / 60} min`,
  share: (percent) => `${percent} %`,
  metres: (metres) => `${metres} m`,
  list: (words) => words.join(' and '),
  round: (kind, season) => `${kind} ${season}`,
  role: (code) => code,
  skill: (code) => code,
  inviteKind: (code) => (code === 'role' ? 'for a lead or manager' : undefined),
  callKind: (code) => code,
  offWhat: (code) => code,
  offReason: (code) => (code === 'wind' ? 'of the wind' : undefined),
  reopenReason: (code) => (code === 'stubs_left' ? 'stubs left' : undefined),
  sign: (_, sign) => sign,
  setting: (field) => ({ name: 'name', houseRules: 'house rules' })[field],
}
const known = { claims: { [claim]: 7 }, flags: { [flag]: 9 }, shifts: {}, rounds: {} }

function said(kind: keyof typeof en.sentence, body: object, leadBody: object | null = null) {
  const event = { n: 1, at: '2026-11-24T10:00:00.000Z', personId: ann, byPersonId: lee }
  return en.sentence[kind](auditDetail({ ...event, kind, body, leadBody }, known, naming))
}

describe('an event in a sentence', () => {
  test.each([
    [
      'tree_finished',
      { tree: 5, work: [[5, 'done', null]] },
      { seconds: 720 },
      'Ann finished A 1·5, 12 min',
    ],
    ['tree_released', { tree: 5, work: [[5, 'begun', 40]] }, null, 'Ann left A 1·5 40 % done'],
    ['tree_joined', { claim, person: 'bo' }, null, 'Bo joined at A 1·7'],
    [
      'tree_looked_over',
      null,
      { tree: 5, result: 'passed' },
      'Lee looked over A 1·5 and passed it',
    ],
    [
      'tree_looked_over',
      { tree: 5 },
      { result: 'reopened', reason: 'stubs_left' },
      'Lee reopened A 1·5: stubs left',
    ],
    ['flag_confirmed', { flag, sign: 'canker' }, null, 'Lee confirmed the flag at A 1·9: canker'],
    ['trees_dealt', { trees: [1, 2], to: ['bo'] }, null, 'Lee dealt A 1·1 and A 1·2 to Bo'],
    [
      'skill_granted',
      null,
      { person: ann, skill: 'ladder', until: '2027-01-01' },
      'Lee granted Ann the skill ladder until day 2027-01-01',
    ],
    [
      'off_changed',
      { what: 'ladder', reason: 'wind' },
      null,
      'Lee said: no ladder today, because of the wind',
    ],
    ['off_changed', { what: 'ladder', reason: null }, null, 'Lee said: ladder again'],
    [
      'orchard_changed',
      { name: 'X', houseRules: {} },
      null,
      'Lee changed the settings: name and house rules',
    ],
    ['shift_closed', { shift: 's' }, { notFound: ['bo'] }, 'Lee closed the shift; not found: Bo'],
    ['person_forgotten', { person: ann }, null, 'Lee forgot a name'],
  ] as const)('%s %j %j', (kind, body, leadBody, sentence) => {
    expect(said(kind, body ?? {}, leadBody)).toBe(sentence)
  })

  test('whatever is missing in it, no sentence shows a hole', () => {
    const event = { n: 1, at: '2026-11-24T10:00:00.000Z', personId: ann, byPersonId: lee }
    for (const audit of [en, es]) {
      for (const [kind, say] of Object.entries(audit.sentence)) {
        const detail = auditDetail({ ...event, kind, body: null, leadBody: 'odd' }, known, naming)
        expect(say(detail), kind).not.toMatch(/undefined|null|NaN|\[object/)
      }
    }
  })
})

test('every kind of event that the referee writes has a sentence, and a group to be found in', () => {
  const folder = 'supabase/migrations'
  const sql = readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`, 'utf8'))
  const kinds = new Set(
    sql.flatMap((text) =>
      [...text.matchAll(/private\.accept\(\s*v?p?_?c, '([a-z_]+)'/g)].map(([, kind]) => kind)
    )
  )
  const grouped = Object.values(auditGroups).flat().sort()

  expect(kinds.size).toBeGreaterThan(60)
  expect([...kinds].filter((kind) => !Object.hasOwn(en.sentence, kind ?? ''))).toEqual([])
  expect(grouped).toEqual(Object.keys(en.sentence).sort())
})
