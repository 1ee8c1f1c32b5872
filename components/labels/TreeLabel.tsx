'use client'

import type { LabelSheet } from '@/lib/domain/orchard/label-sheets'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { QrCode } from '../day/QrCode'
import { useWords } from '../layout/Words'
import { kindWords } from '../tree/tree-words'
import type { TreeFacts } from '../tree/use-tree'
import { labelSizes } from './label-sizes'

type TreeLabelProps = { facts: TreeFacts; sheet: LabelSheet; origin: string }

/** What hangs on the tree: its tag as large as fits, what it is, and the code that opens it. */
export function TreeLabel({ facts, sheet, origin }: TreeLabelProps) {
  const words = useWords()
  const { labels: text } = useLeadWords()
  const { tree, block, cultivar, tag } = facts
  const { codeMm, tagMm, wordsMm } = labelSizes(sheet, tag)
  return (
    <article className="tree-label" aria-label={tag}>
      <div className="label-code" style={{ width: `calc(${codeMm} * var(--mm))` }}>
        <QrCode text={origin + routes.tree(tree.no)} label={text.code(tag)} isPrinted />
      </div>
      <div className="label-words" style={{ fontSize: `calc(${wordsMm} * var(--mm))` }}>
        <p className="label-tag" style={{ fontSize: `calc(${tagMm} * var(--mm))` }}>
          {tag}
        </p>
        <p>
          {block.name}, {text.row} {tree.row}, {text.tree} {tree.place}
        </p>
        <p className="label-kind">{kindWords(words, tree, cultivar)}</p>
      </div>
    </article>
  )
}
