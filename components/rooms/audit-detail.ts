/** What a sentence about an event names: ids become names, numbers become tags. What it does not carry is not named. */

import type { AuditTrail } from '@/lib/hooks'
import type { AuditDetail } from '@/lib/text/en/audit'

export type AuditEvent = AuditTrail['events'][number]

/** How the words of the reader's language are found. */
export type AuditNaming = {
  person: (id: string) => string
  tree: (no: number) => string
  block: (no: number) => string
  tool: (no: number) => string
  day: (date: string) => string
  minutes: (seconds: number) => string
  share: (percent: number) => string
  metres: (metres: number) => string
  list: (words: readonly string[]) => string
  round: (kind: string, season: number) => string
  role: (code: string) => string | undefined
  skill: (code: string) => string | undefined
  inviteKind: (code: string) => string | undefined
  callKind: (code: string) => string | undefined
  offWhat: (code: string) => string
  offReason: (code: string) => string | undefined
  reopenReason: (code: string) => string | undefined
  sign: (kind: string, sign: string) => string
  setting: (field: string) => string | undefined
}

const mostTrees = 6

export function auditDetail(
  event: AuditEvent,
  read: Pick<AuditTrail, 'claims' | 'flags' | 'shifts' | 'rounds'>,
  naming: AuditNaming
): AuditDetail {
  const body = { ...object(event.body), ...object(event.leadBody) }
  const text = (key: string) => (typeof body[key] === 'string' ? body[key] : undefined)
  const number = (key: string) => (typeof body[key] === 'number' ? body[key] : undefined)
  const worded = <Given, Word>(given: Given | undefined, word: (given: Given) => Word) =>
    given === undefined ? undefined : word(given)

  const trees = treesIn(body)
  const people = peopleIn(body).filter(
    (id) => id !== event.personId || event.kind === 'briefing_given'
  )
  const round = read.rounds[text('round') ?? '']
  const block = number('block')
  const row = number('row')
  return {
    who: naming.person(event.personId),
    by: naming.person(event.byPersonId),
    person: naming.person(text('person') ?? text('from') ?? event.personId),
    people: people.length > 0 ? naming.list(people.map(naming.person)) : undefined,
    role: worded(text('role'), naming.role),
    tree: worded(treeOf(body, read), naming.tree),
    trees: trees.length > 0 ? someOf(trees.map(naming.tree), naming) : undefined,
    row: block !== undefined && row !== undefined ? `${naming.block(block)} ${row}` : undefined,
    block: worded(block, naming.block),
    tool: worded(number('tool'), naming.tool),
    tools: someOf(numbers(body.tools).map(naming.tool), naming),
    skill: worded(text('skill'), naming.skill),
    round: round && naming.round(...round),
    day: dayIn(event, body, read, naming),
    until: worded(text('until'), naming.day),
    sign: worded(text('sign'), (sign) => naming.sign(text('kind') ?? 'disease', sign)),
    reason: worded(text('reason'), naming.reopenReason) ?? worded(text('reason'), naming.offReason),
    what: whatIn(event.kind, body, naming),
    share: worded(shareIn(body), naming.share),
    took: worded(minutesIn(number('seconds')), naming.minutes),
    count: worded(number('version') ?? number('count'), String),
    changed: changedIn(event.kind, body, naming),
    waits: body.admitted === false,
    isOff: text('reason') !== undefined || Array.isArray(body.failed),
    isResult: text('result') === 'passed' || text('answer') === 'resumed',
  }
}

type Body = Record<string, unknown>

function object(value: unknown): Body {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Body) : {}
}

function numbers(value: unknown): number[] {
  return Array.isArray(value) ? value.filter((one) => typeof one === 'number') : []
}

function texts(value: unknown): string[] {
  return [value].flat().filter((one) => typeof one === 'string')
}

/** Said, or that of the claim or flag it is about, or the only one that changed. */
function treeOf(body: Body, { claims, flags }: Pick<AuditTrail, 'claims' | 'flags'>) {
  if (typeof body.tree === 'number') return body.tree
  const known = claims[String(body.claim)] ?? flags[String(body.flag)]
  return known ?? treesIn(body)[0]
}

function treesIn({ trees, hauled, lying, dealsEnded, work }: Body): number[] {
  const changed = Array.isArray(work) ? work.flatMap((one) => numbers(one).slice(0, 1)) : []
  const said = [trees, hauled, lying, dealsEnded].map(numbers).find((list) => list.length > 0)
  return said ?? changed
}

function peopleIn({ people, to, notFound }: Body): string[] {
  if (notFound !== undefined) return texts(notFound)
  if (to !== undefined) return texts(to)
  return Array.isArray(people) ? texts(people) : Object.keys(object(people))
}

function someOf(words: readonly string[], { list }: AuditNaming): string | undefined {
  if (words.length === 0) return undefined
  if (words.length <= mostTrees) return list(words)
  return `${words.slice(0, mostTrees).join(', ')} … (${words.length})`
}

function dayIn(
  { kind }: AuditEvent,
  body: Body,
  { shifts }: Pick<AuditTrail, 'shifts'>,
  { day }: AuditNaming
): string | undefined {
  if (kind === 'consent_given') return body.season === undefined ? undefined : String(body.season)
  const date = typeof body.date === 'string' ? body.date : shifts[String(body.shift)]
  return date && day(date)
}

/** Less than a minute is a press too many, and no work. */
function minutesIn(seconds: number | undefined): number | undefined {
  return seconds !== undefined && seconds >= 30 ? seconds : undefined
}

function whatIn(kind: string, body: Body, naming: AuditNaming): string | undefined {
  if (typeof body.kind === 'string' && kind === 'invite_made') return naming.inviteKind(body.kind)
  if (typeof body.kind === 'string' && kind === 'call_made') return naming.callKind(body.kind)
  if (typeof body.what === 'string') return naming.offWhat(String(body.what))
  if (typeof body.keepOutM === 'number') return naming.metres(body.keepOutM)
  return undefined
}

function shareIn({ work }: Body): number | undefined {
  const first: unknown = Array.isArray(work) ? work[0] : undefined
  const share: unknown = Array.isArray(first) ? first[2] : undefined
  return typeof share === 'number' ? share : undefined
}

function changedIn(kind: string, body: Body, { setting, list }: AuditNaming): string | undefined {
  if (kind !== 'orchard_changed') return undefined
  const words = Object.keys(body).flatMap((field) => setting(field) ?? [])
  return words.length > 0 ? list(words) : undefined
}
