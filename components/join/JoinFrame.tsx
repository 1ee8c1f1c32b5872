'use client'

import type { ReactNode } from 'react'
import { useDoorWords } from '../layout/Words'
import { Logo } from '../ui/Logo'
import './join.css'

type JoinFrameProps = {
  /** The next step and what is said about it. */
  bench?: ReactNode
  children: ReactNode
}

/** The one place for a picture: an orchard in winter, and below it how to get in. */
export function JoinFrame({ bench, children }: JoinFrameProps) {
  const { common } = useDoorWords()
  return (
    <div className="phone join">
      <header className="hero">
        <span className="brand">
          <Logo size={26} />
          {common.appName}
        </span>
      </header>
      <main className="main">{children}</main>
      {bench && <footer className="gate">{bench}</footer>}
    </div>
  )
}
