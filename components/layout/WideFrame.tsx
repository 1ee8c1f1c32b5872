import type { ReactNode } from 'react'

import { joinClasses } from '../ui/join-classes'

type WideFrameProps = {
  /** `<Bar>` */
  bar: ReactNode
  banners?: ReactNode
  /** The ink band: calls for help, above everything. */
  band?: ReactNode
  bandLabel?: string
  /** A map fills the work; anything else stands in one measured page. */
  fill?: boolean
  /** A form or a text: lines no longer than one reads them. */
  reads?: boolean
  side?: ReactNode
  sideLabel?: string
  /** What is picked and what to do with it, at the thumbs. */
  deal?: ReactNode
  children: ReactNode
}

/** Every tablet and laptop screen; on a narrow one the column beside the work goes below it. */
export function WideFrame(props: WideFrameProps) {
  const {
    bar,
    banners,
    band,
    bandLabel,
    fill = false,
    reads = false,
    side,
    sideLabel,
    deal,
    children,
  } = props
  return (
    <div className="wide">
      <div>
        {bar}
        {banners}
      </div>
      <section className="band" aria-label={bandLabel}>
        {band}
      </section>
      <div className={joinClasses('work', side !== undefined && 'has-side')}>
        <div className="left">
          <main className={joinClasses('main', !fill && 'is-padded')}>
            {fill ? (
              children
            ) : (
              <div className={joinClasses('page', reads && 'is-read')}>{children}</div>
            )}
          </main>
          {deal && <div className="deal">{deal}</div>}
        </div>
        {side && (
          <aside className="side" aria-label={sideLabel}>
            {side}
          </aside>
        )}
      </div>
    </div>
  )
}
