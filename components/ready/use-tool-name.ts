'use client'

import type { ToolKind } from '@/lib/domain/safety/tool-checks'
import { useWords } from '../layout/Words'
import type { IconName } from '../ui/Icon'

/** "Hand pruner P3" */
export function useToolName(): (tool: { kind: ToolKind; label: string }) => string {
  const { tools, things } = useWords()
  return ({ kind, label }) => tools.labelled(things.tool[kind], label)
}

export const toolIcons: Record<ToolKind, IconName> = {
  pruner: 'pruner',
  lopper: 'lopper',
  saw: 'saw',
  pole_pruner: 'pruner',
  ladder: 'ladder',
  other: 'other',
}
