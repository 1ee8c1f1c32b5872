'use client'

import { useState } from 'react'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { type Draft, myTree, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { faultSentence } from '@/lib/text/fault'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { Tag } from '../ui/Tag'
import { Why } from '../ui/Why'
import { CloseLink } from './CloseLink'
import { DiseaseQuestions } from './DiseaseQuestions'
import { decisionOf } from './danger-draft'
import { FlagExtras } from './FlagExtras'
import { FlagStep, FlagWhy } from './FlagStep'
import { type FlagDraft, flagArgs } from './flag-draft'
import { HazardQuestion } from './HazardQuestion'
import { KindQuestion } from './KindQuestion'
import { shareAfter } from './share-after'
import { useStepsDone } from './use-steps-done'
import type { TreeFacts } from './use-tree'
import { useWorkCard } from './use-work-card'

type FlagFormProps = {
  facts: TreeFacts
  draft: Draft<FlagDraft>
  onRaised: (id: string, kind: 'disease' | 'arborist') => void
}

/** Ill or dangerous, then one question in pictures, then a few words and a photo for who likes. */
export function FlagForm({ facts, draft, onRaised }: FlagFormProps) {
  const { tree, tag } = facts
  const words = useWords()
  const send = useSend()
  const { card } = useWorkCard(facts)
  const isMine = useSelect((view) => {
    const mine = myTree(view)
    return mine.state !== 'none' && mine.tree === tree.no
  })
  const { stepsDone, forget } = useStepsDone(tree.no)
  const [fault, setFault] = useState<string | null>(null)
  const flag = draft.value
  const share = isMine ? shareAfter(stepsDone, card.steps.length) : null
  const rules = useSelect((view) => view.state?.orchard.houseRules ?? {})
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const here = {
    units,
    share,
    heightCm: tree.heightCm,
    limbCm: houseRuleOf(rules, 'limb_cm'),
    feetCm: houseRuleOf(rules, 'feet_cm'),
    leanDeg: houseRuleOf(rules, 'lean_deg'),
    houseM: houseRuleOf(rules, 'keep_out_m'),
  }
  const args = flagArgs(tree.no, flag, here)
  const change = (part: Partial<FlagDraft>) => draft.write({ ...flag, ...part })

  async function raise(): Promise<void> {
    if (!args) return
    const sent = await send('flag_tree', args)
    if (sent.state === 'failed' || sent.state === 'no_answer' || sent.state === 'refused') {
      const told = sent.state === 'failed' ? sent : { fault: 'unknown' as const, code: null }
      setFault(faultSentence(words, { fault: told.fault, code: told.code ?? undefined }))
      return
    }
    if (flag.photo !== null)
      await send('add_photo', { tree: tree.no, flag: sent.id, purpose: 'flag', jpeg: flag.photo })
    if (args.kind === 'arborist') await forget()
    await draft.drop()
    onRaised(sent.id, args.kind)
  }

  return (
    <CrewScreen
      tree={tree.no}
      who={<Tag>{tag}</Tag>}
      end={<CloseLink href={routes.tree(tree.no)} />}
      why={
        fault ? (
          <Why tone="wrong">{fault}</Why>
        ) : (
          <FlagWhy kind={flag.kind} isReady={args !== null} />
        )
      }
      step={<FlagStep kind={flag.kind} isReady={args !== null} onRaise={() => void raise()} />}
    >
      <KindQuestion tag={tag} kind={flag.kind} onChange={(kind) => change({ kind })} />
      {flag.kind === 'disease' && <DiseaseQuestions flag={flag} onChange={change} />}
      {flag.kind === 'arborist' && (
        <HazardQuestion flag={flag} decision={decisionOf(flag.danger, here)} onChange={change} />
      )}
      {flag.kind !== null && (
        <FlagExtras
          flag={flag}
          onChange={change}
          onPhoto={(photo) => void draft.writeNow({ ...flag, photo })}
          beforeCamera={() => draft.writeNow(flag)}
        />
      )}
    </CrewScreen>
  )
}
