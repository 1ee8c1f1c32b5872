'use client'

import { useId, useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Face } from '../ui/Face'
import { Pick } from '../ui/Pick'
import { AskedNote } from './AskedNote'
import { DealNotes } from './DealNotes'
import { DealRefused } from './DealRefused'
import { DealToWhom } from './DealToWhom'
import { firstChoices } from './deal-choices'
import { NotThisRound } from './NotThisRound'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { firstName, usePairName } from './use-pair-name'

/** What is picked, for whom, and the one step that deals it; at the thumbs. */
export function DealBar({ dealing }: { dealing: DealingNow }) {
  const { common } = useWords()
  const { leadMap, mapTools } = useLeadWords()
  const nameOf = useNameOf()
  const pairName = usePairName()
  const whyId = useId()
  const [isChoosing, setIsChoosing] = useState(false)
  const choices = useSelect((view) => firstChoices(view, dealing.to))
  const { trees, to, split, check } = dealing
  const lacks =
    trees.length === 0
      ? leadMap.chooseTrees
      : check.can.length === 0
        ? leadMap.noneToDeal
        : to.length === 0 && leadMap.choosePerson

  if (split) return <DealRefused split={split} dealing={dealing} to={pairName(to)} />
  return (
    <section className="deal-bar" aria-label={leadMap.pick}>
      <AskedNote asked={dealing.isAsking ? { state: 'idle' } : dealing.asked} />
      {/* It would push the map away under the finger that draws. */}
      {(!dealing.isDrawing || to.length > 0) && <DealNotes check={check} to={pairName(to)} />}
      <Button kind="quiet" icon="cross" label={leadMap.drop} onPress={dealing.drop} />
      <div className="deal-what">
        <div role="status">
          <h2>{leadMap.picked(trees.length)}</h2>
        </div>
        <p className="small" id={whyId}>
          {lacks || (dealing.isDrawing ? mapTools.drawing : leadMap.picking)}
        </p>
      </div>
      {check.dealt.length > 0 && (
        <Button icon="undo" onPress={dealing.takeBack}>
          {leadMap.takeBackSome(check.dealt.length)}
        </Button>
      )}
      {trees.length > 0 && !dealing.isDrawing && (
        <NotThisRound trees={trees} onDone={dealing.done} />
      )}
      <ChoiceGroup label={leadMap.toWhom} hideLabel as="picks">
        {choices.map((id) => (
          <Pick
            key={id}
            type="checkbox"
            checked={to.includes(id)}
            onChange={() => dealing.choose(id)}
            face={<Face name={nameOf(id)} />}
          >
            {firstName(nameOf(id))}
          </Pick>
        ))}
        <Button kind="quiet" onPress={() => setIsChoosing(true)}>
          {leadMap.others}
        </Button>
      </ChoiceGroup>
      {lacks ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {leadMap.dealNone}
        </Button>
      ) : dealing.isAsking ? (
        <Button kind="call" state="waiting">
          {common.asking}
        </Button>
      ) : (
        <Button kind="call" onPress={() => dealing.deal()}>
          {leadMap.deal(check.can.length, pairName(to))}
        </Button>
      )}
      <DealToWhom
        open={isChoosing}
        to={to}
        onChoose={dealing.choose}
        onClose={() => setIsChoosing(false)}
      />
    </section>
  )
}
