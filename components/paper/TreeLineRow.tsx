'use client'

import type { marks } from '@/lib/domain/orchard/status'
import type { Block } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { treeTag } from '@/lib/text/tree-name'
import { useFlagWords } from '../crew/use-flag-words'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Mark, type MarkName } from '../ui/Mark'
import type { Closed, TreeLine } from './tree-lines'

const shapes: Record<(typeof marks)[number], MarkName> = {
  unpruned: 'unpruned',
  in_progress: 'inProgress',
  done: 'done',
  disease: 'disease',
  arborist: 'arborist',
  held_by_me: 'inProgress',
  dealt_to_me: 'unpruned',
  dealt: 'unpruned',
  closed: 'closed',
}

const closedWords = {
  inside_keep_out: 'insideKeepOut',
  species_off: 'speciesOff',
  left_out: 'leftOut',
} as const satisfies Record<Closed, string>

type TreeLineRowProps = { line: TreeLine; block: Block; note: string | null }

/** One tree: what is known, and cells to write in; crossed where nobody is to work. */
export function TreeLineRow({ line, block, note }: TreeLineRowProps) {
  const words = useWords()
  const { paper: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const flagWords = useFlagWords()
  const { tree, mark } = line
  const cultivar = useSelect(
    ({ sheet }) => sheet?.cultivars.find(({ no }) => no === tree.cultivar)?.name ?? null
  )
  const names = (people: readonly string[]) => format.list(people.map(nameOf))
  const known = [
    ...line.flags.map((flag) =>
      flag.kind === 'arborist'
        ? text.hazard(flagWords(flag).sign)
        : text.disease(flagWords(flag).sign)
    ),
    ...(line.closed ? [text[closedWords[line.closed]]] : []),
    ...(tree.life === 'dead' ? [text.dead] : []),
    ...(line.ladder ? [text.ladder] : []),
    ...(tree.asksSaw ? [text.saw] : []),
    ...(line.marked ? [text.marked] : []),
    ...(note ? [note] : []),
  ]
  return (
    <tr className={line.isOpen ? undefined : 'is-closed'}>
      <th scope="row">
        {treeTag({ ...tree, block: block.code })}
        <small>
          {capitalised(speciesWords(words, tree.species).name)}
          {cultivar !== null && `, ${cultivar}`}
        </small>
      </th>
      <td>
        <Mark name={shapes[mark]} size={14} /> {words.common.status[mark]}
        {line.share !== null && <small>{text.share(format.share(line.share / 100))}</small>}
        {line.heldBy.length > 0 && <small>{text.heldBy(names(line.heldBy))}</small>}
        {line.dealtTo.length > 0 && <small>{text.dealtTo(names(line.dealtTo))}</small>}
      </td>
      <td>{known.join('. ')}</td>
      <td />
      <td />
      <td />
      <td />
      <td />
    </tr>
  )
}
