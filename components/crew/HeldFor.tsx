'use client'

import { useState } from 'react'

import { useNow, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Tag } from '../ui/Tag'
import { AskedNote } from './AskedNote'
import type { OpenClaim } from './claims'
import { HalfDoneFor } from './HalfDoneFor'
import { HandOn } from './HandOn'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'
import { workArgsFor } from './work-args-for'

type HeldForProps = {
  id: string
  name: string
  claim: OpenClaim
}

/** The tree somebody is at: finished or left half done for them. */
export function HeldFor({ id, name, claim }: HeldForProps) {
  const { tree: words } = useWords()
  const { people: text } = useLeadWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const send = useSend()
  const now = useNow(30_000)
  const [isHalf, setIsHalf] = useState(false)
  const [isHandingOn, setIsHandingOn] = useState(false)
  const isMe = useSelect((view) => view.me?.personId === id)
  const { asked, ask } = useAsk()
  const { tree } = claim
  if (tree === null) return null

  const tag = tagOf(tree)
  const isHolder = claim.people[id] === 'holder'
  const since = text.atTreeSince(format.clock(new Date(claim.openedAt)))
  const work = workArgsFor(claim, tree, now)
  return (
    <div className="stack">
      <p>
        <Tag>{tag}</Tag> {since}
      </p>
      <AskedNote asked={asked} whose={name} />
      <div className="tree-buttons">
        {isHolder && (
          <>
            <Button icon="check" onPress={() => ask(send('finish_tree', work, { personId: id }))}>
              {text.finish(tag)}
            </Button>
            <Button onPress={() => setIsHalf(true)}>{text.halfDone}</Button>
            {!isMe && (
              <Button icon="send" onPress={() => setIsHandingOn(true)}>
                {text.handOn}
              </Button>
            )}
          </>
        )}
        {!isHolder && (
          <Button onPress={() => ask(send('leave_tree', { claim: claim.id }, { personId: id }))}>
            {words.leaveTree}
          </Button>
        )}
        <ButtonLink href={routes.map(tree)}>{text.seeTree}</ButtonLink>
      </div>
      {isHandingOn && (
        <HandOn claim={claim} id={id} name={name} tag={tag} onClose={() => setIsHandingOn(false)} />
      )}
      <HalfDoneFor
        open={isHalf}
        id={id}
        name={name}
        tag={tag}
        work={work}
        onClose={() => setIsHalf(false)}
      />
    </div>
  )
}
