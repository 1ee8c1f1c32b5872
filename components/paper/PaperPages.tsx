'use client'

import { useMemo } from 'react'

import type { Block } from '@/lib/domain/orchard/types'
import { useNotesOfRound } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { BriefingPart } from './BriefingPart'
import { CoverPart } from './CoverPart'
import { LeadsPart } from './LeadsPart'
import { LinesPart } from './LinesPart'
import { MapPart } from './MapPart'
import { OrchardMapPart } from './OrchardMapPart'
import { PeoplePart } from './PeoplePart'
import type { PaperChoice, PaperPart } from './paper-choice'
import { ReferralsPart } from './ReferralsPart'
import { StepsPart } from './StepsPart'
import { ToolsPart } from './ToolsPart'
import { TreesPart } from './TreesPart'
import type { PictureOnPaper } from './use-picture-on-paper'

type PaperPagesProps = {
  choice: PaperChoice
  blocks: readonly Block[]
  picture: PictureOnPaper | null
}

/** The pages in the order of a clipboard. */
export function PaperPages({ choice, blocks, picture }: PaperPagesProps) {
  const { paper: text } = useLeadWords()
  const reading = useNotesOfRound()
  const notes = useMemo(() => (reading.state === 'read' ? new Map(reading.value) : null), [reading])
  const has = (part: PaperPart) => choice.parts.includes(part)
  return (
    <section className="paper-pages" aria-label={text.preview}>
      {has('cover') && <CoverPart />}
      {has('maps') && blocks.length > 1 && <OrchardMapPart blocks={blocks} picture={picture} />}
      {blocks.map((block) => (
        <div key={block.no}>
          {has('maps') && <MapPart block={block} picture={picture} />}
          {has('steps') && <StepsPart block={block} />}
          {has('trees') && <TreesPart block={block} onlyLeft={choice.onlyLeft} notes={notes} />}
        </div>
      ))}
      {has('people') && <PeoplePart />}
      {has('leads') && <LeadsPart />}
      {has('tools') && <ToolsPart />}
      {has('briefing') && <BriefingPart />}
      {has('referrals') && <ReferralsPart />}
      {has('lines') && <LinesPart />}
    </section>
  )
}
