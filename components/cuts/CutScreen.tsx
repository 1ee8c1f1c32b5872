'use client'

import { useState } from 'react'

import { houseThreeCuts, type Reach, reaches, toolFor } from '@/lib/domain/pruning/cut'
import { formOf } from '@/lib/domain/pruning/species-facts'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { DiseaseReminder } from '../tree/DiseaseNote'
import { NoSuchTree } from '../tree/NoSuchTree'
import { type TreeFacts, useTree } from '../tree/use-tree'
import { ButtonLink } from '../ui/ButtonLink'
import { Segmented } from '../ui/Segmented'
import { Slider } from '../ui/Slider'
import { CutBackTo } from './CutBackTo'
import { CutSources } from './CutSources'
import { CutDrawing } from './drawings/CutDrawing'
import { HelperScreen } from './HelperScreen'
import { HowToCut, WhichTool } from './HowToCut'
import { useCutLimits, useThreeCutDistances } from './use-cut-rules'
import { centimetresOf, thicknessScale } from './wood-steps'
import './cuts.css'

export function CutScreen({ no }: { no: number | null }) {
  const facts = useTree(no)
  return facts ? <OneCut facts={facts} /> : <NoSuchTree />
}

/** One cut: how thick, live or dead; then the tool, the way to cut, or whose it is. */
function OneCut({ facts }: { facts: TreeFacts }) {
  const { cuts } = useWords()
  const { cut: text } = cuts
  const format = useFormat()
  const limits = useCutLimits()
  const rule = houseThreeCuts(useThreeCutDistances())
  const scale = useSelect((view) => thicknessScale[view.state?.orchard.units ?? 'metric'])
  const [steps, setSteps] = useState(scale.usual)
  const [wood, setWood] = useState<'live' | 'dead'>('live')
  const [reach, setReach] = useState<Reach>('within')
  const diameterCm = centimetresOf(scale, steps)
  const isDead = wood === 'dead'
  const tool = toolFor({ diameterCm, isDead, reach }, limits)
  const thickness = format.thickness(diameterCm)

  return (
    <HelperScreen
      facts={facts}
      step={
        tool.state === 'refer' && (
          <ButtonLink kind="call" href={routes.flagTree(facts.tree.no, 'limb')}>
            {text.referStep}
          </ButtonLink>
        )
      }
    >
      <h1>{text.title}</h1>
      <Slider
        label={text.thickness}
        value={steps}
        least={scale.least}
        most={scale.most}
        onChange={setSteps}
        says={thickness}
        lessLabel={text.thinner}
        moreLabel={text.thicker}
      />
      <Segmented
        label={text.wood}
        options={[
          { value: 'live', label: text.live },
          { value: 'dead', label: text.dead },
        ]}
        value={wood}
        onChange={setWood}
      />
      <Segmented
        label={text.where}
        options={reaches.map((value) => ({ value, label: text.reaches[value] }))}
        value={reach}
        onChange={setReach}
      />
      <WhichTool tool={tool} limits={limits} />
      <CutDrawing tool={tool} diameterCm={diameterCm} thickness={thickness} rule={rule.value} />
      <HowToCut tool={tool} diameterCm={diameterCm} isDead={isDead} rule={rule.value} />
      <DiseaseReminder tree={facts.tree} />
      {tool.state === 'ours' && (
        <CutBackTo
          removedCm={diameterCm}
          scale={scale}
          hasLeader={formOf(facts.tree.species) === 'leader'}
        />
      )}
      <CutSources limits={limits} house={rule} />
    </HelperScreen>
  )
}
