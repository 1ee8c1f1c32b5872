'use client'

import { type PointerEvent, useState } from 'react'

import { useWords } from '../layout/Words'
import { strokeColours } from '../tree/darkroom'
import type { Size } from '../tree/shrink-photo'
import { lineWidth, type Point, pathOf, type Stroke } from '../tree/strokes'
import { Button } from '../ui/Button'
import { useLeadWords } from './use-lead-words'

type DrawOnPhotoProps = {
  /** Base64. */
  jpeg: string
  strokes: readonly Stroke[]
  onStrokes: (strokes: readonly Stroke[]) => void
  onAway: () => void
}

/** A finger along each limb that goes, from where the cut is. Who cannot draw writes it below. */
export function DrawOnPhoto({ jpeg, strokes, onStrokes, onAway }: DrawOnPhotoProps) {
  const { flag } = useWords()
  const { mapTools } = useLeadWords()
  const [size, setSize] = useState<Size | null>(null)
  const [now, setNow] = useState<Stroke | null>(null)

  const begin = (event: PointerEvent<SVGSVGElement>) => {
    if (!event.isPrimary || event.button !== 0) return
    event.currentTarget.setPointerCapture(event.pointerId)
    setNow([shareOf(event)])
  }
  const draw = (event: PointerEvent<SVGSVGElement>) => {
    if (now && event.isPrimary) setNow([...now, shareOf(event)])
  }
  const end = () => {
    if (now) onStrokes([...strokes, now])
    setNow(null)
  }

  return (
    <div className="draw-on">
      <p>{mapTools.drawOnPhoto}</p>
      <div className="draw-on-photo">
        {/* biome-ignore lint/performance/noImgElement: a photo on this tablet only, nothing to optimise */}
        <img
          src={`data:image/jpeg;base64,${jpeg}`}
          alt={mapTools.photoToDrawOn(strokes.length)}
          onLoad={({ currentTarget: { naturalWidth, naturalHeight } }) =>
            setSize({ width: naturalWidth, height: naturalHeight })
          }
        />
        {size && (
          <svg
            aria-hidden="true"
            viewBox={`0 0 ${size.width} ${size.height}`}
            onPointerDown={begin}
            onPointerMove={draw}
            onPointerUp={end}
            onPointerCancel={end}
          >
            {[strokeColours.edge, strokeColours.line].map((colour, at) => (
              <path
                key={colour}
                d={[...strokes, ...(now ? [now] : [])]
                  .map((stroke) => pathOf(stroke, size))
                  .join('')}
                fill="none"
                stroke={colour}
                strokeLinejoin="round"
                strokeWidth={lineWidth(size) * (at === 0 ? 1.9 : 1)}
              />
            ))}
          </svg>
        )}
      </div>
      <div className="tree-buttons">
        {strokes.length > 0 && (
          <Button icon="undo" onPress={() => onStrokes(strokes.slice(0, -1))}>
            {mapTools.undoStroke}
          </Button>
        )}
        <Button icon="cross" onPress={onAway}>
          {flag.photoAway}
        </Button>
      </div>
    </div>
  )
}

/** Where on the picture, whatever its size on the screen. */
function shareOf({ clientX, clientY, currentTarget }: PointerEvent<SVGSVGElement>): Point {
  const { left, top, width, height } = currentTarget.getBoundingClientRect()
  return { x: (clientX - left) / width, y: (clientY - top) / height }
}
