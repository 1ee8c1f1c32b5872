'use client'

import './ground.css'

import { useMemo, useState } from 'react'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Tag } from '../ui/Tag'
import { BlockDialogs, type BlockTask } from './BlockDialogs'
import { BlockTrees } from './BlockTrees'
import { GapList } from './GapList'
import { LeaveOut } from './LeaveOut'
import { ManagerOnly } from './ManagerOnly'
import { PickTrees } from './PickTrees'
import { SetMany } from './SetMany'
import { usePicking } from './use-picking'

/** The trees of one block: picked by map or numbers, and changed together. */
export function BlockScreen({ no }: { no: number }) {
  return (
    <ManagerOnly>
      <KnownBlock no={no} />
    </ManagerOnly>
  )
}

function KnownBlock({ no }: { no: number }) {
  const { ground } = useLeadWords()
  const block = useSelect((view) => view.ground.blocks.get(no))
  const sheet = useSelect((view) => view.sheet)
  const trees = useMemo(
    () => (sheet?.trees ?? []).filter((tree) => tree.block === no && tree.life !== 'removed'),
    [sheet, no]
  )
  if (block) return <OneBlock block={block} trees={trees} />
  return (
    <LeadScreen here="rooms">
      <div className="ground-screen">
        <h1>{ground.blockGone}</h1>
        <ButtonLink kind="call" href={routes.ground()}>
          {ground.back}
        </ButtonLink>
      </div>
    </LeadScreen>
  )
}

function OneBlock({ block, trees }: { block: Block; trees: readonly Tree[] }) {
  const { ground } = useLeadWords()
  const picking = usePicking(trees)
  const [task, setTask] = useState<BlockTask | null>(null)
  const [done, setDone] = useState<string | null>(null)
  const [only] = picking.all.length === 1 ? picking.all : []
  const open = (next: BlockTask) => {
    setDone(null)
    setTask(next)
  }
  const fill = (gap: Tree) => open({ kind: 'add', gap })
  return (
    <LeadScreen
      here="rooms"
      fill
      sideLabel={ground.pickTitle}
      side={
        <div className="ground-side">
          <h1>
            <Tag>{block.code}</Tag> {block.name}
          </h1>
          {done !== null && (
            <Note tone="done" icon="check" role="status">
              {done}
            </Note>
          )}
          <PickTrees picking={picking} trees={trees} />
          {picking.all.length > 0 && (
            <>
              <SetMany trees={picking.all} onDone={setDone} />
              <LeaveOut trees={picking.all} onDone={setDone} />
            </>
          )}
          <GapList block={block} trees={trees} onGap={fill} />
          <div className="ground-buttons">
            {only !== undefined && (
              <Button onPress={() => open({ kind: 'move', tree: only })}>{ground.moveTree}</Button>
            )}
            <Button onPress={() => open({ kind: 'add' })}>{ground.addTree}</Button>
            <Button onPress={() => open({ kind: 'renumber' })}>{ground.renumber}</Button>
            <Button onPress={() => open({ kind: 'change' })}>{ground.changeBlock}</Button>
            <ButtonLink href={routes.ground()}>{ground.back}</ButtonLink>
          </div>
        </div>
      }
    >
      <BlockTrees block={block} trees={trees} picking={picking} onGap={fill} />
      <BlockDialogs
        block={block}
        trees={trees}
        task={task}
        onClose={() => setTask(null)}
        onDone={setDone}
      />
    </LeadScreen>
  )
}
