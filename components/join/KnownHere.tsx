'use client'

import type { Invite } from '@/lib/hooks'
import { useDoorWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { useGettingIn } from './use-getting-in'

type KnownHereProps = {
  code: string
  invite: Invite
  name: string
  onSomeoneElse: () => void
}

/** Scanned again, say on the morning after: the same person, unless somebody else holds the phone. */
export function KnownHere({ code, invite, name, onSomeoneElse }: KnownHereProps) {
  const { join } = useDoorWords()
  const { isAsking, sent, getIn } = useGettingIn()
  return (
    <JoinFrame
      bench={
        <>
          <WhyNot sent={sent} />
          <Button
            kind="call"
            state={isAsking ? 'waiting' : 'ready'}
            onPress={() => void getIn({ code, name })}
          >
            {isAsking ? join.joining : join.goOnAs(name)}
          </Button>
          <Button onPress={onSomeoneElse}>{join.someoneElse}</Button>
        </>
      }
    >
      <h1>{invite.orchardName}</h1>
      <p>{join.alreadyIn(name)}</p>
      <LanguageFirst />
    </JoinFrame>
  )
}
