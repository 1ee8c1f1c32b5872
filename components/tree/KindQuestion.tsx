'use client'

import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Mark } from '../ui/Mark'
import { Tile } from '../ui/Tile'
import type { FlagDraft } from './flag-draft'

type KindQuestionProps = {
  /** The tree it is about, to be seen before anything is said of it. */
  tag: string
  kind: FlagDraft['kind']
  onChange: (kind: NonNullable<FlagDraft['kind']>) => void
}

/** Ill, or dangerous: the first asks for a lead, the second for an arborist. */
export function KindQuestion({ tag, kind, onChange }: KindQuestionProps) {
  const { flag } = useWords()
  const markSize = kind === null ? 44 : 28
  return (
    <>
      {kind === null && <h1>{flag.kindTitle(tag)}</h1>}
      <div className={kind === null ? 'kind-asked' : 'kind-chosen'}>
        <ChoiceGroup label={flag.kindTitle(tag)} hideLabel as="tiles">
          <Tile
            type="radio"
            name="kind"
            beside
            checked={kind === 'disease'}
            onChange={() => onChange('disease')}
            art={<Mark name="disease" size={markSize} />}
          >
            {flag.kindDisease}
          </Tile>
          <Tile
            type="radio"
            name="kind"
            beside
            checked={kind === 'arborist'}
            onChange={() => onChange('arborist')}
            art={<Mark name="arborist" size={markSize} />}
          >
            {flag.kindHazard}
          </Tile>
        </ChoiceGroup>
      </div>
      {kind === null && (
        <ButtonLink icon="other" href={routes.flag()}>
          {flag.otherTree}
        </ButtonLink>
      )}
    </>
  )
}
