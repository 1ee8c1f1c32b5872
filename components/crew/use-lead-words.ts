'use client'

import { use } from 'react'

import { type LeadMessages, leadMessages } from '@/lib/text/messages'
import { useLanguage } from '../layout/Words'

/** What only leads and managers read, in the reader's language. */
export function useLeadWords(): LeadMessages {
  return use(leadMessages(useLanguage()))
}
