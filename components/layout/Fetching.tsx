'use client'

import { useSelect } from '@/lib/hooks'
import { PhoneFrame } from './PhoneFrame'
import { useDoorWords } from './Words'

/** While this device does not know yet who uses it, or the orchard. */
export function Fetching() {
  const { common, errors } = useDoorWords()
  const hasNoSignal = useSelect((view) => view.signal === 'no_signal')
  return (
    <PhoneFrame who={common.appName}>
      <p role="status">{hasNoSignal ? errors.offline : common.loading}</p>
    </PhoneFrame>
  )
}
