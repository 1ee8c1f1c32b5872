'use client'

import type { Invite } from '@/lib/hooks'
import { useDoorWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { useGettingIn } from './use-getting-in'

/** One more device of somebody who is in the crew already, or a manager's way back. */
export function LinkDevice({ code, invite }: { code: string; invite: Invite }) {
  const { join } = useDoorWords()
  const { isAsking, sent, getIn } = useGettingIn()
  const isRecovery = invite.kind === 'recovery'
  return (
    <JoinFrame
      bench={
        <>
          <WhyNot sent={sent} />
          <Button
            kind="call"
            state={isAsking ? 'waiting' : 'ready'}
            onPress={() => void getIn({ code })}
          >
            {isAsking ? join.joining : isRecovery ? join.backIn : join.linkDevice}
          </Button>
        </>
      }
    >
      <h1>{invite.orchardName}</h1>
      <p>{isRecovery ? join.forRecovery : join.forDevice}</p>
      <LanguageFirst />
    </JoinFrame>
  )
}
