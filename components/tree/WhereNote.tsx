'use client'

import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import type { DayInHand } from './my-day'

type WhereNoteProps = {
  day: DayInHand
  /** Where the way leads. */
  block: string
  onChange: () => void
}

/** From where the way is reckoned: the last tree, or where one said one is. */
export function WhereNote({ day, block, onChange }: WhereNoteProps) {
  const { findTree } = useWords()
  const tagOf = useTagOf()
  const from =
    day.at === null
      ? findTree.fromNowhere(block)
      : (day.atIsChosen ? findTree.fromPlace : findTree.fromTree)(tagOf(day.at))
  return (
    <div className="where">
      <p className="small">{from}</p>
      <Button icon="meet" onPress={onChange}>
        {findTree.changeWhere}
      </Button>
    </div>
  )
}
