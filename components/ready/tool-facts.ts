/** Tools and protection as one person meets them: what they wear, hold, and can take. */

import { asksOf } from '@/lib/domain/safety/asks'
import { type EquipmentCode, equipmentFor } from '@/lib/domain/safety/equipment'
import { type ToolKind, toolKinds } from '@/lib/domain/safety/tool-checks'
import type { Tool } from '@/lib/events/state'
import { openShiftOf, toolsInHand, type View } from '@/lib/hooks'

export type NumberedTool = Tool & { no: number }

export type ToolFacts = {
  /** What must be true before anything is checked or taken. */
  may: 'yes' | 'arrive_first' | 'shift_first'
  equipment: 'checked' | 'failed' | 'not_checked'
  missingEquipment: readonly string[]
  items: readonly EquipmentCode[]
  inHand: readonly NumberedTool[]
  bench: readonly { kind: ToolKind; tools: readonly NumberedTool[] }[]
}

export function toolFacts(view: View): ToolFacts {
  const { state, me } = view
  const myId = me?.personId ?? ''
  const equipped = state?.equipped[myId]
  return {
    may: !openShiftOf(view) ? 'shift_first' : state?.attendance[myId] ? 'yes' : 'arrive_first',
    equipment: equipped === undefined ? 'not_checked' : equipped ? 'checked' : 'failed',
    missingEquipment: state?.failedEquipment[myId] ?? [],
    items: equipmentFor({ cuttingOverhead: cutsOverhead(view) }).map(({ code }) => code),
    inHand: toolsInHand(view),
    bench: benchOf(state?.tools ?? {}, myId),
  }
}

/** Some tree asks for a ladder, so somebody may cut above another's head. */
function cutsOverhead({ state, ground }: View): boolean {
  const ladderFromCm = state?.orchard.houseRules.ladder_from_cm ?? 0
  for (const tree of ground.trees.values()) {
    if (tree.life === 'standing' && asksOf(tree, ladderFromCm).ladder) return true
  }
  return false
}

/** What nobody holds and is fit; somebody's own tool is theirs alone. */
function benchOf(tools: Readonly<Record<string, Tool>>, myId: string): ToolFacts['bench'] {
  const free = Object.entries(tools)
    .filter(([, tool]) => tool.heldBy === null && tool.fit)
    .filter(([, { ownedBy }]) => ownedBy === null || ownedBy === myId)
    .map(([no, tool]) => ({ ...tool, no: Number(no) }))
  return toolKinds
    .map((kind) => ({ kind, tools: free.filter((tool) => tool.kind === kind) }))
    .filter((group) => group.tools.length > 0)
}
