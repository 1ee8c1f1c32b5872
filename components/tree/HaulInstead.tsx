'use client'

import { brushReadiness, rowsToHaul, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'

/** The other work there is: where wood lies, for whoever is ready to haul it. */
export function HaulInstead() {
  const { brush } = useWords()
  const canHaul = useSelect(
    (view) => brushReadiness(view).length === 0 && rowsToHaul(view, null).length > 0
  )
  if (!canHaul) return null
  return (
    <ButtonLink icon="heap" href={routes.haul()}>
      {brush.instead}
    </ButtonLink>
  )
}
