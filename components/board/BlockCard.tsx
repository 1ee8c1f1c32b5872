'use client'

import type { ReactNode } from 'react'

import type { Block } from '@/lib/domain/orchard/types'
import { countsByBlock, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Mark } from '../ui/Mark'
import { BlockBar } from './BlockBar'
import { BlockPicture } from './BlockPicture'
import type { BlockProgress } from './progress'

type BlockCardProps = {
  block: Block
  progress: BlockProgress
  /** What is said of it besides. */
  children?: ReactNode
}

/** One block: where it is done, how much of it, and what is flagged in it. */
export function BlockCard({ block, progress, children }: BlockCardProps) {
  const { common } = useWords()
  const { board } = useLeadWords()
  const format = useFormat()
  const { trees, done, people } = progress
  const flagged = useSelect((view) => {
    const counts = countsByBlock(view).get(block.no)
    return { disease: counts?.disease ?? 0, arborist: counts?.arborist ?? 0 }
  })
  const facts = [
    { mark: 'done', of: 'done', count: done },
    { mark: 'inProgress', of: 'inProgress', count: progress.inProgress },
    { mark: 'inProgress', of: 'begun', count: progress.begun },
    { mark: 'disease', of: 'disease', count: flagged.disease },
    { mark: 'arborist', of: 'arborist', count: flagged.arborist },
  ] as const
  return (
    <section className="block-card" aria-labelledby={`block-${block.no}`}>
      <BlockPicture block={block} label={board.pictureOf(block.name)} />
      <div className="block-facts">
        <div className="block-line">
          <h2 id={`block-${block.no}`}>{block.name}</h2>
          {people > 0 && <span className="small">{board.peopleAt(common.people(people))}</span>}
        </div>
        {trees > 0 && (
          <>
            <div className="block-line">
              <span className="block-share num">{format.share(done / trees)}</span>
              <span className="small num">{board.doneOf(done, common.trees(trees))}</span>
            </div>
            <BlockBar progress={progress} />
            {children}
          </>
        )}
        <ul className="block-marks">
          {facts
            .filter(({ count }) => count > 0)
            .map(({ mark, of, count }) => (
              <li key={of}>
                <Mark name={mark} size={18} />
                <span className="num">{board.part(count, board.counted[of](count))}</span>
              </li>
            ))}
        </ul>
      </div>
    </section>
  )
}
