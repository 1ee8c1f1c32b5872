'use client'

import type { ClaimLack } from '@/lib/hooks'
import { Banner } from '../layout/Banner'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'

/** Somebody left, and a tree that takes two has one: said to the one who is still up there. */
export function AloneBanner({ lack }: { lack: ClaimLack }) {
  const { tree: text } = useWords()
  const nameOf = useNameOf()
  return (
    <Banner tone="call" icon="warn">
      <span role="alert">
        {lack.kind === 'alone'
          ? text.aloneUp
          : text.minorAloneUp(lack.guardian === null ? null : nameOf(lack.guardian))}
      </span>
    </Banner>
  )
}
