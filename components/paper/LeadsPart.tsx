'use client'

import type { Skill } from '@/lib/events/state'
import { usePrivatePeople, useSelect } from '@/lib/hooks'
import { lackWords } from '../crew/lack-words'
import { peopleInOrder } from '../crew/readiness'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { PaperTable } from './Page'
import { useNewOnPaper } from './use-new-on-paper'

/** What only a lead knows of people. Says that it is not to be hung up. */
export function LeadsPart() {
  const { things } = useWords()
  const { paper: text, people: peopleWords } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const lines = useSelect(peopleInOrder)
  const people = useSelect((view) => view.state?.people ?? {})
  const minors = useSelect((view) => view.state?.minors ?? {})
  const skills = useSelect((view) => view.state?.skills ?? {})
  const contacts = usePrivatePeople()
  const dayOf = useNewOnPaper(lines.map(({ id }) => id))
  const phoneOf = (id: string) => (contacts.state === 'read' ? contacts.value[id]?.phone : null)
  const skillsOf = (id: string) => Object.keys(skills[id] ?? {}) as Skill[]
  const about = (id: string) => {
    const minor = minors[id]
    if (!minor) return things.role[people[id]?.role ?? 'visitor']
    return minor.guardianId ? text.minor(nameOf(minor.guardianId)) : text.minorAlone
  }
  const columns = [
    { name: 'name', head: text.name },
    { name: 'ready', head: text.ready },
    { name: 'skills', head: text.skills },
    { name: 'phone', head: text.phone },
    { name: 'notes', head: text.notes },
  ]
  return (
    <section className="paper-sheet" aria-label={text.forLead}>
      <p className="framed">
        <b>{text.forLeadNote}</b>
        {contacts.state !== 'read' && <span>{text.phonesUnknown}</span>}
      </p>
      <PaperTable title={text.forLead} columns={columns}>
        <tbody>
          {lines.map(({ id, lacks }) => (
            <tr key={id}>
              <th scope="row">
                {nameOf(id)}
                <small>{about(id)}</small>
                {dayOf.has(id) && <small>{text.newInHeat(dayOf.get(id) ?? 1)}</small>}
              </th>
              <td>
                {lacks.length === 0
                  ? text.readyWord
                  : text.lacks(format.list(lackWords(peopleWords, lacks)))}
              </td>
              <td>{format.list(skillsOf(id).map((skill) => things.skill[skill]))}</td>
              <td>{phoneOf(id) ?? ''}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </PaperTable>
    </section>
  )
}
