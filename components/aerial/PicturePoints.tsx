'use client'

import type { PointerEvent } from 'react'

import { useLeadWords } from '../layout/Words'

type PicturePointsProps = {
  jpeg: string
  /** In per cent; null where one is not said yet. */
  points: readonly ({ left: number; top: number } | null)[]
  /** The one that a tap sets. */
  active: number
  onPoint: (left: number, top: number) => void
  onSize: (size: { width: number; height: number }) => void
}

/** The picture, with a numbered mark where each of the three trees is. Who cannot tap writes it below. */
export function PicturePoints({ jpeg, points, active, onPoint, onSize }: PicturePointsProps) {
  const { aerial: text } = useLeadWords()
  const tap = (event: PointerEvent<HTMLDivElement>) => {
    const { left, top, width, height } = event.currentTarget.getBoundingClientRect()
    onPoint(((event.clientX - left) / width) * 100, ((event.clientY - top) / height) * 100)
  }
  return (
    <div className="aerial-picture" onPointerUp={tap}>
      {/* biome-ignore lint/performance/noImgElement: a picture on this device, nothing to optimise */}
      <img
        src={`data:image/jpeg;base64,${jpeg}`}
        alt={text.picture}
        onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) =>
          onSize({ width: naturalWidth, height: naturalHeight })
        }
      />
      {points.map(
        (point, at) =>
          point && (
            <span
              // biome-ignore lint/suspicious/noArrayIndexKey: the first, second and third tree
              key={at}
              className={at === active ? 'aerial-mark is-active' : 'aerial-mark'}
              style={{ left: `${point.left}%`, top: `${point.top}%` }}
              aria-hidden="true"
            >
              {at + 1}
            </span>
          )
      )}
    </div>
  )
}
