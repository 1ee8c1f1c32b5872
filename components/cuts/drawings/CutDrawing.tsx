'use client'

import { type ThreeCutRule, type ToolFor, threeCuts } from '@/lib/domain/pruning/cut'
import { useFormat } from '../../layout/use-format'
import { useWords } from '../../layout/Words'

type CutDrawingProps = {
  tool: ToolFor
  diameterCm: number
  thickness: string
  rule: ThreeCutRule
}

/** Half a metre of limb fits the picture. */
const perCm = 6.2
const collarX = 54
const middleY = 92
const endX = 358

/** The branch at its trunk, to scale, with the cuts where they go. */
export function CutDrawing({ tool, diameterCm, thickness, rule }: CutDrawingProps) {
  const { cuts } = useWords()
  const { cut: text } = cuts
  const half = (diameterCm * perCm) / 2
  const picture =
    tool.state !== 'ours'
      ? text.pictureRefer(thickness)
      : tool.inThree
        ? text.pictureThree(thickness)
        : text.pictureOne(thickness)
  return (
    <figure className="step-drawing is-whole">
      <svg className="art" viewBox="0 0 358 190" role="img" aria-label={picture}>
        <path d="M0 0H36C30 60 30 130 36 190H0Z" fill="var(--wood)" />
        <path d={collarPath(half)} fill="var(--wood)" />
        {tool.state !== 'ours' ? (
          <path d={limbPath(collarX - 2, half)} fill="var(--wood)" />
        ) : (
          <>
            <path
              d={limbPath(collarX + 4, half)}
              fill="var(--draw-paper, var(--paper))"
              stroke="var(--goes)"
              strokeWidth="2"
            />
            {tool.inThree ? (
              <ThreeBars half={half} diameterCm={diameterCm} rule={rule} />
            ) : (
              <Bar x={collarX + 4} from={middleY - half - 5} to={middleY + half + 5} />
            )}
          </>
        )}
      </svg>
    </figure>
  )
}

function ThreeBars({
  half,
  diameterCm,
  rule,
}: {
  half: number
  diameterCm: number
  rule: ThreeCutRule
}) {
  const format = useFormat()
  const { undercutDepthCm, undercutAtCm, topCutAtCm } = threeCuts(diameterCm, rule)
  const firstX = collarX + undercutAtCm.most * perCm
  const secondX = collarX + topCutAtCm.most * perCm
  const bottom = middleY + half
  const depth = undercutDepthCm.most * perCm
  return (
    <>
      <Bar x={firstX} from={bottom - depth} to={bottom + 8} />
      <Bar x={secondX} from={middleY - half - 8} to={middleY + half * 0.6} />
      <Bar x={collarX + 4} from={middleY - half - 8} to={bottom + 8} />
      <Count n={1} x={firstX} y={bottom + 22} />
      <Count n={2} x={secondX} y={middleY - half - 22} />
      <Count n={3} x={collarX + 4} y={bottom + 22} />
      <Measure to={firstX} y={182} word={format.span(undercutAtCm.most)} />
    </>
  )
}

function Bar({ x, from, to }: { x: number; from: number; to: number }) {
  return <path d={`M${x} ${from}V${to}`} stroke="var(--goes)" strokeWidth="4.5" />
}

function Count({ n, x, y }: { n: number; x: number; y: number }) {
  return (
    <g>
      <circle cx={x} cy={y} r="13" fill="var(--ink)" />
      <text className="count" x={x} y={y + 6}>
        {n}
      </text>
    </g>
  )
}

/** How far out from the collar. */
function Measure({ to, y, word }: { to: number; y: number; word: string }) {
  const from = collarX + 4
  return (
    <g>
      <path
        d={`M${from} ${y - 5}V${y + 5}M${from} ${y}H${to}M${to} ${y - 5}V${y + 5}`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      <text className="measure" x={(from + to) / 2} y={y - 6}>
        {word}
      </text>
    </g>
  )
}

function limbPath(x: number, half: number): string {
  const end = half * 0.82
  return `M${x} ${middleY - half}L${endX} ${middleY - end}V${middleY + end}L${x} ${middleY + half}Z`
}

/** The swelling where the branch leaves the trunk. */
function collarPath(half: number): string {
  const swollen = half + Math.max(5, half * 0.35)
  return `M30 ${middleY - swollen - 6}Q44 ${middleY - swollen} ${collarX + 2} ${middleY - half - 1}V${middleY + half + 1}Q44 ${middleY + swollen} 30 ${middleY + swollen + 6}Z`
}
