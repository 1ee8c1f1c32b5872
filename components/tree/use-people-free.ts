'use client'

import { isLeadView, useSelect, whoIsWhere } from '@/lib/hooks'

/** Who is here without a tree; and whom of them this device may bring to one: its own people, or a lead anybody. */
export function usePeopleFree(): { here: readonly string[]; iMayAdd: readonly string[] } {
  const me = useSelect((view) => view.me?.personId ?? '')
  const here = useSelect((view) =>
    whoIsWhere(view)
      .filter(({ state, tree, row }) => state === 'here' && tree === null && row === null)
      .map(({ personId }) => personId)
  ).filter((id) => id !== me)
  const isLead = useSelect(isLeadView)
  const own = useSelect((view) =>
    view.memberships
      .filter(({ orchardId }) => orchardId === view.me?.orchardId)
      .map(({ personId }) => personId)
  )
  return { here, iMayAdd: isLead ? here : here.filter((id) => own.includes(id)) }
}
