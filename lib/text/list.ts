/** Things one after the other, as a person says them. */

import type { Messages } from './messages'

/** Nothing where there is nothing; long lists end in how many more. */
export function formatList(
  text: Pick<Messages, 'common'>,
  things: readonly string[]
): string | undefined {
  if (things.length === 0) return undefined
  const shown = things.slice(0, mostShown)
  const more = things.length - shown.length
  return shown.join(', ') + (more > 0 ? ` ${text.common.andMore(more)}` : '')
}

const mostShown = 4
