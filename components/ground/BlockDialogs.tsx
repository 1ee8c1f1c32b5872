'use client'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import { treeTag } from '@/lib/text/tree-name'
import { useLeadWords } from '../crew/use-lead-words'
import { Dialog } from '../ui/Dialog'
import { AddTree } from './AddTree'
import { ChangeBlock } from './ChangeBlock'
import { MoveTree } from './MoveTree'
import { Renumber } from './Renumber'

export type BlockTask =
  /** `gap`: on this empty place. */
  | { kind: 'add'; gap?: Tree }
  | { kind: 'move'; tree: number }
  | { kind: 'renumber' }
  | { kind: 'change' }

type BlockDialogsProps = {
  block: Block
  trees: readonly Tree[]
  task: BlockTask | null
  onClose: () => void
  onDone: (words: string) => void
}

/** One thing at a time, over the map. */
export function BlockDialogs({ block, trees, task, onClose, onDone }: BlockDialogsProps) {
  const { ground } = useLeadWords()
  const titles = {
    add: ground.addTree,
    move: ground.moveTree,
    renumber: ground.renumber,
    change: ground.changeBlock,
  }
  const gap = task?.kind === 'add' ? task.gap : undefined
  const ofTask = task ? titles[task.kind] : ''
  const title = gap ? ground.fillGap(treeTag({ ...gap, block: block.code })) : ofTask
  const done = (words: string) => {
    onClose()
    onDone(words)
  }
  return (
    <Dialog open={task !== null} title={title} closeLabel={ground.close} onClose={onClose}>
      {task?.kind === 'add' && <AddTree block={block} trees={trees} gap={gap} onDone={done} />}
      {task?.kind === 'move' && <MoveTree no={task.tree} onDone={done} />}
      {task?.kind === 'renumber' && <Renumber block={block} trees={trees} onDone={done} />}
      {task?.kind === 'change' && <ChangeBlock block={block} onDone={done} />}
    </Dialog>
  )
}
