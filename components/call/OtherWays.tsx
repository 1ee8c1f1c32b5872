'use client'

import type { ReactNode } from 'react'

import { leadsHere, nameOf, useSelect, whoIsWhere } from '@/lib/hooks'
import { phoneNumbersIn, telHref } from '../day/phone-numbers'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Face } from '../ui/Face'
import { Icon, type IconName } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'

/** By which means a lead is reached while the phone reaches nobody. */
export function OtherWays({ title }: { title: string }) {
  const { help } = useStartWords()
  const number = useSelect((view) => phoneNumbersIn(view.emergency?.call ?? '')[0])
  return (
    <Panel title={title}>
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
  )
}

type MeansProps = { icon: IconName; title: string; note: string; end?: ReactNode }

function Means({ icon, title, note, end }: MeansProps) {
  return <ListItem lead={<Icon name={icon} />} title={title} note={note} end={end} />
}

/** Who leads, and at which tree they were last. */
export function Leads() {
  const { help } = useStartWords()
  const tagOf = useTagOf()
  const leads = useSelect((view) => {
    const here = new Set(leadsHere(view))
    return whoIsWhere(view)
      .filter(({ personId }) => here.has(personId))
      .map(({ personId, tree, state }) => ({
        id: personId,
        name: nameOf(view, personId) ?? '',
        tree,
        isOnBreak: state === 'break',
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
