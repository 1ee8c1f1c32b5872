'use client'

import { routes } from '@/lib/routes'
import { treeTag } from '@/lib/text/tree-name'
import { CrewScreen } from '../layout/CrewScreen'
import { PrintedHead } from '../layout/PrintedHead'
import { useWords } from '../layout/Words'
import { NoSuchTree } from '../tree/NoSuchTree'
import { plateCells } from '../tree/tree-words'
import { useTree } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Plate } from '../ui/Plate'
import { HistoryFile } from './HistoryFile'
import { HistoryRead } from './HistoryRead'
import './history.css'

/** The whole past of a tree, round by round; the same on paper. */
export function HistoryScreen({ no }: { no: number | null }) {
  const words = useWords()
  const facts = useTree(no)
  if (!facts) return <NoSuchTree />
  const { tree, block } = facts
  return (
    <CrewScreen tree={tree.no}>
      <div className="tree-history printed stack">
        <PrintedHead />
        <div className="row wrap">
          <Plate
            label={words.common.treeSpoken(block.name, tree.row, tree.place)}
            cells={plateCells(words, tree, block)}
          />
          <h1 className="beside-plate">{words.history.title}</h1>
        </div>
        <HistoryRead tree={tree.no}>
          {(history) => (
            <div className="row wrap screen-only">
              <HistoryFile history={history} tag={treeTag({ ...tree, block: block.code })} />
            </div>
          )}
        </HistoryRead>
        <div className="row wrap screen-only">
          <Button icon="print" onPress={() => window.print()}>
            {words.history.print}
          </Button>
          <ButtonLink href={routes.tree(tree.no)}>{words.history.back}</ButtonLink>
        </div>
      </div>
    </CrewScreen>
  )
}
