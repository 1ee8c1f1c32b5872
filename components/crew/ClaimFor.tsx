'use client'

import { useId } from 'react'

import { missingOfTree } from '@/lib/events/missing'
import { clockOf, useDraft, useSelect, useSend, whoIsWhere } from '@/lib/hooks'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Facts } from '../ui/Facts'
import { Pick } from '../ui/Pick'
import { Tag } from '../ui/Tag'
import { AskedNote } from './AskedNote'
import { isAtWork } from './crew-order'
import { mayPrune } from './deal-choices'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'
import { useRefusalsOf } from './use-refusals-of'

type ClaimForProps = {
  id: string
  name: string
  tree: number
  /** Dealt to them as well, for later. */
  others: readonly number[]
}

/** Begins the next dealt tree for somebody, alone or with somebody free. */
export function ClaimFor({ id, name, tree, others }: ClaimForProps) {
  const { people: text } = useLeadWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const send = useSend()
  const group = useId()
  const whyId = useId()
  const { asked, ask } = useAsk()
  const pair = useSelect((view) => view.state?.deals[tree]?.find((one) => one !== id) ?? null)
  const draft = useDraft<string | null>(`claim-for|${id}|${tree}`, pair)
  const free = useSelect((view) =>
    whoIsWhere(view)
      .filter((one) => one.state === 'here' && !isAtWork(one) && one.personId !== id)
      .map(({ personId }) => personId)
      .filter((one) => mayPrune(view, one))
  )
  const helper = draft.value
  const helpers = helper === null ? [] : [helper]
  const missing = useSelect((view) =>
    view.state
      ? missingOfTree(view.state, view.ground, tree, id, { helpers, ...clockOf(view) })
      : []
  )
  const sentenceOf = useRefusalsOf(name)

  return (
    <div className="stack">
      <ChoiceGroup label={text.withWhom} as="picks">
        {[null, ...free].map((one) => (
          <Pick
            key={one ?? 'alone'}
            type="radio"
            low
            name={group}
            checked={one === helper}
            onChange={() => draft.write(one)}
          >
            {one === null ? text.alone : nameOf(one)}
          </Pick>
        ))}
      </ChoiceGroup>
      <AskedNote asked={asked} whose={name} />
      {missing.length > 0 && (
        <div id={whyId}>
          <Facts facts={missing.map((refusal) => ({ icon: 'lock', text: sentenceOf(refusal) }))} />
        </div>
      )}
      <Button
        {...(missing.length > 0
          ? { state: 'off', describedBy: whyId }
          : { state: asked.state === 'asking' ? 'waiting' : 'ready' })}
        onPress={() => ask(send('claim_tree', { tree, helpers }, { personId: id }))}
      >
        {text.claimFor(tagOf(tree))}
      </Button>
      {others.length > 0 && (
        <p className="small tags">
          {text.dealtTrees}:
          {others.map((one) => (
            <Tag key={one}>{tagOf(one)}</Tag>
          ))}
        </p>
      )}
    </div>
  )
}
