'use client'

import { useSyncExternalStore } from 'react'

import { onSoundChange, type Sound, soundNow } from './sound'

/** Whether this page can be heard. Silent until the browser says otherwise. */
export function useSound(): Sound {
  return useSyncExternalStore(onSoundChange, soundNow, () => 'locked')
}
