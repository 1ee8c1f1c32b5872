import type { ReactNode } from 'react'

type BenchProps = {
  /** `<Why>`: the reason above the next step. */
  why?: ReactNode
  /** A square button beside it, with one short word. */
  side?: ReactNode
  /** The next step. */
  step?: ReactNode
  /** The four. */
  strip?: ReactNode
}

/** What lies at the thumbs: what comes next, and below it what helps when something is wrong. */
export function Bench({ why, side, step, strip }: BenchProps) {
  return (
    <footer className="bench">
      {why}
      {(side || step) && (
        <div className="row">
          {side}
          {step}
        </div>
      )}
      {strip}
    </footer>
  )
}
