'use client'

import type { InventoryProblem } from '@/lib/domain/orchard/inventory-problem'
import type { Table } from '@/lib/domain/orchard/inventory-table'
import { useLeadWords } from '../crew/use-lead-words'

/** What is wrong and what to do; with a table also where: a line of it, or a tree of a GeoJSON. */
export function useProblemSentence(table: Table | null): (problem: InventoryProblem) => string {
  const { inventory, bringIn } = useLeadWords()
  return ({ line, column, code, found, allowed }) => {
    const shown = code.startsWith('column_')
      ? (bringIn.columns[column as keyof typeof bringIn.columns] ?? column)
      : column
    const sentence = inventory.problems[code]({ column: shown ?? '', found, allowed })
    if (table === null) return sentence
    const where = table.kind === 'geojson' ? bringIn.atFeature(line) : inventory.atLine(line)
    return `${where}: ${sentence}`
  }
}
