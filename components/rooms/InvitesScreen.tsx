'use client'

import { type Invites, useInvites } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { InviteLead } from '../crew/InviteLead'
import { useLeadWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { CameByLink } from './CameByLink'
import { InviteRow } from './InviteRow'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'

/** Every link there is: for whom, by whom, until when, how often used; an open one can be ended. */
export function InvitesScreen() {
  const { invites: text } = useLeadWords()
  const reading = useInvites()
  return (
    <Room title={text.title} lead={text.lead}>
      <CameByLink />
      <ReadingOf reading={reading}>{(read) => <OpenLinks {...read} />}</ReadingOf>
      <InviteLead />
      <div className="room-buttons">
        <p>{text.crewLinkNote}</p>
        <ButtonLink href={routes.shift()}>{text.toShift}</ButtonLink>
      </div>
      {reading.state === 'read' && <LinksThatAreOver {...reading.value} />}
    </Room>
  )
}

function OpenLinks({ invites, names }: Invites) {
  const { invites: text } = useLeadWords()
  const open = invites.filter(({ over }) => over === null)
  return (
    <Panel title={text.open}>
      {open.length === 0 ? <p>{text.noneOpen}</p> : <Links invites={open} names={names} />}
    </Panel>
  )
}

function LinksThatAreOver({ invites, names }: Invites) {
  const { invites: text } = useLeadWords()
  const over = invites.filter((invite) => invite.over !== null)
  if (over.length === 0) return null
  return (
    <Panel title={text.over}>
      <Links invites={over} names={names} />
    </Panel>
  )
}

function Links({ invites, names }: Invites) {
  return (
    <ul className="list">
      {invites.map((invite) => (
        <InviteRow key={invite.invite} invite={invite} names={names} />
      ))}
    </ul>
  )
}
