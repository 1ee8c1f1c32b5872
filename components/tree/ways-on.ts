/** Where a person goes to mend what a refusal says is missing. */

import type { Refusal } from '@/lib/events/answer'
import { routes } from '@/lib/routes'

const ways: Record<string, string> = {
  not_arrived: routes.ready(),
  already_left: routes.ready(),
  consent_missing: routes.consent(),
  briefing_not_given: routes.briefing(),
  briefing_not_signed: routes.briefing(),
  equipment_not_checked: routes.tools(),
  no_tool_in_hand: routes.tools(),
  no_ladder_in_hand: routes.tools(),
  no_saw_in_hand: routes.tools(),
  tool_failed: routes.tools(),
  tool_not_clean: routes.tools(),
  on_break: routes.breakOrLeave(),
}

/** Undefined: there is nothing one can do alone. */
export function wayOn({ code, detail }: Refusal): string | undefined {
  if (code === 'holds_another' && typeof detail?.tree === 'number') return routes.tree(detail.tree)
  return ways[code]
}
