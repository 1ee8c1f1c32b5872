/** Who came is entered before what they did, and who only went after it: so nobody is missing, or leaves with a tree. */

import type { Entered, Entry } from './entry'

export type ToSend = { entry: Entry; entered: Entered }

export function inSendingOrder(lines: readonly ToSend[]): ToSend[] {
  return lines.toSorted(
    (a, b) => turnOf(a.entered) - turnOf(b.entered) || (a.entered.at < b.entered.at ? -1 : 1)
  )
}

function turnOf({ name, args }: Entered): number {
  if (name !== 'enter_attendance') return 1
  return args.arrivedAt == null ? 2 : 0
}
