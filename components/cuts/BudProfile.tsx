'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { TextField } from '../ui/TextField'
import { profiles, type useShoot } from './use-shoot'

/** Of a tree that nobody described a lead says where the buds sit, or counts them on one shoot. */
export function BudProfile({ shoot }: { shoot: ReturnType<typeof useShoot> }) {
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
    </>
  )
}
