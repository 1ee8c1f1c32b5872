'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { Note } from '../ui/Note'
import { Segmented } from '../ui/Segmented'
import type { Change } from './briefing-draft'

type WhoHearsWhenProps = { value: Change | null; onChange: (change: Change) => void }

/** How grave a change is, and what each of the two does. */
export function WhoHearsWhen({ value, onChange }: WhoHearsWhenProps) {
  const { shift: text, proposals } = useLeadWords()
  return (
    <>
      <Segmented
        label={text.change}
        options={[
          { value: 'before_next_tree', label: text.beforeNextTree },
          { value: 'come_down', label: text.comeDown },
        ]}
        value={value}
        onChange={onChange}
      />
      {value === 'before_next_tree' && <p className="small">{proposals.beforeNextNote}</p>}
      {value === 'come_down' && (
        <Note tone="call" icon="warn">
          {proposals.comeDownNote}
        </Note>
      )}
    </>
  )
}
