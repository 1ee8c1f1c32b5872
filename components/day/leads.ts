/** Who leads today. */

import { nameOf, type View } from '@/lib/hooks'

/** The leads who have arrived, else all of them; managers where there is no lead. */
function leadsToday({ state }: Pick<View, 'state'>): string[] {
  const everybody = Object.entries(state?.people ?? {})
  const leads = everybody.filter(([, { role }]) => role === 'lead').map(([id]) => id)
  const here = leads.filter((id) => state?.attendance[id])
  if (here.length > 0) return here
  if (leads.length > 0) return leads
  return everybody.filter(([, { role }]) => role === 'manager').map(([id]) => id)
}

/** One lead is called by name; of several nobody knows which, so null. */
export function theLead(view: View): string | null {
  const [only, another] = leadsToday(view)
  return only === undefined || another !== undefined ? null : nameOf(view, only)
}
