'use client'

import type { Shift } from '@/lib/events/state'
import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Panel } from '../ui/Panel'
import { OffList } from './OffList'

/** What is off during the shift: gusts come, the wood dries. Each change is sent at once. */
export function OffToday({ shift }: { shift: Shift & { id: string } }) {
  const { shift: text } = useLeadWords()
  const send = useSend()
  const species = useSelect((view) => view.state?.rounds[shift.roundId]?.species ?? [])
  const { asked, ask } = useAsk()
  return (
    <Panel title={text.offToday}>
      <p className="small">{text.offNote}</p>
      <AskedNote asked={asked} />
      <OffList
        species={species}
        offs={shift.off}
        onChange={(what, reason) => ask(send('set_off_today', { what, reason }))}
      />
    </Panel>
  )
}
