'use client'

import './limbs.css'

import { mostLimbs } from '@/lib/domain/pruning/limb-balance'
import { useDraft, useSelect } from '@/lib/hooks'
import { HelperScreen } from '../cuts/HelperScreen'
import { useWords } from '../layout/Words'
import { NoSuchTree } from '../tree/NoSuchTree'
import { useTree } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Segmented } from '../ui/Segmented'
import { AddTyped } from './AddTyped'
import { Balance } from './Balance'
import { LimbList } from './LimbList'
import { keepFrom, type LimbsDraft, limbsOf, noLimbs, withLimb } from './limbs-draft'
import { PointPhone } from './PointPhone'
import { TapWheel } from './TapWheel'

/** Where the main limbs of a tree point, and which to keep. Nothing is sent: it is for who stands there. */
export function LimbsScreen({ no }: { no: number | null }) {
  const facts = useTree(no)
  const { limbs: text } = useWords()
  const draft = useDraft(`limbs-${no}`, noLimbs)
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  if (!facts) return <NoSuchTree />
  const { limbs, keep } = draft.value
  const change = (part: Partial<LimbsDraft>) => draft.write({ ...draft.value, ...part })
  const add = (bearingDeg: number) => draft.write(withLimb(draft.value, bearingDeg))
  const isFull = limbs.length >= mostLimbs
  return (
    <HelperScreen facts={facts} step={null}>
      <h1>{text.title}</h1>
      <p>{text.lead}</p>
      <TapWheel limbs={limbs} onLimb={add} onKey={focusTyped} />
      {isFull ? (
        <Note icon="info" role="status">
          {text.full}
        </Note>
      ) : (
        <>
          <PointPhone onLimb={add} />
          <AddTyped id={typedId} onLimb={add} />
        </>
      )}
      {limbs.length > 0 && (
        <>
          <Segmented
            label={text.keep}
            options={keepFrom.map((count) => ({ value: String(count), label: String(count) }))}
            value={String(keep)}
            onChange={(count) => change({ keep: Number(count) })}
          />
          <Balance limbs={limbsOf(draft.value, units)} keep={keep} tree={facts.tree.no} />
          <LimbList limbs={limbs} onChange={(limbs) => change({ limbs })} />
          <Button wide icon="undo" onPress={() => change({ limbs: [] })}>
            {text.clear}
          </Button>
        </>
      )}
    </HelperScreen>
  )
}

const typedId = 'limb-typed'

function focusTyped(): void {
  document.querySelector<HTMLInputElement>(`#${typedId} input`)?.focus()
}
