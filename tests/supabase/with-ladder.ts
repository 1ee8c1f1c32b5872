import type { Person } from '../support/orchard'

/** Somebody with ladder and skill, who wishes to use them. */
export async function withLadder(lead: Person, ann: Person, bo: Person) {
  const { body } = await lead.must('add_tool', { label: 'L1', kind: 'ladder' })
  await ann.must('take_tool', { tool: body.tool, failedItems: [] })
  await lead.must('grant_skill', { subject: ann.id, skill: 'ladder' })
  return { ladder: true, buddy: bo.id }
}
