'use client'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { graded } from './limbs-draft'
import { sideOf } from './side-of'
import { useCompass } from './use-compass'

/** A limb's bearing by pointing the phone along it; where that cannot be, why. */
export function PointPhone({ onLimb }: { onLimb: (bearingDeg: number) => void }) {
  const { limbs: text, ours } = useWords()
  const { compass, begin, end } = useCompass()
  switch (compass.state) {
    case 'away':
      return (
        <Button wide icon="wheel" onPress={() => void begin()}>
          {text.turn}
        </Button>
      )
    case 'waiting':
    case 'steep':
    case 'pointing': {
      const bearingDeg = compass.state === 'pointing' ? graded(compass.bearingDeg) : null
      return (
        <>
          <p className="small">{text.turnHow}</p>
          <p className="bearing num" role="status">
            {bearingDeg !== null
              ? text.turnReading(bearingDeg, ours.sides[sideOf(bearingDeg)])
              : compass.state === 'steep'
                ? text.turnSteep
                : text.turnWaiting}
          </p>
          <div className="row wrap">
            {bearingDeg !== null && (
              <Button icon="plus" onPress={() => onLimb(bearingDeg)}>
                {text.add}
              </Button>
            )}
            <Button onPress={end}>{text.turnStop}</Button>
          </div>
        </>
      )
    }
    case 'insecure':
      return <Note role="status">{text.turnInsecure}</Note>
    case 'none':
      return <Note role="status">{text.turnNone}</Note>
    case 'denied':
      return <Note role="status">{text.turnDenied}</Note>
  }
}
