'use client'

import { useRowcall, useSelect } from '@/lib/hooks'
import { useDoorWords } from '../layout/Words'
import { Button } from '../ui/Button'

/** The way on for the others who use this device. */
export function OtherPeople() {
  const { join } = useDoorWords()
  const { chooseAgain } = useRowcall()
  const hasOthers = useSelect((view) => view.memberships.length > 1)
  return hasOthers ? <Button onPress={chooseAgain}>{join.someoneElseHere}</Button> : null
}
