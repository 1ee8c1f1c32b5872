'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { useLeadsHere } from './StuckSheet'

type FlagStepProps = {
  kind: 'disease' | 'arborist' | null
  isReady: boolean
  onRaise: () => void
}

const whyId = 'flag-why'

/** The flag goes up; a hazard also closes the tree. Without signal the voice is quicker. */
export function FlagStep({ kind, isReady, onRaise }: FlagStepProps) {
  const { flag } = useWords()
  const nameOf = useNameOf()
  const [lead] = useLeadsHere()
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const hazardSub = lead ? flag.flagHazardSub(nameOf(lead)) : flag.flagHazardSubNoName
  const [words, sub] =
    kind === 'arborist'
      ? [flag.flagHazard, isOffline ? flag.keptTell : hazardSub]
      : [flag.flagDisease, isOffline ? flag.keptTell : flag.flagDiseaseSub]
  if (kind === null) return null
  if (!isReady)
    return (
      <div className="grow">
        <Why id={whyId}>{flag.chooseSign}</Why>
        <Button kind="call" wide state="off" describedBy={whyId}>
          {words}
        </Button>
      </div>
    )
  return (
    <Button kind="call" sub={sub} onPress={onRaise}>
      {words}
    </Button>
  )
}
