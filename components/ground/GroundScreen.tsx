'use client'

import './ground.css'

import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { groupBy } from '@/lib/util/group-by'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Tag } from '../ui/Tag'
import { withUnit } from './lengths'
import { ManagerOnly } from './ManagerOnly'

type GroundScreenProps = {
  /** The letters of a block that was laid out just now. */
  made: string | null
}

/** The blocks of the orchard, and the ways to more of them. */
export function GroundScreen({ made }: GroundScreenProps) {
  return (
    <ManagerOnly>
      <Ground made={made} />
    </ManagerOnly>
  )
}

function Ground({ made }: GroundScreenProps) {
  const { ground, rooms } = useLeadWords()
  const sheet = useSelect((view) => view.sheet)
  const treesOf = groupBy(sheet?.trees ?? [], ({ block }) => block)
  const blocks = sheet?.blocks ?? []
  const madeBlock = blocks.find(({ code }) => code === made)
  return (
    <LeadScreen here="rooms">
      <div className="ground-screen">
        <ButtonLink kind="quiet" icon="left" href={routes.rooms()}>
          {rooms.back}
        </ButtonLink>
        <h1>{ground.title}</h1>
        {madeBlock && (
          <Note tone="done" icon="check" role="status">
            {ground.made(madeBlock.name, standing(treesOf.get(madeBlock.no)).length)}
          </Note>
        )}
        {blocks.length === 0 && <p>{ground.noBlocks}</p>}
        <div className="ground-buttons">
          <ButtonLink kind="call" icon="plus" href={routes.newBlock()}>
            {ground.newBlock}
          </ButtonLink>
          <ButtonLink icon="send" href={routes.bringIn()}>
            {ground.bringIn}
          </ButtonLink>
          {blocks.length > 0 && (
            <ButtonLink icon="print" href={routes.labels()}>
              {ground.labels}
            </ButtonLink>
          )}
          <ButtonLink icon="edit" href={routes.cultivars()}>
            {ground.cultivars}
          </ButtonLink>
        </div>
        <ul className="ground-blocks">
          {blocks.map((block) => (
            <BlockLine key={block.no} block={block} trees={treesOf.get(block.no) ?? []} />
          ))}
        </ul>
      </div>
    </LeadScreen>
  )
}

function BlockLine({ block, trees }: { block: Block; trees: readonly Tree[] }) {
  const { ground } = useLeadWords()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const there = standing(trees)
  const gaps = trees.filter(({ life }) => life === 'gap').length
  const rows = new Set(there.map(({ row }) => row)).size
  const spacing = ground.spacing(
    withUnit(block.rowSpacingM, units),
    withUnit(block.treeSpacingM, units)
  )
  return (
    <li className="panel">
      <div className="grow">
        <h2>
          <Tag>{block.code}</Tag> {block.name}
        </h2>
        <p className="num">{ground.inRows(rows, there.length)}</p>
        <p className="small num">{gaps > 0 ? `${ground.gaps(gaps)}. ${spacing}` : spacing}</p>
      </div>
      <ButtonLink href={routes.block(block.no)} label={`${ground.open}: ${block.name}`}>
        {ground.open}
      </ButtonLink>
    </li>
  )
}

function standing(trees: readonly Tree[] = []): Tree[] {
  return trees.filter(stands)
}
