'use client'

import type { Block } from '@/lib/domain/orchard/types'
import { countsByBlock, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Mark, type MarkName } from '../ui/Mark'
import { BlockBar } from './BlockBar'
import { BlockPicture } from './BlockPicture'
import type { BlockProgress } from './progress'

type BlockCardProps = {
  block: Block
  progress: BlockProgress
}

/** One block: where it is done, how much of it, and what is flagged in it. */
export function BlockCard({ block, progress }: BlockCardProps) {
  const { common } = useWords()
  const { board } = useLeadWords()
  const format = useFormat()
  const { trees, done, people } = progress
  const flagged = useSelect((view) => {
    const counts = countsByBlock(view).get(block.no)
    return { disease: counts?.disease ?? 0, arborist: counts?.arborist ?? 0 }
  })
  const facts: readonly { mark: MarkName; count: number; word: string }[] = [
    { mark: 'done', count: done, word: common.status.done },
    { mark: 'inProgress', count: progress.inProgress, word: common.status.in_progress },
    { mark: 'inProgress', count: progress.begun, word: board.begun },
    { mark: 'disease', count: flagged.disease, word: common.status.disease },
    { mark: 'arborist', count: flagged.arborist, word: common.status.arborist },
  ]
  return (
    <section className="block-card" aria-labelledby={`block-${block.no}`}>
      <BlockPicture block={block} label={board.pictureOf(block.name)} />
      <div className="block-facts">
        <div className="block-line">
          <h2 id={`block-${block.no}`}>{block.name}</h2>
          {people > 0 && <span className="small">{board.peopleAt(common.people(people))}</span>}
        </div>
        <div className="block-line">
          <span className="block-share num">{format.share(trees === 0 ? 0 : done / trees)}</span>
          <span className="small num">{board.doneOf(done, common.trees(trees))}</span>
        </div>
        <BlockBar progress={progress} />
        <ul className="block-marks">
          {facts
            .filter(({ count }) => count > 0)
            .map(({ mark, count, word }) => (
              <li key={word}>
                <Mark name={mark} size={18} />
                <span className="num">{board.part(count, word)}</span>
              </li>
            ))}
        </ul>
        <ButtonLink
          low
          kind="quiet"
          icon="map"
          href={routes.map()}
          label={board.openBlock(block.name)}
        >
          {board.openMap}
        </ButtonLink>
      </div>
    </section>
  )
}
