'use client'

import { useId } from 'react'

import { useDraft, useSelect, useSend, whoIsWhere } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { Pick } from '../ui/Pick'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import type { OpenClaim } from './claims'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type HandOnProps = { claim: OpenClaim; id: string; name: string; tag: string; onClose: () => void }
type Said = { to: string | null; how: 'spoke' | 'phoned' | 'notReached' | null }

const notSaid: Said = { to: null, how: null }

/** A lead hands somebody's tree to another: to whom, and how the one who held it was reached. */
export function HandOn({ claim, id, name, tag, onClose }: HandOnProps) {
  const { common } = useWords()
  const { leadMap, people: text } = useLeadWords()
  const nameOf = useNameOf()
  const send = useSend()
  const whyId = useId()
  const draft = useDraft<Said>(`hand-on|${claim.id}`, notSaid)
  const { asked, ask } = useAsk()
  const free = useSelect((view) =>
    whoIsWhere(view)
      .filter((one) => one.state === 'here' && (one.tree === null || one.part === 'helper'))
      .filter((one) => one.tree === null || one.tree === claim.tree)
      .map(({ personId }) => personId)
  ).filter((other) => other !== id)
  const { to, how } = draft.value
  const lacks = to === null ? leadMap.choosePerson : how === null && leadMap.sayHow

  const handOn = () => {
    if (to === null || how === null) return
    const args = { claim: claim.id, to, howReached: leadMap[how] }
    void ask(send('hand_over', args, { personId: id }), () => {
      void draft.drop()
      onClose()
    })
  }
  return (
    <Dialog open title={text.handOnTitle(tag)} onClose={onClose} closeLabel={common.close}>
      <ChoiceGroup label={text.handOnTo} as="picks">
        {free.map((other) => (
          <Pick
            key={other}
            type="radio"
            name={`to-${claim.id}`}
            checked={to === other}
            onChange={() => draft.write({ ...draft.value, to: other })}
          >
            {nameOf(other)}
          </Pick>
        ))}
      </ChoiceGroup>
      {free.length === 0 && <p role="status">{text.handOnNobody}</p>}
      <ChoiceGroup label={leadMap.howReached(name)} as="picks">
        {(['spoke', 'phoned', 'notReached'] as const).map((each) => (
          <Pick
            key={each}
            type="radio"
            name={`how-${claim.id}`}
            checked={how === each}
            onChange={() => draft.write({ ...draft.value, how: each })}
          >
            {leadMap[each]}
          </Pick>
        ))}
      </ChoiceGroup>
      <AskedNote asked={asked} whose={to === null ? name : nameOf(to)} />
      {lacks && <Why id={whyId}>{lacks}</Why>}
      {lacks ? (
        <Button kind="call" wide state="off" describedBy={whyId}>
          {text.handOn}
        </Button>
      ) : (
        <Button
          kind="call"
          wide
          state={asked.state === 'asking' ? 'waiting' : 'ready'}
          onPress={handOn}
        >
          {text.handOn}
        </Button>
      )}
    </Dialog>
  )
}
