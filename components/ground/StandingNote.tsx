'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Note } from '../ui/Note'
import type { Standing } from './use-where-i-stand'

/** Above this a corner is worth another try. Common practice, no source. */
const roughM = 6

/** What came of asking the phone where it is. */
export function StandingNote({ standing }: { standing: Standing }) {
  const { ground } = useLeadWords()
  const format = useFormat()
  switch (standing.state) {
    case 'idle':
      return null
    case 'finding':
      return <p role="status">{ground.finding}</p>
    case 'found': {
      const within = format.keepAway(standing.withinM)
      return (
        <p role="status" className="small">
          {standing.withinM > roughM ? ground.foundRough(within) : ground.found(within)}
        </p>
      )
    }
    case 'none':
      return <Note role="alert">{ground.noPlace[standing.why]}</Note>
  }
}
