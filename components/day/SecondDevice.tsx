'use client'

import dynamic from 'next/dynamic'
import { useState } from 'react'

import { type Sent, useRowcall, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { offWhen } from '../ui/button-look'
import { Dialog } from '../ui/Dialog'
import { Panel } from '../ui/Panel'

/** Few make one, so what paints it is fetched only then. */
const QrCode = dynamic(async () => (await import('./QrCode')).QrCode, { ssr: false })

/** A code on this device makes another one act for the same person. */
export function SecondDevice() {
  const { common, device } = useWords()
  const { makeInvite } = useRowcall()
  const [sent, setSent] = useState<Sent | null>(null)
  const [link, setLink] = useState<string | null>(null)
  const hasNoSignal = useSelect((view) => view.signal === 'no_signal')
  const isAsking = useSelect((view) => view.asking.includes('make_invite'))

  async function make() {
    const made = await makeInvite({ kind: 'device', hours: 1 })
    setSent(made.sent)
    if (made.sent.state === 'accepted') setLink(location.origin + routes.join(made.code))
  }

  return (
    <Panel title={device.second}>
      <p className="small" id="second-note">
        {device.secondNote} {hasNoSignal && device.needsSignal}
      </p>
      <div className="after-note">
        <WhyNot sent={sent} />
        <Button
          wide
          {...(isAsking ? { state: 'waiting' } : offWhen(hasNoSignal, 'second-note'))}
          onPress={() => void make()}
        >
          {isAsking ? common.asking : device.makeCode}
        </Button>
      </div>
      <Dialog
        open={link !== null}
        title={device.codeTitle}
        onClose={() => setLink(null)}
        closeLabel={common.close}
      >
        {link !== null && (
          <>
            <QrCode text={link} label={device.codePicture} />
            <p>{device.codeNote}</p>
            <p className="small">{device.orOpen}</p>
            <p className="link-text">{link}</p>
          </>
        )}
      </Dialog>
    </Panel>
  )
}
