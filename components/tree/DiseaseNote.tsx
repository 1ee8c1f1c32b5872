'use client'

import type { Tree } from '@/lib/domain/orchard/types'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { Note } from '../ui/Note'
import { signWords } from './flag-words'
import { type Sanitation, useSanitation } from './use-sanitation'

/** What a disease flag on this tree asks: how far below one cuts, when one cleans, where the wood goes. */
export function DiseaseNote({ tree }: { tree: Tree }) {
  const words = useWords()
  const { sanitation: sick } = words
  const asks = useSanitation(tree)
  const howFar = useHowFarBelow()
  if (asks === null) return null
  const { signs, below, clean, wood } = asks
  const named = [...new Set(signs.map((sign) => signWords(words, 'disease', sign)))].join(', ')
  return (
    <Note tone="sick" mark="disease" lead={words.tree.sickHere}>
      {named}. <b>{howFar(asks)}</b> {sick.clean[clean]} {sick.wood[wood]}
      <More title={words.whatToCut.why}>
        {below?.source && (
          <p>{sick.belowWhy(sick.disease[below.disease], words.tradeSources[below.source])}</p>
        )}
        <p>{sick.cleanHow}</p>
        <p>{sick.differ}</p>
        <p className="small">{sick.cleanSources}</p>
      </More>
    </Note>
  )
}

/** The same in two sentences, for who has the blade at the wood. */
export function DiseaseReminder({ tree }: { tree: Tree }) {
  const { sanitation: sick } = useWords()
  const asks = useSanitation(tree)
  const howFar = useHowFarBelow()
  if (asks === null) return null
  return (
    <Note tone="sick" mark="disease" lead={howFar(asks)}>
      {sick.clean[asks.clean]}
    </Note>
  )
}

function useHowFarBelow() {
  const { sanitation: sick } = useWords()
  const format = useFormat()
  return ({ below }: Sanitation) =>
    below === null ? sick.noNumber : sick.below(format.span(below.belowCm, 'up'))
}
