'use client'

import { mayGo } from '@/lib/domain/pruning/last-years-wood'
import { shorten } from '@/lib/domain/pruning/shorten'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Note } from '../ui/Note'
import type { useShoot } from './use-shoot'

type ShootFiguresProps = {
  shoot: ReturnType<typeof useShoot>
  taken: number
  shootCm: number
}

/** How far out on its limb the shoot is taken to begin: our own choice, for a picture of the pull. */
export const limbCm = 150

/** Whether so much may go, what stays, what it costs, and how much less the crop pulls. */
export function ShootFigures({ shoot, taken, shootCm }: ShootFiguresProps) {
  const { cuts } = useWords()
  const { shorten: text } = cuts
  const format = useFormat()
  const { counts, bearing } = shoot
  const verdict = shoot.verdict(taken)
  const done = shorten({ counts: counts ?? [], shootCm, limbCm }, taken)
  // What is lost is rounded up, what is gained is rounded down.
  const lost = format.share(Math.ceil(done.budsLost * 100 - 1e-9) / 100)
  const gained = (share: number) => format.share(Math.floor(share * 100 + 1e-9) / 100)
  const isRefused = verdict === 'refused'

  return (
    <div className="stack">
      <Note
        tone={verdict === 'may_go' ? 'done' : 'arb'}
        icon={verdict === 'may_go' ? 'check' : 'cross'}
        role="status"
        lead={
          verdict === 'too_much'
            ? text.too_much(format.share(mayGo(bearing)?.most ?? 0))
            : isRefused
              ? text.refused
              : text[verdict]
        }
      >
        {isRefused && counts !== null ? text.wouldCost(lost) : undefined}
      </Note>
      <div className="shoot-figures">
        <p>{text.lengths(format.span(done.lengthLeftCm), format.span(done.takenCm))}</p>
        {counts === null ? (
          <p>{text.onSpurs}</p>
        ) : (
          <>
            {!isRefused && <p>{text.budsLost(lost)}</p>}
            <p>{text.pull(gained(done.pull.atLeast), gained(done.pull.atMost))}</p>
          </>
        )}
      </div>
      {counts !== null && (
        <More title={cuts.sources}>
          <p>{text.reckoned(format.span(shootCm), format.span(limbCm))}</p>
          <p>{text.budsFrom}</p>
        </More>
      )}
    </div>
  )
}
