'use client'

import { useId, useState } from 'react'

import { headCount, useDraft, useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Panel } from '../ui/Panel'
import { Why } from '../ui/Why'
import { toBrief, toTellAgain } from './briefed'
import { noTicks, type Ticks, ticked, tickedAs } from './ticks'

/** Who heard all of it, said in one tap: those who stand there are ticked, who comes meanwhile is not. */
export function GiveTo({ shiftId }: { shiftId: string }) {
  const { shift: text } = useLeadWords()
  const nameOf = useNameOf()
  const send = useSend()
  const whyId = useId()
  const newcomers = useSelect(toBrief)
  const again = useSelect(toTellAgain)
  const here = useSelect(headCount)
  const [hadCome] = useState(newcomers)
  const draft = useDraft<Ticks>(`briefed|${shiftId}`, noTicks)
  const { asked, ask } = useAsk()
  const waiting = [...again, ...newcomers]
  const chosen = ticked(draft.value, waiting, hadCome)
  const tick = (people: readonly string[], isOn: boolean) =>
    draft.write(tickedAs(draft.value, people, isOn))

  if (here === 0) return <p>{text.nobodyHere}</p>
  if (waiting.length === 0) return <p role="status">{text.allBriefed}</p>
  const rows = (people: readonly string[]) =>
    people.map((id) => (
      <CheckRow
        key={id}
        checked={chosen.includes(id)}
        onChange={(isOn) => tick([id], isOn)}
        hint={newcomers.includes(id) && !hadCome.includes(id) ? text.cameJustNow : undefined}
      >
        {nameOf(id)}
      </CheckRow>
    ))
  const isAll = chosen.length === waiting.length
  return (
    <Panel>
      <div className="stack">
        <p>{text.giveNote}</p>
        {again.length > 0 && (
          <ChoiceGroup label={text.tellAgain} as="checks">
            {rows(again)}
          </ChoiceGroup>
        )}
        {newcomers.length > 0 && (
          <ChoiceGroup label={text.notBriefedYet} as="checks">
            {rows(newcomers)}
          </ChoiceGroup>
        )}
        <Button onPress={() => tick(waiting, !isAll)}>
          {isAll ? text.untickAll : text.tickAll(waiting.length)}
        </Button>
        <AskedNote asked={asked} />
        {chosen.length === 0 ? (
          <>
            <Why id={whyId}>{text.tickSomeone}</Why>
            <Button kind="call" state="off" describedBy={whyId}>
              {text.giveBriefing}
            </Button>
          </>
        ) : (
          <Button kind="call" onPress={() => ask(send('give_briefing', { people: chosen }))}>
            {text.gave(chosen.length)}
          </Button>
        )}
      </div>
    </Panel>
  )
}
