'use client'

import { useState } from 'react'

import { toE7 } from '@/lib/domain/orchard/ellipsoid'
import { positionText, readPosition } from '@/lib/domain/orchard/read-position'
import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { StandingNote } from './StandingNote'
import { useWhereIStand } from './use-where-i-stand'

type MoveTreeProps = { no: number; onDone: (words: string) => void }

/** Where a tree really is: typed, or where this phone is. */
export function MoveTree({ no, onDone }: MoveTreeProps) {
  const { ground } = useLeadWords()
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const position = useSelect((view) => view.ground.trees.get(no)?.position ?? null)
  const [typed, setTyped] = useState(position ? positionText(position) : '')
  const { standing, find } = useWhereIStand((at) => setTyped(positionText(at)))
  const read = readPosition(typed)
  const move = () => {
    if (read.state !== 'read') return
    const { lat, lon } = read.position
    const args = { tree: no, latE7: toE7(lat), lonE7: toE7(lon) }
    void ask(send('move_tree', args), () => onDone(ground.moved))
  }
  return (
    <div className="ground-part">
      <TextField
        label={ground.moveTyped}
        hint={ground.cornerHint}
        value={typed}
        onChange={setTyped}
        fault={read.state !== 'read' && read.state !== 'empty' && ground.cornerFaults[read.state]}
        maxLength={60}
      />
      <Button icon="map" onPress={find} state={standing.state === 'finding' ? 'waiting' : 'ready'}>
        {ground.moveHere}
      </Button>
      <StandingNote standing={standing} />
      <AskedNote asked={asked} />
      <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={move}>
        {ground.moveDo}
      </Button>
    </div>
  )
}
