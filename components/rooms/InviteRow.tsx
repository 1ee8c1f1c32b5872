'use client'

import { useState } from 'react'

import { type Invites, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords, useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { useDays } from './use-days'
import { useNamesWith } from './use-names-with'

type InviteRowProps = { invite: Invites['invites'][number]; names: Invites['names'] }

/** One link; ending it is asked for once more, since whoever waits for it would stand outside. */
export function InviteRow({ invite, names }: InviteRowProps) {
  const { common, things } = useWords()
  const { invites: text } = useLeadWords()
  const { day, dayOf } = useDays()
  const nameOf = useNamesWith(names)
  const send = useSend()
  const [isOpen, setIsOpen] = useState(false)
  const { asked, ask } = useAsk()
  const { kind, role, person, madeBy, madeAt, expiresAt, endedAt, used, over } = invite
  const title = {
    join: text.kinds.join,
    role: text.kinds.role(things.role[role]),
    device: text.kinds.device(nameOf(person ?? '')),
    recovery: text.kinds.recovery(nameOf(person ?? '')),
  }[kind]
  const end =
    over === 'code_used' ? text.usedUp : endedAt ? text.ended(dayOf(endedAt)) : text.ranOut

  return (
    <li className="room-row">
      <span className="grow">
        <b>{title}</b>
        <span className="small">
          {[
            invite.shiftDate && text.onDay(day(invite.shiftDate)),
            madeBy === null
              ? text.byHost(dayOf(madeAt))
              : text.madeBy(nameOf(madeBy), dayOf(madeAt)),
            over === null ? text.until(dayOf(expiresAt)) : end,
            over !== 'code_used' && (used === 0 ? text.notUsed : text.used(used)),
          ]
            .filter(Boolean)
            .join(', ')}
        </span>
      </span>
      {over === null && (
        <Button label={text.endOf(title)} onPress={() => setIsOpen(true)}>
          {text.end}
        </Button>
      )}
      <Dialog
        open={isOpen}
        title={text.endTitle}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <p>{title}</p>
        <p>{text.endNote}</p>
        <AskedNote asked={asked} />
        <Button
          onPress={() => ask(send('end_invite', { invite: invite.invite }), () => setIsOpen(false))}
        >
          {text.end}
        </Button>
      </Dialog>
    </li>
  )
}
