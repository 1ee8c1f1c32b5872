'use client'

import type { ReactNode } from 'react'

import { myTree, nameOf, useSelect, whoIsWhere } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Face } from '../ui/Face'
import { Icon, type IconName } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { leadsToday } from './leads'
import { phoneNumbersIn, telHref } from './phone-numbers'

/** By which means a lead is reached. Nothing here pretends to send. */
export function CallLeadScreen() {
  const { help } = useStartWords()
  const tagOf = useTagOf()
  const myTag = useSelect((view) => {
    const mine = myTree(view)
    return mine.state === 'none' ? null : mine.tree
  })
  const number = useSelect((view) => phoneNumbersIn(view.emergency?.call ?? '')[0])

  return (
    <CrewScreen>
      <h1>{help.callLeadTitle}</h1>
      <p>{help.phoneSendsNothing}</p>
      {myTag !== null && <Note icon="map">{help.yourTree(tagOf(myTag))}</Note>}
      <Panel>
        <List>
          <Means icon="person" title={help.voice} note={help.voiceNote} />
          <Means icon="send" title={help.radio} note={help.radioNote} />
          {number !== undefined && (
            <Means
              icon="call"
              title={help.phone}
              note={help.phoneNote}
              end={
                <a className="btn" href={telHref(number)} aria-label={help.callFirst(number)}>
                  {number}
                </a>
              }
            />
          )}
        </List>
      </Panel>
      <Leads />
      <Note icon="aid">{help.hurt}</Note>
      <ButtonLink icon="aid" href={routes.emergency()}>
        {help.emergencyTitle}
      </ButtonLink>
    </CrewScreen>
  )
}

type MeansProps = { icon: IconName; title: string; note: string; end?: ReactNode }

function Means({ icon, title, note, end }: MeansProps) {
  return <ListItem lead={<Icon name={icon} />} title={title} note={note} end={end} />
}

/** Who leads, and at which tree they were last. */
function Leads() {
  const { help } = useStartWords()
  const tagOf = useTagOf()
  const leads = useSelect((view) => {
    const places = new Map(whoIsWhere(view).map((place) => [place.personId, place]))
    return leadsToday(view)
      .filter((id) => places.has(id))
      .map((id) => ({
        id,
        name: nameOf(view, id) ?? '',
        tree: places.get(id)?.tree ?? null,
        isOnBreak: places.get(id)?.state === 'break',
      }))
  })
  return (
    <Panel title={help.whoLeads}>
      {leads.length === 0 ? (
        <p>{help.nobodyHere}</p>
      ) : (
        <List>
          {leads.map(({ id, name, tree, isOnBreak }) => (
            <ListItem
              key={id}
              lead={<Face name={name} />}
              title={name}
              note={
                tree !== null
                  ? help.atTree(tagOf(tree))
                  : isOnBreak
                    ? help.onBreak
                    : help.atMeetingPoint
              }
            />
          ))}
        </List>
      )}
    </Panel>
  )
}
