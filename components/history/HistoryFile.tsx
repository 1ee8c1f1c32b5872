'use client'

import { csvTable } from '@/lib/domain/orchard/csv'
import type { TreeHistory } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { saveFile } from '../shift/save-file'
import { Button } from '../ui/Button'
import { historyByRound } from './history-by-round'
import { useThingWords } from './use-thing-words'

/** The same lines as on the screen, as a table. `tag`: of the tree, for the name of the file. */
export function HistoryFile({ history, tag }: { history: TreeHistory; tag: string }) {
  const { history: text } = useWords()
  const format = useFormat()
  const wordsOf = useThingWords(history)
  const save = () => {
    const lines = historyByRound(history).flatMap(({ round, things }) =>
      things.map((thing) => {
        const { title, more } = wordsOf(thing)
        const at = new Date(thing.at)
        return [
          round?.season ?? null,
          round ? text.kinds[round.kind] : text.between,
          `${format.fullDate(at)}, ${format.clock(at)}`,
          title,
          more.join(', '),
          thing.note,
        ]
      })
    )
    saveFile(`${text.file}-${tag.replace(/[ ·]+/g, '-')}.csv`, csvTable([text.fileHeads, ...lines]))
  }
  return <Button onPress={save}>{text.asCsv}</Button>
}
