'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import type { Progress } from './progress'

/** Done, in progress, half done and left as lengths of one bar; drawn, so that no page carries styles. */
export function BlockBar({ progress }: { progress: Progress }) {
  const { board } = useLeadWords()
  const format = useFormat()
  const { trees, done, inProgress, begun } = progress
  const left = trees - done - inProgress - begun
  const parts = (
    [
      { name: 'done', count: done },
      { name: 'inProgress', count: inProgress },
      { name: 'begun', count: begun },
      { name: 'left', count: left },
    ] as const
  ).filter(({ count }) => count > 0)
  const words = parts.map(({ name, count }) => board.part(count, board.counted[name](count)))
  let from = 0
  return (
    <svg
      className="block-bar"
      viewBox="0 0 300 14"
      preserveAspectRatio="none"
      role="img"
      aria-label={board.bar(format.list(words))}
    >
      {parts.map(({ name, count }) => {
        const width = (count / Math.max(1, trees)) * 300
        const x = from
        from += width
        return (
          <rect
            key={name}
            className={name}
            x={x + 1}
            y="1"
            width={Math.max(2, width - 2)}
            height="12"
          />
        )
      })}
    </svg>
  )
}
