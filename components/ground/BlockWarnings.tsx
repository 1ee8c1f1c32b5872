'use client'

import { useMemo } from 'react'

import { cornerLetter } from '@/lib/domain/orchard/corner-letter'
import { lineBetween } from '@/lib/domain/orchard/ellipsoid'
import type { LayoutFault } from '@/lib/domain/orchard/layout'
import { seemsSwapped } from '@/lib/domain/orchard/likely-place'
import { inWalkingOrder } from '@/lib/domain/orchard/outline'
import type { Position } from '@/lib/domain/orchard/types'
import { useNow, useSelect } from '@/lib/hooks'
import { utcOffsetHours } from '@/lib/util/utc-offset'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { withUnit } from './lengths'
import { positionsIn, withCorners } from './new-block'
import type { NewBlockNow } from './use-new-block'

/** What a manager may have got wrong: corners crosswise, the longitude first, another country, feet for metres. */
export function BlockWarnings({ now }: { now: NewBlockNow }) {
  const { ground } = useLeadWords()
  const { block, fault, numbers, units, change } = now
  const corners = positionsIn(block)
  const outline = useOutlineWords(fault)
  const place = usePlaceDoubt(corners)
  const rowSpacingM = numbers.rowSpacingM ?? 6
  const typed = withUnit(rowSpacingM, units)
  return (
    <>
      {outline !== null && corners.length > 2 && (
        <Note tone="call" icon="warn" role="alert">
          <p>{outline}</p>
          {fault?.code === 'crosses_itself' && (
            <Button onPress={() => change(withCorners(block, inWalkingOrder(corners)))}>
              {ground.inOrder}
            </Button>
          )}
        </Note>
      )}
      {place.isSwapped && (
        <Note tone="call" icon="warn" role="alert">
          <p>{ground.seemsSwapped}</p>
          <Button
            onPress={() =>
              change(
                withCorners(
                  block,
                  corners.map(({ lat, lon }) => ({ lat: lon, lon: lat }))
                )
              )
            }
          >
            {ground.exchange}
          </Button>
        </Note>
      )}
      {!place.isSwapped && place.farWords !== null && (
        <Note role="status">{ground.farAway(place.farWords)}</Note>
      )}
      {block.rowSpacing !== null && units === 'metric' && rowSpacingM >= 12 && (
        <Note role="status">{ground.wideRows(typed, withUnit(rowSpacingM * 0.3048, units))}</Note>
      )}
      {block.rowSpacing !== null && units === 'us' && rowSpacingM <= 2.5 && (
        <Note role="status">{ground.narrowRows(typed, withUnit(rowSpacingM / 0.3048, units))}</Note>
      )}
    </>
  )
}

/** Null: the outline is one, or there are not enough corners yet to say. */
function useOutlineWords(fault: LayoutFault | null): string | null {
  const { ground } = useLeadWords()
  const format = useFormat()
  switch (fault?.code) {
    case 'corner_twice':
      return ground.outline.corner_twice(...letters(fault.corners))
    case 'crosses_itself':
      return ground.outline.crosses_itself(...letters(fault.sides))
    case 'too_wide':
      return ground.outline.too_wide(cornerLetter(fault.corner), format.distance(fault.metres))
    case 'no_area':
      return ground.outline.no_area
    default:
      return null
  }
}

function letters([a, b]: [number, number]): [string, string] {
  return [cornerLetter(a), cornerLetter(b)]
}

/** Further from the other trees than a walk. */
const farM = 20_000

function usePlaceDoubt(corners: readonly Position[]) {
  const format = useFormat()
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const other = useSelect(
    (view) => view.sheet?.trees.find(({ position }) => position !== null)?.position ?? null
  )
  const now = useNow(3_600_000)
  const utcOffsetH = useMemo(() => (now ? utcOffsetHours(timeZone, now) : 0), [timeZone, now])
  const [first] = corners
  if (!first || !now) return { isSwapped: false, farWords: null }
  const away = other === null ? 0 : lineBetween(other, first).metres
  return {
    isSwapped: corners.every((one) => seemsSwapped(one, { position: other, timeZone, utcOffsetH })),
    farWords: away > farM ? format.distance(away) : null,
  }
}
