'use client'

import { useState } from 'react'

import { type Sent, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Dialog } from '../ui/Dialog'
import { Note } from '../ui/Note'

/** Ends this device's login of this person. What is not sent and who is still counted is said first. */
export function SignOut() {
  const { common, device } = useWords()
  const send = useSend()
  const [isOpen, setIsOpen] = useState(false)
  const [sent, setSent] = useState<Sent | null>(null)
  const isHere = useSelect((view) => view.state?.attendance[view.me?.personId ?? ''] !== undefined)
  const unsent = useSelect((view) => view.unsent.length)
  const isAsking = useSelect((view) => view.asking.includes('end_login'))

  return (
    <>
      <Button icon="person" onPress={() => setIsOpen(true)}>
        {device.signOut}
      </Button>
      <Dialog
        open={isOpen}
        title={device.signOutTitle}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <p>{device.signOutNote}</p>
        {isHere && (
          <>
            <Note icon="warn" tone="call">
              {device.stillHere}
            </Note>
            <ButtonLink href={routes.breakOrLeave()}>{device.goHomeFirst}</ButtonLink>
          </>
        )}
        {unsent > 0 && (
          <Note icon="kept" tone="call">
            {device.stillUnsent}
          </Note>
        )}
        <WhyNot sent={sent} />
        <Button
          state={isAsking ? 'waiting' : 'ready'}
          onPress={async () => setSent(await send('end_login', { login: null }))}
        >
          {isAsking ? common.asking : device.signOut}
        </Button>
      </Dialog>
    </>
  )
}
