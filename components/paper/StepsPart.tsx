'use client'

import { type Block, stands } from '@/lib/domain/orchard/types'
import { type KindToPrune, kindsToPrune } from '@/lib/domain/pruning/kinds'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useCutLimits, useThreeCutDistances } from '../cuts/use-cut-rules'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useToday } from '../tree/use-work-card'
import { KindRow } from './KindRow'
import { KindsAtStep, LimitsOfKinds } from './KindsAtStep'
import { Page, PaperTable } from './Page'

/** What to cut in one block: the order for every tree once, then what differs by kind. */
export function StepsPart({ block }: { block: Block }) {
  const { whatToCut } = useWords()
  const { paper: text } = useLeadWords()
  const kinds = useKinds(block.no)
  if (kinds.length === 0) return null
  const { steps } = whatToCut
  const columns = [
    { name: 'kind', head: text.kind },
    { name: 'bearing', head: text.inBearingWood },
    { name: 'shoots', head: text.inShoots },
  ]
  return (
    <Page title={text.stepsOf(block.name)} note={text.notSure}>
      <ol className="paper-order">
        {(['dead_broken_diseased', 'crossing_rubbing'] as const).map((code) => (
          <li key={code}>
            <b>{steps[code].title}.</b> {steps[code].do}
          </li>
        ))}
        <KindsAtStep kinds={kinds} codes={['open_the_centre', 'free_the_leader', 'let_light_in']} />
        <li>
          <b>{steps.ground_up_inside_out.title}.</b> {steps.ground_up_inside_out.do}
        </li>
        <KindsAtStep kinds={kinds} codes={['renew_spurs', 'renew_shoots']} />
        <li>
          <b>{text.inShoots}:</b> {text.byKind}
        </li>
      </ol>
      <Limits kinds={kinds} />
      <p>
        <b>{text.young}</b> {steps.dead_broken_diseased.title}. {text.youngRest}{' '}
        <b>{whatToCut.neglected.yes}:</b> {text.neglected}
      </p>
      <PaperTable title={text.kinds} columns={columns}>
        <tbody>
          {kinds.map((kind) => (
            <KindRow key={`${kind.species} ${kind.cultivars}`} kind={kind} />
          ))}
        </tbody>
      </PaperTable>
    </Page>
  )
}

/** Which tool, how a heavy limb comes off, and what is not ours. */
function Limits({ kinds }: { kinds: readonly KindToPrune[] }) {
  const { cuts } = useWords()
  const { paper: text } = useLeadWords()
  const format = useFormat()
  const { prunerCm, lopperCm, limbCm } = useCutLimits()
  const { outCm, furtherCm } = useThreeCutDistances()
  const limit = format.diameter(limbCm)
  return (
    <p className="framed">
      <span>{text.toolFor(format.diameter(prunerCm), format.diameter(lopperCm), limit)}</span>
      <span>{text.threeCuts(format.span(outCm), format.span(furtherCm))}</span>
      <LimitsOfKinds kinds={kinds} />
      <b>
        {cuts.cut.refer(limit)} {text.notOurs}
      </b>
      <b>{cuts.cut.standClear}</b>
    </p>
  )
}

function useKinds(block: number): KindToPrune[] {
  const today = useToday()
  const when = { thisYear: today.getUTCFullYear(), month: today.getUTCMonth() + 1 }
  return useSelect(({ sheet }) =>
    sheet
      ? kindsToPrune(
          sheet.trees.filter((tree) => tree.block === block && stands(tree)),
          sheet.cultivars,
          when
        )
      : []
  )
}
