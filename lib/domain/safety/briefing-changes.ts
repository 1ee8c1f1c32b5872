/** What is new in a briefing for somebody who heard an earlier version of it. */

export type ToldTopic = { code: string; en: string | null; es: string | null }

export type BriefingChanges = {
  added: ToldTopic[]
  /** In the words of now. */
  reworded: ToldTopic[]
  leftOut: ToldTopic[]
  same: ToldTopic[]
}

/** A topic is the same while its words are: the order is how it is told, not what is said. */
export function briefingChanges(
  before: readonly ToldTopic[],
  after: readonly ToldTopic[]
): BriefingChanges {
  const old = new Map(before.map((topic) => [topic.code, topic]))
  const now = new Set(after.map(({ code }) => code))
  const changes: BriefingChanges = { added: [], reworded: [], leftOut: [], same: [] }
  for (const topic of after) {
    const known = old.get(topic.code)
    if (!known) changes.added.push(topic)
    else if (saysTheSame(known, topic)) changes.same.push(topic)
    else changes.reworded.push(topic)
  }
  changes.leftOut = before.filter(({ code }) => !now.has(code))
  return changes
}

function saysTheSame(a: ToldTopic, b: ToldTopic): boolean {
  return (a.en ?? '') === (b.en ?? '') && (a.es ?? '') === (b.es ?? '')
}
