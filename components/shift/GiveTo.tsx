'use client'

import { useId } from 'react'

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
import { toBrief } from './briefed'

const nobody: string[] = []

/** Ticks who heard all of it, and says so. */
export function GiveTo({ shiftId }: { shiftId: string }) {
  const { shift: text } = useLeadWords()
  const nameOf = useNameOf()
  const send = useSend()
  const whyId = useId()
  const waiting = useSelect(toBrief)
  const here = useSelect(headCount)
  const draft = useDraft(`briefed|${shiftId}`, nobody)
  const { asked, ask } = useAsk()
  // Whoever left meanwhile, or was briefed by another lead, is ticked in vain.
  const ticked = draft.value.filter((id) => waiting.includes(id))
  const isAll = ticked.length === waiting.length

  if (here === 0) return <p>{text.nobodyHere}</p>
  if (waiting.length === 0) return <p role="status">{text.allBriefed}</p>
  return (
    <Panel>
      <div className="stack">
        <p>{text.giveNote}</p>
        <Button onPress={() => draft.write(isAll ? nobody : waiting)}>
          {isAll ? text.untickAll : text.tickAll(waiting.length)}
        </Button>
        <ChoiceGroup label={text.giveTitle} hideLabel as="checks">
          {waiting.map((id) => (
            <CheckRow
              key={id}
              checked={ticked.includes(id)}
              onChange={(isOn) =>
                draft.write(isOn ? [...ticked, id] : ticked.filter((one) => one !== id))
              }
            >
              {nameOf(id)}
            </CheckRow>
          ))}
        </ChoiceGroup>
        <AskedNote asked={asked} />
        {ticked.length === 0 ? (
          <>
            <Why id={whyId}>{text.tickSomeone}</Why>
            <Button kind="call" state="off" describedBy={whyId}>
              {text.giveBriefing}
            </Button>
          </>
        ) : (
          <Button
            kind="call"
            onPress={() =>
              ask(send('give_briefing', { people: ticked }), () => void draft.writeNow(nobody))
            }
          >
            {text.gave(ticked.length)}
          </Button>
        )}
      </div>
    </Panel>
  )
}
