'use client'

import './paper.css'
import './paper-map.css'
import './paper-print.css'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { Why } from '../ui/Why'
import { PaperPages } from './PaperPages'
import { firstChoice, type PaperChoice, paperParts, toggled } from './paper-choice'
import { usePictureOnPaper } from './use-picture-on-paper'

/** Chooses what of the day is printed; the pages stand below as they will be. */
export function PaperScreen() {
  const { paper: text, aerial } = useLeadWords()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const [choice, setChoice] = useState<PaperChoice>(firstChoice)
  const isChosen = (block: number) => !choice.withoutBlocks.includes(block)
  const { exists, picture, isComing, hasFailed } = usePictureOnPaper(choice.picture)
  const nothing = choice.parts.length === 0

  return (
    <LeadScreen here="shift">
      <div className="paper-choose is-read">
        <h1>{text.title}</h1>
        <p>{text.lead}</p>
        {isOffline && <Note icon="nobars">{text.offline}</Note>}
        <ChoiceGroup label={text.parts} as="checks">
          {paperParts.map((part) => (
            <CheckRow
              key={part}
              checked={choice.parts.includes(part)}
              onChange={() => setChoice({ ...choice, parts: toggled(choice.parts, part) })}
            >
              {text.part[part]}
            </CheckRow>
          ))}
        </ChoiceGroup>
        <ChoiceGroup label={text.blocks} as="checks">
          {blocks.map(({ no, name }) => (
            <CheckRow
              key={no}
              checked={isChosen(no)}
              onChange={() =>
                setChoice({ ...choice, withoutBlocks: toggled(choice.withoutBlocks, no) })
              }
            >
              {name}
            </CheckRow>
          ))}
          <CheckRow
            checked={choice.onlyLeft}
            onChange={(onlyLeft) => setChoice({ ...choice, onlyLeft })}
          >
            {text.onlyLeft}
          </CheckRow>
          {exists && choice.parts.includes('maps') && (
            <CheckRow
              checked={choice.picture}
              onChange={(isOn) => setChoice({ ...choice, picture: isOn })}
              hint={text.pictureHint}
            >
              {text.picture}
            </CheckRow>
          )}
        </ChoiceGroup>
        {isComing && <p role="status">{aerial.coming}</p>}
        {hasFailed && <Note icon="nobars">{aerial.notCome}</Note>}
        {nothing && <Why id="paper-why">{text.nothing}</Why>}
        {nothing ? (
          <Button kind="call" state="off" describedBy="paper-why">
            {text.print}
          </Button>
        ) : (
          <Button kind="call" onPress={() => window.print()}>
            {text.print}
          </Button>
        )}
        <p className="small">{text.howTo}</p>
      </div>
      <PaperPages
        choice={choice}
        blocks={blocks.filter(({ no }) => isChosen(no))}
        picture={picture}
      />
    </LeadScreen>
  )
}
