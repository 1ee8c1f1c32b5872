'use client'

import { useState } from 'react'

import { useSelect, whoIsWhere } from '@/lib/hooks'
import { List } from '../ui/List'
import { CrewLegend } from './CrewLegend'
import { CrewRow } from './CrewRow'
import { countCrew } from './crew-order'
import { type Heard, HeardEachMinute } from './HeardEachMinute'
import { useCrewLines } from './use-crew-lines'
import { useLeadWords } from './use-lead-words'

/** Everybody on the shift beside the map: where, for how long, and who needs somebody. */
export function CrewColumn({ onTree }: { onTree: (tree: number) => void }) {
  const { leadMap } = useLeadWords()
  const [heard, setHeard] = useState<Heard | null>(null)
  const lines = useCrewLines(heard)
  const { atTree, free, onBreak } = useSelect((view) => countCrew(whoIsWhere(view)))

  return (
    <>
      <HeardEachMinute onHeard={setHeard} />
      <div className="crew-column">
        <div className="head">
          <h2>{leadMap.crew}</h2>
          <span className="small">{leadMap.crewCounts(atTree, free, onBreak)}</span>
        </div>
        {lines.length === 0 && <p className="crew-empty small">{leadMap.nobodyHere}</p>}
        <List label={leadMap.crew}>
          {lines.map((line) => (
            <CrewRow key={line.personId} line={line} onTree={onTree} />
          ))}
        </List>
      </div>
      <CrewLegend />
    </>
  )
}
