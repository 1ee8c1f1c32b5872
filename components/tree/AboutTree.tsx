'use client'

import type { Tree } from '@/lib/domain/orchard/types'
import { factsOf } from '@/lib/domain/pruning/species-facts'
import type { WorkCard } from '@/lib/domain/pruning/work-card'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Note } from '../ui/Note'
import { Pick } from '../ui/Pick'
import { originWords, shareRange } from './step-words'

type AboutTreeProps = {
  tree: Tree
  card: WorkCard
  isNeglected: boolean
  onNeglected: (isNeglected: boolean) => void
}

/** What changes the work here: what its wood does to skin, that it is not the season, that it was left to itself. */
export function ThisWinter({ tree, card, isNeglected }: Omit<AboutTreeProps, 'onNeglected'>) {
  const { whatToCut: text } = useWords()
  const { caution } = factsOf(tree.species)
  return (
    <>
      {caution && (
        <Note icon="warn" lead={text.caution[caution.value].lead}>
          {text.caution[caution.value].says}
        </Note>
      )}
      {card.isOutOfSeason && (
        <Note icon="clock" lead={text.outOfSeason.lead}>
          {text.outOfSeason.says}
        </Note>
      )}
      {isNeglected && !isYoung(card) && (
        <Note icon="heap" role="status">
          {card.winters === null
            ? text.neglected.asEver
            : text.neglected.winters(String(card.winters.least), String(card.winters.most))}
        </Note>
      )}
    </>
  )
}

/** What kind of tree it is for the hand that prunes it: its season, its usual year, and how it was kept. */
export function AboutTree({ tree, card, isNeglected, onNeglected }: AboutTreeProps) {
  const { whatToCut: text } = useWords()
  return (
    <More title={text.about}>
      <SpeciesFacts species={tree.species} />
      {!isYoung(card) && (
        <div>
          <Pick type="checkbox" name="neglected" checked={isNeglected} onChange={onNeglected}>
            {text.neglected.yes}
          </Pick>
        </div>
      )}
    </More>
  )
}

function isYoung(card: WorkCard): boolean {
  return card.steps.some(({ code }) => code === 'in_training')
}

/** What is known of the species, each with where it comes from. */
function SpeciesFacts({ species }: Pick<Tree, 'species'>) {
  const words = useWords()
  const format = useFormat()
  const { whatToCut: text } = words
  const { bornOn, take, season } = factsOf(species)
  const { many } = speciesWords(words, species)
  const lines = [
    ...(bornOn.value.length > 0
      ? [
          {
            says: text.speciesBears(
              capitalised(many),
              format.list(bornOn.value.map((wood) => text.bornOn[wood]))
            ),
            origin: bornOn,
          },
        ]
      : []),
    {
      says:
        typeof take.value === 'string'
          ? text.take[take.value]
          : text.take[take.value.of](shareRange(text, format, take.value)),
      origin: take,
    },
    { says: text.season[season.value], origin: season },
  ]
  return (
    <>
      {lines.map(({ says, origin }) => (
        <p key={says}>
          {says} <span className="small">{originWords(words, origin)}</span>
        </p>
      ))}
    </>
  )
}
