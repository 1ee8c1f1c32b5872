'use client'

import { routes } from '@/lib/routes'
import { useDoorWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'

/** Somebody was in, and this device lost their sign-in. */
export function SignedOut() {
  const { join } = useDoorWords()
  return (
    <JoinFrame
      bench={
        <ButtonLink kind="call" href={routes.join()}>
          {join.joinAgain}
        </ButtonLink>
      }
    >
      <h1>{join.signedOutTitle}</h1>
      <p>{join.signedOutWhy}</p>
      <LanguageFirst />
    </JoinFrame>
  )
}
