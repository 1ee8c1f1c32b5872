/** The rows of a file that are wrong, as a table: what is wrong stands before what the file says. */

import { csvTable } from './csv'
import type { InventoryProblem } from './inventory-problem'
import type { Table } from './inventory-table'

type Heads = { line: string; problem: string }

/** Each row once, with all its sentences. Whatever a spreadsheet would run as a formula is escaped. */
export function errorFile(
  table: Table | null,
  problems: readonly InventoryProblem[],
  sentenceOf: (problem: InventoryProblem) => string,
  heads: Heads
): string {
  const sentences = new Map<number, string[]>()
  for (const problem of problems) {
    sentences.set(problem.line, [...(sentences.get(problem.line) ?? []), sentenceOf(problem)])
  }
  const fieldsAt = new Map(table?.records.map(({ line, fields }) => [line, fields]))
  const rows = [...sentences].map(([line, said]) => [
    line,
    said.join(' '),
    ...(fieldsAt.get(line) ?? []),
  ])
  const header = [heads.line, heads.problem, ...(table?.heads ?? [])]
  return csvTable([header, ...rows])
}
