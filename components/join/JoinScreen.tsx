'use client'

import { useState } from 'react'

import { faultSentence } from '@/lib/text/fault'
import { useDoorWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { CodeField } from './CodeField'
import { Invited } from './Invited'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { LinkOver } from './LinkOver'
import { useCodeInLink } from './use-code'
import { useInvite } from './use-invite'

/** Opens a link: what it is good for, then the least that must be asked. */
export function JoinScreen() {
  const inLink = useCodeInLink()
  const [typed, setTyped] = useState<string | null>(null)
  const code = typed ?? inLink
  if (code === null) return <Looking />
  if (code === '') return <NoCode onCode={setTyped} />
  return <WithCode key={code} code={code} onOtherCode={() => setTyped('')} />
}

function WithCode({ code, onOtherCode }: { code: string; onOtherCode: () => void }) {
  const words = useDoorWords()
  const look = useInvite(code)
  switch (look.state) {
    case 'looking':
      return <Looking />
    case 'over':
      return <LinkOver why={look.why} onOtherCode={onOtherCode} />
    case 'failed':
      return (
        <JoinFrame
          bench={
            <>
              <Why tone="wrong">{faultSentence(words, look.fault)}</Why>
              <Button kind="call" onPress={look.again}>
                {words.common.tryAgain}
              </Button>
            </>
          }
        >
          <h1>{words.join.title}</h1>
          <LanguageFirst />
        </JoinFrame>
      )
    case 'found':
      return <Invited code={code} invite={look.invite} />
  }
}

function Looking() {
  const { join } = useDoorWords()
  return (
    <JoinFrame>
      <h1>{join.title}</h1>
      <p role="status">{join.looking}</p>
    </JoinFrame>
  )
}

function NoCode({ onCode }: { onCode: (code: string) => void }) {
  const { join } = useDoorWords()
  return (
    <JoinFrame>
      <h1>{join.title}</h1>
      <p>{join.noCode}</p>
      <LanguageFirst />
      <CodeField label={join.codeLabel} action={join.useCode} onCode={onCode} />
    </JoinFrame>
  )
}
