'use client'

import { type AerialRead, useAerial, useSelect } from '@/lib/hooks'

export type PictureOnPaper = Pick<AerialRead, 'jpeg' | 'points' | 'opacity'>

/** The picture from above, read once somebody wants it on paper: it is as heavy as the app. */
export function usePictureOnPaper(isWanted: boolean) {
  const exists = useSelect((view) => (view.state?.orchard.aerialVersion ?? 0) > 0)
  const reading = useAerial(isWanted && exists)
  const picture: PictureOnPaper | null = reading.state === 'read' ? reading.value : null
  return {
    exists,
    picture: isWanted ? picture : null,
    isComing: isWanted && exists && reading.state === 'reading',
    hasFailed: isWanted && reading.state === 'failed',
  }
}
