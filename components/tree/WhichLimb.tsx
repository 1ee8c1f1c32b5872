'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { type FlagPlace, flagPlaces } from './flag-words'
import { sides } from './reason-words'

type WhichLimbProps = {
  place: FlagPlace | null
  bearingDeg: number | null
  onPlace: (place: FlagPlace) => void
  onSide: (bearingDeg: number) => void
}

/** Where on the tree, and on which side: what the arborist looks for first. */
export function WhichLimb({ place, bearingDeg, onPlace, onSide }: WhichLimbProps) {
  const { flag, ours } = useWords()
  return (
    <>
      <ChoiceGroup label={flag.where} as="picks">
        {flagPlaces.map((one) => (
          <Pick
            key={one}
            type="radio"
            name="place"
            checked={place === one}
            onChange={() => onPlace(one)}
          >
            {flag.places[one]}
          </Pick>
        ))}
      </ChoiceGroup>
      <ChoiceGroup label={ours.side} as="picks">
        {sides.map((side, at) => (
          <Pick
            key={side}
            type="radio"
            name="side"
            checked={bearingDeg === at * 45}
            onChange={() => onSide(at * 45)}
          >
            {ours.sides[side]}
          </Pick>
        ))}
      </ChoiceGroup>
    </>
  )
}
