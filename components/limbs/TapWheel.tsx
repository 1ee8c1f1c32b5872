'use client'

import { type MouseEvent, useRef } from 'react'

import { useWords } from '../layout/Words'
import { Wheel } from './Wheel'

type TapWheelProps = {
  limbs: readonly { bearingDeg: number }[]
  onLimb: (bearingDeg: number) => void
  /** Pressed with a key, it has no place: the field for degrees is the way. */
  onKey: () => void
}

/** The circle that is tapped where a limb leaves the trunk. */
export function TapWheel({ limbs, onLimb, onKey }: TapWheelProps) {
  const { limbs: text } = useWords()
  const button = useRef<HTMLButtonElement>(null)

  function add({ clientX, clientY, detail }: MouseEvent): void {
    const box = button.current?.getBoundingClientRect()
    if (detail === 0 || !box) {
      onKey()
      return
    }
    const east = clientX - (box.left + box.width / 2)
    const north = box.top + box.height / 2 - clientY
    onLimb((Math.atan2(east, north) * 180) / Math.PI)
  }

  return (
    <button ref={button} type="button" className="tap-wheel" onClick={add}>
      <Wheel label={text.wheel} limbs={limbs.map((limb) => ({ ...limb, goes: false }))} />
      <span className="label">{text.tapHere}</span>
    </button>
  )
}
