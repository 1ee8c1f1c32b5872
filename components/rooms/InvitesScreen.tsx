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
      <ReadingOf reading={reading}>{(read) => <Both {...read} />}</ReadingOf>
      <InviteLead />
      <div className="room-buttons">
        <p>{text.crewLinkNote}</p>
        <ButtonLink href={routes.shift()}>{text.toShift}</ButtonLink>
      </div>
    </Room>
  )
}

function Both({ invites, names }: Invites) {
  const { invites: text } = useLeadWords()
  const open = invites.filter(({ over }) => over === null)
  const over = invites.filter((invite) => invite.over !== null)
  return (
    <>
      <Panel title={text.open}>
        {open.length === 0 && <p>{text.noneOpen}</p>}
        <ul className="list">
          {open.map((invite) => (
            <InviteRow key={invite.invite} invite={invite} names={names} />
          ))}
        </ul>
      </Panel>
      {over.length > 0 && (
        <Panel title={text.over}>
          <ul className="list">
            {over.map((invite) => (
              <InviteRow key={invite.invite} invite={invite} names={names} />
            ))}
          </ul>
        </Panel>
      )}
    </>
  )
}
