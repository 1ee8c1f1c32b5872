'use client'

import { useState } from 'react'

import { type AuditFilter, useAuditTrail } from '@/lib/hooks'
import { useLeadWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { AuditFilterForm } from './AuditFilterForm'
import { AuditPage } from './AuditPage'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'

const everything: AuditFilter = { before: null, about: null, tree: null, kinds: null, day: null }

type AuditScreenProps = { tree: number | null; about: string | null }

/** What happened, when, to what, and who did it. There is nothing here to press that changes anything. */
export function AuditScreen({ tree, about }: AuditScreenProps) {
  const { audit: text } = useLeadWords()
  const [filter, setFilter] = useState<AuditFilter>({ ...everything, tree, about })
  const reading = useAuditTrail(filter)
  return (
    <Room title={text.title} lead={text.lead}>
      <AuditFilterForm
        filter={filter}
        onChange={(change) => setFilter({ ...filter, before: null, ...change })}
        onClear={() => setFilter(everything)}
      />
      <ReadingOf reading={reading}>
        {(read) => (
          <>
            <AuditPage read={read} />
            <div className="room-buttons screen-only">
              {read.events.length === 100 && (
                <Button
                  onPress={() => setFilter({ ...filter, before: read.events.at(-1)?.n ?? null })}
                >
                  {text.older}
                </Button>
              )}
              {filter.before !== null && (
                <Button onPress={() => setFilter({ ...filter, before: null })}>
                  {text.newest}
                </Button>
              )}
            </div>
          </>
        )}
      </ReadingOf>
    </Room>
  )
}
