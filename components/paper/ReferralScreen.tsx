'use client'

import './referral.css'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useTitle } from '../layout/use-title'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { ReferralSheet } from './ReferralSheet'

/** Sheets for the arborist as they come out of the printer, and the way to print them. */
export function ReferralScreen({ flags }: { flags: readonly string[] }) {
  const { leadMap, referral } = useLeadWords()
  useTitle()
  const open = useSelect((view) => flags.filter((id) => view.state?.flags[id]?.kind === 'arborist'))
  return (
    <main className="on-paper">
      <div className="off-paper">
        <h1>{referral.title}</h1>
        <p>{open.length === 0 ? referral.none : referral.onPaper}</p>
        <div className="row wrap">
          {open.length > 0 && (
            <Button kind="call" onPress={() => window.print()}>
              {referral.print}
            </Button>
          )}
          <ButtonLink href={routes.flags()}>{referral.back}</ButtonLink>
          <ButtonLink icon="aid" href={routes.emergency()}>
            {leadMap.emergency}
          </ButtonLink>
        </div>
      </div>
      {open.map((id) => (
        <ReferralSheet key={id} flag={id} />
      ))}
    </main>
  )
}
