'use client'

import { routes } from '@/lib/routes'
import { ButtonLink } from '../ui/ButtonLink'
import { useDoorWords } from './Words'

/** From what stands beside the work (a card, a call, a break) back to whatever comes next. */
export function BackToWork() {
  const { common } = useDoorWords()
  return (
    <ButtonLink wide href={routes.home()}>
      {common.toWork}
    </ButtonLink>
  )
}
