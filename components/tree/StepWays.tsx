'use client'

import type { StepCode } from '@/lib/domain/pruning/work-card'
import { isLeadView, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import type { IconName } from '../ui/Icon'

type Way = 'cut' | 'shorten' | 'limbs' | 'openness' | 'weight'

/** What helps with each step. Leads alone weigh limbs, and choose those of a young tree. */
const waysFrom: Record<StepCode, readonly Way[]> = {
  dead_broken_diseased: ['cut', 'weight'],
  crossing_rubbing: ['cut', 'weight'],
  open_the_centre: ['cut', 'limbs', 'openness', 'weight'],
  free_the_leader: ['cut', 'weight'],
  let_light_in: ['cut', 'openness', 'weight'],
  ground_up_inside_out: ['cut', 'openness'],
  renew_spurs: ['cut'],
  renew_shoots: ['cut'],
  last_years_wood: ['shorten'],
  in_training: ['limbs'],
}

const icons: Record<Way, IconName> = {
  cut: 'saw',
  shorten: 'pruner',
  limbs: 'wheel',
  openness: 'sun',
  weight: 'heap',
}

function isLeads(step: StepCode, way: Way): boolean {
  return way === 'weight' || step === 'in_training'
}

/** From a step to what helps with it, and to the lead. */
export function StepWays({ step, tree }: { step: StepCode; tree: number }) {
  const { whatToCut } = useWords()
  const isLead = useSelect(isLeadView)
  const paths: Record<Way, string> = {
    cut: routes.cutAtTree(tree),
    shorten: routes.shortenAtTree(tree),
    limbs: routes.limbsOfTree(tree),
    openness: routes.openness(tree),
    weight: routes.weighLimb(tree),
  }
  const ways = waysFrom[step].filter((way) => isLead || !isLeads(step, way))
  return (
    <div className="step-ways">
      {ways.map((way) => (
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
