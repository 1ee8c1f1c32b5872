'use client'

import type { ReactNode } from 'react'

import type { Reading } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { Why } from '../ui/Why'

type ReadingOfProps<Value> = {
  reading: Reading<Value>
  children: (value: Value) => ReactNode
}

/** What was looked up, or that it is still on its way, or why it does not come. */
export function ReadingOf<Value>({ reading, children }: ReadingOfProps<Value>) {
  const words = useWords()
  switch (reading.state) {
    case 'reading':
      return <p role="status">{words.common.asking}</p>
    case 'failed':
      return <Why>{faultSentence(words, { fault: reading.fault })}</Why>
    case 'read':
      return children(reading.value)
  }
}
