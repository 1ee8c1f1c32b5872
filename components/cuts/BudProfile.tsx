'use client'

import type { BudSite, Cultivar } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { AskAtTree } from '../tree/AskAtTree'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { TextField } from '../ui/TextField'
import { profiles, type useShoot } from './use-shoot'

type BudProfileProps = { shoot: ReturnType<typeof useShoot>; cultivar: Cultivar | null }

/** Of a tree that nobody described a lead says where the buds sit, or counts them on one shoot. */
export function BudProfile({ shoot, cultivar }: BudProfileProps) {
  const { cuts } = useWords()
  const { shorten: text } = cuts
  return (
    <>
      <ChoiceGroup label={text.profile} as="picks">
        {profiles.map((profile) => (
          <Pick
            key={profile}
            type="radio"
            name="profile"
            checked={shoot.profile === profile}
            onChange={() => shoot.setProfile(profile)}
          >
            {text.profiles[profile]}
          </Pick>
        ))}
      </ChoiceGroup>
      {shoot.profile === 'counted' && (
        <TextField
          label={text.counts}
          hint={text.countsHint}
          fault={shoot.isTypedWrong && text.countsWrong}
          value={shoot.typed}
          onChange={shoot.setTyped}
          maxLength={60}
        />
      )}
      {cultivar && <KeepBuds buds={shoot.bearing.buds} cultivar={cultivar} />}
    </>
  )
}

/** What was seen on one shoot a manager writes down for the whole cultivar, so that nobody has to ask again. */
function KeepBuds({ buds, cultivar }: { buds: BudSite; cultivar: Cultivar }) {
  const { cuts } = useWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  if (!isManager || buds === 'unknown' || buds === cultivar.buds) return null
  const { no, species, name, habit } = cultivar
  return (
    <AskAtTree
      name="write_cultivar"
      args={{ cultivar: no, species, name, habit, buds }}
      icon="kept"
    >
      {cuts.shorten.keep(name)}
    </AskAtTree>
  )
}
