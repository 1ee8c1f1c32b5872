'use client'

import type { StepCode } from '@/lib/domain/pruning/work-card'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import type { IconName } from '../ui/Icon'

type Way = 'cut' | 'shorten'

const waysFrom: Record<StepCode, readonly Way[]> = {
  dead_broken_diseased: ['cut'],
  crossing_rubbing: ['cut'],
  open_the_centre: ['cut'],
  free_the_leader: ['cut'],
  let_light_in: ['cut'],
  ground_up_inside_out: ['cut'],
  renew_spurs: ['cut'],
  renew_shoots: ['cut'],
  last_years_wood: ['shorten'],
  in_training: [],
}

const icons: Record<Way, IconName> = { cut: 'saw', shorten: 'pruner' }

/** From a step to what helps with it, and to the lead. */
export function StepWays({ step, tree }: { step: StepCode; tree: number }) {
  const { whatToCut } = useWords()
  const paths: Record<Way, string> = {
    cut: routes.cutAtTree(tree),
    shorten: routes.shortenAtTree(tree),
  }
  return (
    <div className="step-ways">
      {waysFrom[step].map((way) => (
        <ButtonLink key={way} icon={icons[way]} href={paths[way]}>
          {whatToCut.ways[way]}
        </ButtonLink>
      ))}
      <ButtonLink icon="call" href={routes.callLead()}>
        {whatToCut.ways.notSure}
      </ButtonLink>
    </div>
  )
}
