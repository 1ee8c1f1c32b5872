'use client'

import type { Block } from '@/lib/domain/orchard/types'
import { looksOf, useSelect } from '@/lib/hooks'
import { pictureOf } from '../board/block-picture'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { markNameOf } from '../map/mark-name'
import { Mark, type MarkName } from '../ui/Mark'
import { barLengthM, rowLabels } from './map-facts'
import { Page } from './Page'

/** Four units to a millimetre: it fills a sheet of A4 as well as one of US Letter. */
const frame = { width: 720, height: 780 }

const legend = ['unpruned', 'in_progress', 'done', 'disease', 'arborist', 'closed'] as const
const legendMarks: Record<(typeof legend)[number], MarkName> = {
  unpruned: 'unpruned',
  in_progress: 'inProgress',
  done: 'done',
  disease: 'disease',
  arborist: 'arborist',
  closed: 'closed',
}

/** One block from above: each tree with its shape, row numbers, keep-outs, north and a scale. */
export function MapPart({ block }: { block: Block }) {
  const { common } = useWords()
  const { paper: text } = useLeadWords()
  const format = useFormat()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const trees = useSelect((view) => view.ground.trees)
  const looks = useSelect(looksOf)
  const flags = useSelect((view) => Object.values(view.state?.flags ?? {}))
  const picture = pictureOf(block, [...trees.values()], frame)
  const { dots, scale, spacing } = picture
  const isSurveyed =
    block.firstTree !== null || dots.some(({ no }) => trees.get(no)?.position != null)
  const size = Math.max(8, Math.min(16, spacing * 0.75))
  const barM = barLengthM(picture, units)
  const keepOuts = flags.flatMap(({ tree, keepOutM }) => {
    const dot = dots.find(({ no }) => no === tree)
    return dot && keepOutM ? [{ ...dot, r: keepOutM * scale }] : []
  })
  const nameOfTree = (no: number) => {
    const look = looks.get(no)
    // For whoever reads the sheet: not what is mine.
    return look
      ? markNameOf({ ...look, heldByMe: false, dealtToMe: false, dealtTo: [] })
      : 'unpruned'
  }
  return (
    <Page title={text.mapOf(block.name)} note={isSurveyed ? undefined : text.noNorth}>
      <svg className="paper-map" viewBox={`0 0 ${frame.width} ${frame.height}`} role="img">
        <title>{text.mapOf(block.name)}</title>
        {keepOuts.map(({ no, x, y, r }) => (
          <circle key={no} className="keep-out" cx={x} cy={y} r={r} />
        ))}
        {rowLabels(picture, trees).map(({ row, x, y }) => (
          <text key={row} className="row-no" x={x} y={y} dy="0.35em">
            {row}
          </text>
        ))}
        {dots.map(({ no, x, y }) => (
          <use
            key={no}
            href={`#m-${nameOfTree(no)}`}
            x={x - size / 2}
            y={y - size / 2}
            width={size}
            height={size}
          />
        ))}
        <g transform={`translate(24 ${frame.height - 24})`}>
          <path className="bar-line" d={`M0-8V0H${barM * scale}V-8`} />
          <text x={barM * scale + 10} y={0}>
            {format.distance(barM)}
          </text>
        </g>
        {isSurveyed && (
          <g transform={`translate(${frame.width - 36} 44)`}>
            <path className="bar-line" d="M0 0V-36M-8-24 0-36 8-24" />
            <text className="row-no" y={20}>
              {text.north}
            </text>
          </g>
        )}
      </svg>
      <p className="paper-legend">
        {legend.map((mark) => (
          <span key={mark}>
            <Mark name={legendMarks[mark]} size={14} /> {common.status[mark]}
          </span>
        ))}
        {keepOuts.length > 0 && <span>{text.keepOut}</span>}
      </p>
    </Page>
  )
}
