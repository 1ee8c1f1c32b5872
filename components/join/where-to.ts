/** Where somebody belongs when they open Rowcall. */

import { ofTheDay } from '@/lib/events/weather'
import { isLeadView, myReadiness, myTree, type View } from '@/lib/hooks'
import { routes } from '@/lib/routes'

/** A manager looks over the day, a lead over the map; a volunteer goes on with what is next. */
export function whereTo(view: View): string {
  if (view.state?.me.role === 'manager') return routes.board()
  if (isLeadView(view)) return routes.map()
  const mine = myTree(view)
  if (mine.state !== 'none') return mine.tree === null ? routes.haul() : routes.tree(mine.tree)
  // What is the same for everybody is said at the next tree.
  const lacks = myReadiness(view).filter(
    ({ code }) => code !== 'holds_another' && !ofTheDay.includes(code)
  )
  return lacks.length > 0 ? routes.ready() : routes.nextTree()
}
