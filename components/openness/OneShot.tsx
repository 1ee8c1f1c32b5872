'use client'

import type { ReactNode } from 'react'

import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import type { Moment, Shot } from './shots'

type OneShotProps = {
  moment: Moment
  shot: Shot | null
  tag: string
  /** What was taken for sky, over the picture. */
  asSeen: boolean
  children?: ReactNode
}

/** One photo, its share of sky, and how far that can be trusted. */
export function OneShot({ moment, shot, tag, asSeen, children }: OneShotProps) {
  const { openness: text } = useWords()
  const format = useFormat()
  const which = text[moment]
  return (
    <section className="shot" aria-label={which}>
      <h2>{which}</h2>
      {shot === null ? (
        <p className="shot-none">{text.notYet}</p>
      ) : (
        <>
          {/* biome-ignore lint/performance/noImgElement: a picture on this phone only, nothing to optimise */}
          <img
            src={asSeen ? shot.seen : shot.photo}
            alt={asSeen ? text.altSeen(which, tag) : text.altPhoto(which, tag)}
          />
          <p className="shot-open num">{text.open(format.share(shot.gap))}</p>
          <p className="small">
            {text.between(format.share(shot.low), format.share(shot.high))}{' '}
            {text.confidence[shot.confidence]}
          </p>
          {shot.doubts.map((doubt) => (
            <p key={doubt} className="small">
              {text.doubts[doubt]}
            </p>
          ))}
        </>
      )}
      {children}
    </section>
  )
}
