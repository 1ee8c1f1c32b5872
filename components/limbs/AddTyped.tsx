'use client'

import { type FormEvent, useState } from 'react'

import { useWords } from '../layout/Words'
import { MeasureField } from '../tree/MeasureField'
import { measured, measures } from '../tree/measure'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'

type AddTypedProps = { id: string; onLimb: (bearingDeg: number) => void }

/** A limb by its degrees, for who has a compass of their own, or a keyboard. */
export function AddTyped({ id, onLimb }: AddTypedProps) {
  const { limbs: text } = useWords()
  const [typed, setTyped] = useState('')
  const bearingDeg = measured(measures.bearing, typed, 'metric')
  const isReady = typeof bearingDeg === 'number'

  function add(event: FormEvent): void {
    event.preventDefault()
    if (!isReady) return
    onLimb(bearingDeg)
    setTyped('')
  }

  return (
    <form id={id} className="stack" onSubmit={add}>
      <MeasureField
        label={text.typed}
        hint={text.typedHint}
        measure={measures.bearing}
        value={typed}
        onChange={setTyped}
      />
      {isReady ? (
        <Button wide icon="plus" type="submit">
          {text.add}
        </Button>
      ) : (
        <>
          <Button wide icon="plus" state="off" describedBy={`${id}-why`}>
            {text.add}
          </Button>
          <Why id={`${id}-why`}>{text.addFirst}</Why>
        </>
      )}
    </form>
  )
}
