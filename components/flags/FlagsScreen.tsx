'use client'

import './flags.css'

import { countFlagsThatWait, flagsInOrder, useFlagDetails, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Count } from '../ui/Count'
import { Note } from '../ui/Note'
import { FlagCard } from './FlagCard'

/** What is flagged, hazards first: a lead looks, decides or refers, and writes down what is done. */
export function FlagsScreen() {
  const { flags: text } = useLeadWords()
  const flags = useSelect(flagsInOrder)
  const waiting = useSelect(countFlagsThatWait)
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const details = useFlagDetails(flags.map(({ id }) => id))
  const hazards = flags.filter(({ kind }) => kind === 'arborist')
  const groups = [
    { title: text.hazards, of: hazards },
    { title: text.diseases, of: flags.filter(({ kind }) => kind === 'disease') },
  ]

  return (
    <LeadScreen here="flags" reads>
      <div className="flags">
        <h1>
          {flags.length === 0 ? text.none : waiting === 0 ? text.nothingWaits : text.title(waiting)}
        </h1>
        {flags.length === 0 && <p className="muted">{text.noneNote}</p>}
        {isOffline && <Note icon="nobars">{text.offline}</Note>}
        {hazards.length > 1 && (
          <p>
            <ButtonLink href={routes.referral(...hazards.map(({ id }) => id))}>
              {text.printAll}
            </ButtonLink>
          </p>
        )}
        {groups.map(
          ({ title, of }) =>
            of.length > 0 && (
              <section key={title} className="stack" aria-label={title}>
                <h2>
                  {title} <Count>{of.length}</Count>
                </h2>
                {of.map((flag) => (
                  <FlagCard
                    key={flag.id}
                    flag={flag}
                    details={details}
                    isNext={flag.id === flags[0]?.id}
                  />
                ))}
              </section>
            )
        )}
      </div>
    </LeadScreen>
  )
}
