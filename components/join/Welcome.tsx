'use client'

import { routes } from '@/lib/routes'
import { useDoorWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'

/** Nobody is in on this device: what this is, and how one gets in. */
export function Welcome() {
  const { join } = useDoorWords()
  return (
    <JoinFrame
      bench={
        <ButtonLink kind="call" href={routes.join()}>
          {join.title}
        </ButtonLink>
      }
    >
      <h1>{join.welcome}</h1>
      <p>{join.welcomeWhy}</p>
      <LanguageFirst />
    </JoinFrame>
  )
}
