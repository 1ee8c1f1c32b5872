'use client'

import dynamic from 'next/dynamic'
import { useState } from 'react'

import { isOnlyHere, useOrigin } from '../layout/use-origin'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Note } from '../ui/Note'
import { useLeadWords } from './use-lead-words'

/** The encoder is fetched only where a code is shown. */
export const fetchQrCode = async () => (await import('../day/QrCode')).QrCode
const QrCode = dynamic(fetchQrCode, { ssr: false })

/** A link as a code to scan, big enough for a tablet held up, and as words to send. */
export function LinkToShow({ path, title }: { path: string; title: string }) {
  const { common } = useWords()
  const { shift } = useLeadWords()
  const [isBig, setIsBig] = useState(false)
  const [isCopied, setIsCopied] = useState(false)
  const origin = useOrigin()
  if (origin === null) return null

  const url = origin + path
  const copy = async () => {
    await navigator.clipboard?.writeText(url)
    setIsCopied(true)
  }
  return (
    <div className="link-to-show">
      {isOnlyHere(origin) && (
        <Note tone="call" icon="warn">
          {shift.onlyHere}
        </Note>
      )}
      <div className="qr-small">
        <QrCode text={url} label={shift.qrLabel} />
      </div>
      <output className="link-words">{url}</output>
      <div className="tree-buttons">
        <Button icon="people" onPress={() => setIsBig(true)}>
          {shift.showBig}
        </Button>
        {/* Browsers copy only over https. */}
        {typeof navigator.clipboard !== 'undefined' && (
          <Button onPress={copy}>{isCopied ? shift.copied : shift.copyLink}</Button>
        )}
      </div>
      <Dialog open={isBig} title={title} onClose={() => setIsBig(false)} closeLabel={common.close}>
        <div className="qr-big">
          <QrCode text={url} label={shift.qrLabel} />
        </div>
      </Dialog>
    </div>
  )
}
