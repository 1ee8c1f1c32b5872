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
  if (kind === null) return null

  const words = kind === 'arborist' ? flag.flagHazard : flag.flagDisease
  if (!isReady)
    return (
      <Button kind="call" state="off" describedBy={whyId}>
        {words}
      </Button>
    )
  const told = lead ? flag.flagHazardSub(nameOf(lead)) : flag.flagHazardSubNoName
  const sub = isOffline ? flag.keptTell : kind === 'arborist' ? told : flag.flagDiseaseSub
  return (
    <Button kind="call" sub={sub} onPress={onRaise}>
      {words}
    </Button>
  )
}

/** Above the button while it waits. */
export function FlagWhy({ kind, isReady }: Omit<FlagStepProps, 'onRaise'>) {
  const { flag } = useWords()
  return kind !== null && !isReady ? <Why id={whyId}>{flag.chooseSign}</Why> : null
}
