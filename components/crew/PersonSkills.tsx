'use client'

import { useState } from 'react'

import type { Skill } from '@/lib/events/state'
import { useNow, useSelect, useSend } from '@/lib/hooks'
import { capitalised } from '@/lib/text/species'
import { dayIn } from '@/lib/util/day-in'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { AskedNote } from './AskedNote'
import { GrantSkill } from './GrantSkill'
import { skillHolds } from './skill-until'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

const skills: readonly Skill[] = ['prunes_alone', 'hand_saw', 'ladder']

/** What they may do: granted by a lead, until when; never to oneself. */
export function PersonSkills({ id, name }: { id: string; name: string }) {
  const { things } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const sayUntil = useUntilWords()
  const { asked, ask } = useAsk()
  const granted = useSelect((view) => view.state?.skills[id] ?? {})
  const isMe = useSelect((view) => view.me?.personId === id)
  const [granting, setGranting] = useState<Skill | null>(null)

  return (
    <Panel title={text.skills}>
      <ul className="list">
        {skills.map((skill) => (
          <li key={skill} className="person-row">
            <span className="item grow">
              <span className="grow">
                <b>{capitalised(things.skill[skill])}</b>
                <span className="small">{sayUntil(granted[skill])}</span>
              </span>
            </span>
            {granted[skill] !== undefined ? (
              <Button
                label={text.takeSkill(things.skill[skill])}
                onPress={() => ask(send('end_skill', { subject: id, skill }))}
              >
                {text.endSkill}
              </Button>
            ) : (
              !isMe && (
                <Button
                  label={text.grantSkill(things.skill[skill])}
                  onPress={() => setGranting(skill)}
                >
                  {text.grant}
                </Button>
              )
            )}
          </li>
        ))}
      </ul>
      {isMe && <p className="small">{text.notToYourself}</p>}
      <AskedNote asked={asked} whose={name} />
      {granting !== null && (
        <GrantSkill id={id} skill={granting} onClose={() => setGranting(null)} />
      )}
    </Panel>
  )
}

/** Undefined: not granted. Null: without an end. */
function useUntilWords(): (until: string | null | undefined) => string {
  const { people: text } = useLeadWords()
  const format = useFormat()
  const now = useNow(60_000)
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  return (until) => {
    const holds = skillHolds(until, now === null ? '' : dayIn(timeZone, now))
    if (holds === 'not_granted') return text.notGranted
    if (holds === 'no_end') return `${text.granted}, ${text.noEnd}`
    // Noon is that day in every time zone an orchard could be in.
    const last = text.untilDate(format.date(new Date(`${until}T12:00:00Z`)))
    const word = { holds: text.granted, ends_soon: text.endsSoon, ran_out: text.ranOut }[holds]
    return `${word}, ${last}`
  }
}
