'use client'

import { useSelect } from '@/lib/hooks'
import { FlagReasons } from '../flags/FlagReasons'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { Note } from '../ui/Note'
import { useFlagWords } from './use-flag-words'
import { useLeadWords } from './use-lead-words'

/** What is flagged at this tree, how bad it is, who saw it and when; of a hazard why it is the arborist's. */
export function TreeFlags({ tree }: { tree: number }) {
  const { leadMap } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const flagWords = useFlagWords()
  const flags = useSelect((view) =>
    Object.entries(view.state?.flags ?? {}).filter(([, flag]) => flag.tree === tree)
  )
  return flags.map(([id, flag]) => {
    const { sign, severity } = flagWords(flag)
    const isHazard = flag.kind === 'arborist'
    return (
      <Note
        key={id}
        tone={isHazard ? 'arb' : 'sick'}
        mark={isHazard ? 'arborist' : 'disease'}
        lead={`${sign}. ${severity}.`}
      >
        {leadMap.flaggedBy(nameOf(flag.raisedBy), format.clock(new Date(flag.raisedAt)))}
        {flag.keepOutM !== null && <> · {leadMap.keepOut(format.keepAway(flag.keepOutM))}</>}
        {isHazard && <FlagReasons reasons={flag.reasons} limb={flag.limb} />}
      </Note>
    )
  })
}
