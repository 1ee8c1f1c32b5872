'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Mark } from '../ui/Mark'
import { Tile } from '../ui/Tile'
import type { FlagDraft } from './flag-draft'

type KindQuestionProps = {
  kind: FlagDraft['kind']
  onChange: (kind: NonNullable<FlagDraft['kind']>) => void
}

/** Ill, or dangerous: the first asks for a lead, the second for an arborist. */
export function KindQuestion({ kind, onChange }: KindQuestionProps) {
  const { flag } = useWords()
  return (
    <>
      {kind === null && <h1>{flag.kindTitle}</h1>}
      <div className={kind === null ? undefined : 'kind-chosen'}>
        <ChoiceGroup label={flag.kindTitle} hideLabel as="tiles">
          <Tile
            type="radio"
            name="kind"
            beside
            checked={kind === 'disease'}
            onChange={() => onChange('disease')}
            art={<Mark name="disease" size={28} />}
          >
            {flag.kindDisease}
          </Tile>
          <Tile
            type="radio"
            name="kind"
            beside
            checked={kind === 'arborist'}
            onChange={() => onChange('arborist')}
            art={<Mark name="arborist" size={28} />}
          >
            {flag.kindHazard}
          </Tile>
        </ChoiceGroup>
      </div>
    </>
  )
}
