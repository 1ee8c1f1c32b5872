'use client'

import { type ReactNode, useEffect, useId, useRef } from 'react'

import { joinClasses } from '../ui/join-classes'
import './stop.css'

type StopDialogProps = {
  tone: 'stop' | 'goes-on' | 'come-down'
  title: ReactNode
  children: ReactNode
}

/**
 * Over the whole screen and above every other dialog, with what was typed below it untouched. It takes
 * focus on its heading, so that a key pressed while typing answers nothing, and goes only by an answer.
 */
export function StopDialog({ tone, title, children }: StopDialogProps) {
  const element = useRef<HTMLDialogElement>(null)
  const heading = useRef<HTMLHeadingElement>(null)
  const titleId = useId()

  useEffect(() => {
    const dialog = element.current
    dialog?.showModal()
    heading.current?.focus()
    return () => dialog?.close()
  }, [])

  return (
    <dialog
      ref={element}
      role="alertdialog"
      className={joinClasses('stop', `is-${tone}`)}
      aria-labelledby={titleId}
      onCancel={(event) => event.preventDefault()}
      // A browser closes it by itself when Escape is pressed twice.
      onClose={() => element.current?.open || element.current?.showModal()}
    >
      <h1 id={titleId} ref={heading} tabIndex={-1}>
        {title}
      </h1>
      {children}
    </dialog>
  )
}
