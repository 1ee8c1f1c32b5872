'use client'

import {
  type CutLimits,
  leaderShare,
  type ThreeCutRule,
  threeCutRules,
} from '@/lib/domain/pruning/cut'
import type { Fact, Range } from '@/lib/domain/pruning/fact'
import { lineLimitM } from '@/lib/domain/safety/power-line'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'

type CutSourcesProps = { limits: CutLimits; house: Fact<ThreeCutRule> }

/** Every number of the screen with where it comes from; of the three cuts all sources, since they differ. */
export function CutSources({ limits, house }: CutSourcesProps) {
  const { cuts, tradeSources } = useWords()
  const { cut: text } = cuts
  const format = useFormat()
  const range = ({ least, most }: Range, said: (value: number) => string) =>
    said(least) === said(most) ? said(most) : text.range(said(least), said(most))
  const span = (cm: number) => format.span(cm)
  const ruleWords = ({ undercut, outCm, furtherCm }: ThreeCutRule) =>
    text.rule(
      range(undercut, (share) => format.share(share)),
      range(outCm, span),
      range(furtherCm, span)
    )
  return (
    <More title={cuts.sources}>
      <p>
        {text.houseLimits(
          format.diameter(limits.prunerCm),
          format.diameter(limits.lopperCm),
          format.diameter(limits.limbCm)
        )}
      </p>
      <ul className="stack">
        {[house, ...Object.values(threeCutRules)].map(({ source, value }) => (
          <li key={source}>
            <b>{source === null ? text.house : tradeSources[source]}:</b> {ruleWords(value)}
          </li>
        ))}
      </ul>
      <p>{text.poleLimit(format.diameter(limits.poleCm))}</p>
      <p>{text.lineFrom(format.reach(lineLimitM(0), 'up'))}</p>
      <p>{text.oneHandFrom}</p>
      <p>{text.lateralFrom}</p>
      {leaderShare.source && <p>{text.leaderFrom(tradeSources[leaderShare.source])}</p>}
    </More>
  )
}
