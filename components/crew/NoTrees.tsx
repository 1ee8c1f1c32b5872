'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { ButtonLink } from '../ui/ButtonLink'
import { useLeadWords } from './use-lead-words'

/** An orchard without trees: for a manager how they come in, for a lead who does that. */
export function NoTrees() {
  const { leadMap, ground } = useLeadWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  if (!isManager)
    return (
      <p>
        {leadMap.noTrees} {leadMap.noTreesManager}
      </p>
    )
  return (
    <div className="no-trees">
      <p>
        {leadMap.noTrees} {leadMap.bringIn}
      </p>
      <ButtonLink kind="call" href={routes.bringIn()}>
        {leadMap.bringInTrees}
      </ButtonLink>
      <ButtonLink href={routes.newBlock()}>{ground.newBlock}</ButtonLink>
    </div>
  )
}
