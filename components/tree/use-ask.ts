'use client'

import { useState } from 'react'

import type { ArgsOf, CommandName } from '@/lib/events/commands'
import { type Sent, useSend } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { useRefusalWords } from '../sync/use-refusal-words'

export type Question = {
  [Name in CommandName]: { name: Name; args: ArgsOf<Name>; personId?: string }
}[CommandName]

/** Asks something while one waits, and says in full why it was not to be. */
export function useAsk() {
  const send = useSend()
  const words = useWords()
  const say = useRefusalWords()
  const [isAsking, setAsking] = useState(false)
  const [reasons, setReasons] = useState<readonly string[]>([])

  async function ask({ name, args, personId }: Question): Promise<boolean> {
    setAsking(true)
    setReasons([])
    const sent = await send(name, args, personId === undefined ? undefined : { personId })
    setAsking(false)
    setReasons(reasonsOf(sent))
    return sent.state === 'accepted' || sent.state === 'kept'
  }

  function reasonsOf(sent: Sent): string[] {
    switch (sent.state) {
      case 'kept':
      case 'accepted':
        return []
      case 'refused':
        return sent.refused.map((refusal) => say(refusal))
      case 'no_answer':
        return [words.errors.noAnswer]
      case 'failed':
        return [faultSentence(words, { fault: sent.fault, code: sent.code ?? undefined })]
    }
  }

  return { ask, isAsking, reasons }
}
