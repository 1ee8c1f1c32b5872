import { describe, expect, test } from 'vitest'

import { problemCodes } from '@/lib/domain/orchard/inventory-problem'
import { marks } from '@/lib/domain/orchard/status'
import { species } from '@/lib/domain/orchard/types'
import { forms, stepCodes } from '@/lib/domain/pruning/order'
import { topicCodes } from '@/lib/domain/safety/briefing-topics'
import { equipmentCodes } from '@/lib/domain/safety/equipment'
import { toolCheckCodes, toolKinds } from '@/lib/domain/safety/tool-checks'
import { crew } from '@/lib/text/en/crew'
import { lead } from '@/lib/text/en/lead'

/** The Spanish catalogue has the type of the English one, so one language stands for both. */
describe('every code of the domain has words', () => {
  test.each([
    ['mark', marks, crew.common.status],
    ['species', species, crew.species],
    ['step', stepCodes, crew.tree.steps],
    ['step in the doing', stepCodes, crew.tree.stepSays],
    ['step done', stepCodes, crew.tree.stepDone],
    ['form', forms, crew.tree.form],
    ['briefing topic', topicCodes, crew.topics],
    ['piece of equipment', equipmentCodes, crew.tools.equipment],
    ['kind of tool', toolKinds, crew.things.tool],
    ['tool check', toolCheckCodes, crew.tools.checks],
    ['fault of a tool', toolCheckCodes, crew.tools.faults],
    ['problem in a file of trees', problemCodes, lead.inventory.problems],
  ])('%s', (_, codes, words) => {
    expect(codes.filter((code) => !Object.hasOwn(words, code))).toEqual([])
  })
})
