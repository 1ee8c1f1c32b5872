'use client'

import {
  type CutLimits,
  type ThreeCutRule,
  type ToolFor,
  threeCuts,
} from '@/lib/domain/pruning/cut'
import { lineLimitM } from '@/lib/domain/safety/power-line'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { toolIcons } from '../ready/use-tool-name'
import { Icon } from '../ui/Icon'
import { Note } from '../ui/Note'

/** The tool, or whose it is. */
export function WhichTool({ tool, limits }: { tool: ToolFor; limits: CutLimits }) {
  const { cuts, things } = useWords()
  const format = useFormat()
  if (tool.state === 'refer') {
    const lead = cuts.cut.refer(format.diameter(limits.limbCm))
    return (
      <Note tone="arb" mark="arborist" role="status" lead={lead}>
        {cuts.cut.referSays}
      </Note>
    )
  }
  if (tool.state === 'not_from_the_ground')
    return (
      <Note tone="arb" icon="cross" role="status" lead={cuts.cut.notFromGround}>
        {cuts.cut.notFromGroundSays(format.diameter(limits.poleCm))}
      </Note>
    )
  return (
    <p className="row which-tool" role="status">
      <Icon name={toolIcons[tool.tool]} size={32} />
      <b>{things.tool[tool.tool]}</b>
    </p>
  )
}

type HowToCutProps = { tool: ToolFor; diameterCm: number; isDead: boolean; rule: ThreeCutRule }

/** The way to cut; where the limb is not ours there is none. */
export function HowToCut({ tool, diameterCm, isDead, rule }: HowToCutProps) {
  const { cut: text } = useWords().cuts
  if (tool.state !== 'ours') return null
  return (
    <div className="stack">
      {isDead && <p>{text.deadWood}</p>}
      {tool.inThree ? (
        <ThreeCuts diameterCm={diameterCm} rule={rule} />
      ) : (
        <p>{text.how[tool.tool]}</p>
      )}
      {tool.tool === 'pole_pruner' && <PoleCautions />}
    </div>
  )
}

/** A pole reaches what hands do not: also a line. */
function PoleCautions() {
  const { pole } = useWords().cuts.cut
  const format = useFormat()
  return (
    <>
      <p>{pole.below}</p>
      <Note tone="stop" icon="warn">
        {pole.line(format.reach(lineLimitM(0), 'up'))}
      </Note>
    </>
  )
}

function ThreeCuts({ diameterCm, rule }: { diameterCm: number; rule: ThreeCutRule }) {
  const { cuts } = useWords()
  const { cut: text } = cuts
  const format = useFormat()
  const { undercutDepthCm, undercutAtCm, topCutAtCm } = threeCuts(diameterCm, rule)
  return (
    <>
      <h2>{text.threeTitle}</h2>
      <ol className="three-cuts">
        <li>
          {text.three.first(format.thickness(undercutDepthCm.most), format.span(undercutAtCm.most))}
        </li>
        <li>{text.three.second(format.span(topCutAtCm.most))}</li>
        <li>{text.three.third}</li>
      </ol>
      <p>
        <b>{text.standClear}</b>
      </p>
      <p className="small">{text.oneHand}</p>
    </>
  )
}
