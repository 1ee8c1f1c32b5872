'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { signWords } from '../tree/flag-words'
import type { Entry } from './entry'
import { clockTyped, shareTyped } from './read-typed'

/** A line as it reads back: the times as they were understood. */
export function useEntryWords(): (entry: Entry) => string {
  const words = useWords()
  const { fromPaper: text } = useLeadWords()
  const format = useFormat()
  const clock = (typed: string) => clockTyped(typed)?.replace(/^0/, '') ?? ''
  return ({ typed }) => {
    switch (typed.sort) {
      case 'work': {
        const share = shareTyped(typed.share)
        return share === null
          ? text.finishedLine(typed.tree, clock(typed.at))
          : text.halfLine(typed.tree, format.share(share / 100), clock(typed.at))
      }
      case 'attendance':
        return text.attendanceLine(
          format.list(
            [typed.arrived, typed.breakFrom, typed.breakTo, typed.left].map(clock).filter(Boolean)
          )
        )
      case 'flag': {
        const [kind, sign = ''] = typed.sign.split(' ')
        const said = signWords(words, kind === 'arborist' ? kind : 'disease', sign)
        return text.flagLine(typed.tree, said, clock(typed.at))
      }
    }
  }
}
