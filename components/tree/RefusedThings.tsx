'use client'

import { isRefused } from '@/lib/events/answer'
import { type Kept, useRowcall, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { RefusedNote } from '../sync/RefusedNote'
import { useRefusalWords } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { writtenIn } from './kept-words'
import { useKeptWords } from './use-kept-things'

/** What was refused while nobody looked: why, what was written, and the two ways on. */
export function RefusedThings() {
  const { unsent } = useWords()
  const refused = useSelect((view) => view.refused)
  if (refused.length === 0) return null
  return (
    <section className="stack">
      <h2>{unsent.refusedTitle}</h2>
      <p className="small">{unsent.refusedNote}</p>
      {refused.map((kept) => (
        <RefusedThing key={kept.seq} kept={kept} />
      ))}
    </section>
  )
}

function RefusedThing({ kept }: { kept: Kept }) {
  const words = useWords()
  const { dismiss, sendAgain } = useRowcall()
  const say = useRefusalWords()
  const title = useKeptWords()(kept).title
  const written = writtenIn(kept.command)
  const tree = 'tree' in kept.command.args ? (kept.command.args.tree ?? undefined) : undefined
  const reasons =
    kept.answer && isRefused(kept.answer)
      ? kept.answer.refused.map((refusal) => say(refusal, { tree }))
      : [words.errors.unknown(kept.fault ?? 'unknown')]
  return (
    <RefusedNote
      title={title}
      reasons={reasons}
      written={
        written !== null && (
          <Note icon="edit" lead={words.unsent.youWrote}>
            {written}
          </Note>
        )
      }
    >
      <div className="row wrap">
        <Button icon="send" onPress={() => void sendAgain(kept.seq)}>
          {words.unsent.sendAgain}
        </Button>
        <Button icon="cross" onPress={() => void dismiss(kept.seq)}>
          {words.unsent.discard}
        </Button>
      </div>
    </RefusedNote>
  )
}
