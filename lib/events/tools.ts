/** Tools: who has which, and whether each is fit and clean. A ladder is a tool. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { claimOf, openShift, soiledAt } from './look-ups'
import { withChanged, withEntry } from './record'
import { number, tool } from './shapes'
import type { State, Tool } from './state'

const numbered = shape.object({ tool: number })
const added = shape.extend(tool, { tool: number })
const cleaned = shape.object({ tools: shape.array(number) })

export const toolFolds: Folds = {
  tool_added: when(added, (state, { tool, ...facts }) => ({
    ...state,
    tools: withEntry(state.tools, tool, facts),
  })),
  tool_taken: when(numbered, (state, { tool }, { personId }) =>
    withTool(state, tool, { heldBy: personId })
  ),
  tool_returned: when(numbered, (state, { tool }) => withTool(state, tool, { heldBy: null })),
  tool_failed: when(numbered, (state, { tool }) => withTool(state, tool, { fit: false })),
  tool_mended: when(numbered, (state, { tool }) => withTool(state, tool, { fit: true })),
  tools_cleaned: when(cleaned, (state, { tools }) =>
    tools.reduce((before, tool) => withTool(before, tool, { clean: true }), state)
  ),
}

function withTool(state: State, no: number, change: Partial<Tool>): State {
  return {
    ...state,
    tools: withChanged(state.tools, no, (known) => ({ ...known, ...change })),
  }
}

export const toolPredictions: Predictions = {
  take_tool: (state, { personId, args }) => {
    const tool = state.tools[args.tool]
    const failsNow = args.failedItems.length > 0
    return (
      refuse(
        !openShift(state) && 'shift_not_open',
        !state.attendance[personId] && 'not_arrived',
        !tool && 'no_such_tool',
        tool?.heldBy != null && 'tool_held',
        tool?.fit === false && 'tool_failed'
      ) ?? [{ kind: failsNow ? 'tool_failed' : 'tool_taken', body: { tool: args.tool } }]
    )
  },
  return_tool: (state, { personId, args }) =>
    refuse(state.tools[args.tool]?.heldBy !== personId && 'not_in_hand') ?? [
      {
        kind: 'tool_returned',
        body: {
          tool: args.tool,
          ...soiledAt(state, claimOf(state, personId)?.tree ?? null, [personId]),
        },
      },
    ],
  fail_tool: (state, { args }) =>
    refuse(!state.tools[args.tool] && 'no_such_tool') ?? [
      { kind: 'tool_failed', body: { tool: args.tool } },
    ],
  mend_tool: (state, { args }) =>
    refuse(!state.tools[args.tool] && 'no_such_tool') ?? [
      { kind: 'tool_mended', body: { tool: args.tool } },
    ],
  clean_tool: (state, { args }) =>
    refuse(args.tools.some((no) => !state.tools[no]) && 'no_such_tool') ?? [
      { kind: 'tools_cleaned', body: { tools: args.tools } },
    ],
}
