'use client'

import { useMemo, useState } from 'react'

import { placesOf } from '@/lib/domain/orchard/around'
import { distanceM } from '@/lib/domain/orchard/distance'
import { type AerialRead, useSelect } from '@/lib/hooks'
import { useTagOf } from '../sync/use-refusal-words'
import { emptyPoint, type PointTyped, readPoint, type Three } from './aerial-typed'

/** A kept point is at a tree when it is no farther from it than a crown is wide. */
const sameM = 1

/** What is typed of the three trees, beginning with what is kept, and what it means. */
export function useThreePoints(kept: AerialRead | null) {
  const ground = useSelect((view) => view.ground)
  const tagOf = useTagOf()
  const [trees, blocks] = useMemo(
    () => [[...ground.trees.values()], [...ground.blocks.values()]],
    [ground]
  )
  const places = useMemo(() => placesOf(trees, blocks), [trees, blocks])
  const [typed, setTyped] = useState<readonly PointTyped[]>(() =>
    [0, 1, 2].map((at) => {
      const point = kept?.points[at]
      return point ? asTyped(point) : emptyPoint
    })
  )
  const read = useMemo(
    () => typed.map((point) => readPoint(point, { trees, blocks, places })),
    [typed, trees, blocks, places]
  )
  const whole = read.flatMap((one) => (one.state === 'whole' ? [one.point] : []))
  const [first, second, third] = whole
  const placed: Three | null = useMemo(
    () => (first && second && third ? [first, second, third] : null),
    [first, second, third]
  )
  return {
    typed,
    read,
    placed,
    marks: typed.map(({ left, top }) =>
      left === '' || top === '' ? null : { left: numberOf(left), top: numberOf(top) }
    ),
    set: (at: number, part: Partial<PointTyped>) =>
      setTyped((now) => now.map((point, no) => (no === at ? { ...point, ...part } : point))),
  }

  function asTyped([x, y, lat, lon]: readonly [number, number, number, number]): PointTyped {
    const position = { lat: lat / 1e7, lon: lon / 1e7 }
    const tree = trees.find(({ no }) => {
      const place = places.get(no)
      return place && distanceM(place.position, position) < sameM
    })
    return { left: String(x / 100), top: String(y / 100), tag: tree ? tagOf(tree.no) : '' }
  }
}

function numberOf(text: string): number {
  return Number(text.replace(',', '.')) || 0
}
