'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { signWords } from './flag-words'

/** What a disease flag on this tree asks of the hand and the blade. */
export function DiseaseNote({ tree }: { tree: number }) {
  const words = useWords()
  const signs = useSelect((view) =>
    Object.values(view.state?.flags ?? {})
      .filter((flag) => flag.tree === tree && flag.kind === 'disease')
      .map(({ sign }) => sign)
  )
  if (signs.length === 0) return null
  const named = [...new Set(signs.map((sign) => signWords(words, 'disease', sign)))].join(', ')
  return (
    <Note tone="sick" mark="disease" lead={words.tree.sickHere}>
      {named}. {words.tree.sickSays}
    </Note>
  )
}
