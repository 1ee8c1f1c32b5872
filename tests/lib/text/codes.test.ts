import { describe, expect, test } from 'vitest'
import { cleaningPolicies, diseases } from '@/lib/domain/disease/sanitation'
import { problemCodes } from '@/lib/domain/orchard/inventory-problem'
import { marks } from '@/lib/domain/orchard/status'
import { species } from '@/lib/domain/orchard/types'
import { tradeSources } from '@/lib/domain/pruning/fact'
import { shoots } from '@/lib/domain/pruning/last-years-wood'
import { bearingWoods, forms, seasons } from '@/lib/domain/pruning/species-facts'
import { stepCodes } from '@/lib/domain/pruning/work-card'
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
    ['step', stepCodes, crew.whatToCut.steps],
    ['last year’s shoots', shoots, crew.whatToCut.shoots],
    ['form', forms, crew.whatToCut.form],
    ['bearing wood', bearingWoods, crew.whatToCut.bornOn],
    ['season of a species', seasons, crew.whatToCut.season],
    ['source of the trade', tradeSources, crew.tradeSources],
    ['disease', diseases, crew.sanitation.disease],
    ['policy of cleaning', cleaningPolicies, lead.houseRules.cleaning],
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
