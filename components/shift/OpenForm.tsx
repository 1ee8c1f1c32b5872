'use client'

import type { Shift } from '@/lib/events/state'
import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { OffList } from './OffList'
import { type Offs, proposedOffs } from './offs'

/** Opens the shift: what is off today is proposed from the calendar, and a lead decides. */
export function OpenForm({ shift }: { shift: Shift & { id: string } }) {
  const { shift: text } = useLeadWords()
  const send = useSend()
  const species = useSelect((view) => view.state?.rounds[shift.roundId]?.species ?? [])
  const rules = useSelect((view) => view.state?.orchard.houseRules ?? {})
  const proposed = proposedOffs(shift.date, species, rules)
  const draft = useDraft<Offs | null>(`open|${shift.id}`, null)
  const { asked, ask } = useAsk()
  // Out of season stays off: an exception is made, with its reason, once the shift is open.
  const offs = { ...draft.value, ...proposed }

  return (
    <div className="stack">
      <p>{text.openTitle}</p>
      <p className="small">{text.offNote}</p>
      <OffList
        species={species}
        offs={offs}
        onChange={(what, reason) => {
          const { [what]: _, ...others } = offs
          draft.write(reason === null ? others : { ...others, [what]: reason })
        }}
      />
      <AskedNote asked={asked} />
      <Button
        kind="call"
        sub={text.openSub}
        state={asked.state === 'asking' ? 'waiting' : 'ready'}
        onPress={() => ask(send('open_shift', { shift: shift.id, off: offs }), () => draft.drop())}
      >
        {text.open}
      </Button>
    </div>
  )
}
