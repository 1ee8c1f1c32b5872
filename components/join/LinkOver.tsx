'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useDoorWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import type { Look } from './use-invite'

type LinkOverProps = { why: Extract<Look, { state: 'over' }>['why']; onOtherCode: () => void }

/** A link that lets nobody in. Who is in the crew already goes on without it. */
export function LinkOver({ why, onOtherCode }: LinkOverProps) {
  const { join } = useDoorWords()
  const known = useSelect((view) => view.memberships[0]?.personName ?? null)
  return (
    <JoinFrame
      bench={
        known === null ? (
          <Button kind="call" onPress={onOtherCode}>
            {join.otherCode}
          </Button>
        ) : (
          <>
            <ButtonLink kind="call" href={routes.home()}>
              {join.goOnAs(known)}
            </ButtonLink>
            <Button onPress={onOtherCode}>{join.otherCode}</Button>
          </>
        )
      }
    >
      <h1>{join.overTitle}</h1>
      <p>{join.overWhy[why]}</p>
      <p>{join.overDo}</p>
      <LanguageFirst />
    </JoinFrame>
  )
}
