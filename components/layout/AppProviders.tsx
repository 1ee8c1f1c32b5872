'use client'

import type { ReactNode } from 'react'

import { RowcallProvider } from '@/lib/hooks'
import type { Language } from '@/lib/text/language'
import { WordsProvider } from './Words'

type AppProvidersProps = {
  language: Language
  children: ReactNode
}

/** What every screen of the app stands on: the orchard as this device knows it, and words. */
export function AppProviders({ language, children }: AppProvidersProps) {
  return (
    <RowcallProvider>
      <WordsProvider language={language}>{children}</WordsProvider>
    </RowcallProvider>
  )
}
