'use client'

import { type ReactNode, useEffect, useId, useRef } from 'react'

import { Button } from './Button'
import { joinClasses } from './join-classes'

type DialogProps = {
  open: boolean
  title: ReactNode
  /** Called for the cross and for Escape; what was typed is the caller's to keep. */
  onClose: () => void
  closeLabel: string
  /** A sheet comes from below, at the thumbs. */
  kind?: 'dialog' | 'sheet'
  children: ReactNode
}

/** Over the screen until it is answered. The browser keeps focus inside and gives it back after. */
export function Dialog({
  open,
  title,
  onClose,
  closeLabel,
  kind = 'dialog',
  children,
}: DialogProps) {
  const element = useRef<HTMLDialogElement>(null)
  const titleId = useId()

  useEffect(() => {
    const dialog = element.current
    if (dialog === null) return
    if (open && !dialog.open) dialog.showModal()
    if (!open && dialog.open) dialog.close()
  }, [open])

  return (
    <dialog
      ref={element}
      className={joinClasses('dialog', kind === 'sheet' && 'is-sheet')}
      aria-labelledby={titleId}
      // Escape asks; only the caller closes, so that both always agree on what is open.
      onCancel={(event) => {
        event.preventDefault()
        onClose()
      }}
      // A browser may close it by itself when Escape is pressed twice.
      onClose={() => open && onClose()}
    >
      <div className="head">
        <h2 id={titleId}>{title}</h2>
        <Button kind="quiet" icon="cross" label={closeLabel} onPress={onClose} />
      </div>
      <div className="body">{children}</div>
    </dialog>
  )
}
