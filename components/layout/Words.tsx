'use client'

import { createContext, type ReactNode, use } from 'react'

import { isLanguage, type Language } from '@/lib/text/language'
import {
  type DoorMessages,
  doorMessages,
  type LeadMessages,
  leadMessages,
  type Messages,
  messages,
  type StartMessages,
  startMessages,
} from '@/lib/text/messages'

// Not when the first screen asks: on a slow phone that is a moment later.
const inPage = typeof document === 'undefined' ? undefined : document.documentElement.lang
if (isLanguage(inPage)) void doorMessages(inPage)

const LanguageContext = createContext<Language>('en')

type WordsProviderProps = {
  /** The language in which the server writes this page. */
  language: Language
  children: ReactNode
}

/** Hands the reader's language to every screen below. */
export function WordsProvider({ language, children }: WordsProviderProps) {
  return <LanguageContext value={language}>{children}</LanguageContext>
}

export function useLanguage(): Language {
  return use(LanguageContext)
}

/** What is read before one is in: small, so that a first screen is there soon. */
export function useDoorWords(): DoorMessages {
  return use(doorMessages(useLanguage()))
}

/** What is read before the first tree. */
export function useStartWords(): StartMessages {
  return use(startMessages(useLanguage()))
}

/** What everybody on a shift may read, in the reader's language. */
export function useWords(): Messages {
  return use(messages(useLanguage()))
}

/** What only leads and managers read. */
export function useLeadWords(): LeadMessages {
  return use(leadMessages(useLanguage()))
}
