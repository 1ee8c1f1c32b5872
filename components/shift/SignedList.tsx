'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { SignFor } from '../crew/SignFor'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Icon } from '../ui/Icon'
import { Panel } from '../ui/Panel'
import { briefedLines } from './briefed'

/** Who signed, and signing for somebody without a phone. */
export function SignedList({ version }: { version: number }) {
  const { shift: text } = useLeadWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const lines = useSelect(briefedLines)
  const [signing, setSigning] = useState<string | null>(null)
  if (lines.length === 0) return null

  const signed = lines.filter(({ signature }) => signature === 'signed').length
  const words = { signed: text.signedThis(version), older: text.signedOld, none: text.notSigned }
  return (
    <Panel title={text.signedCount(signed, lines.length)}>
      <ul className="list">
        {lines.map(({ id, signature, tree }) => (
          <li key={id} className="person-row">
            <span className="item grow">
              <Icon name={signature === 'signed' ? 'check' : 'clock'} />
              <span className="grow">
                <b>{nameOf(id)}</b>
                <span className="small">{words[signature]}</span>
                {tree !== null && signature !== 'signed' && (
                  <span className="small">{text.atTree(tagOf(tree))}</span>
                )}
              </span>
            </span>
            {signature !== 'signed' && (
              <Button label={text.signFor(nameOf(id))} onPress={() => setSigning(id)}>
                {text.signForShort}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {signing !== null && (
        <SignFor
          open
          id={signing}
          name={nameOf(signing)}
          version={version}
          onClose={() => setSigning(null)}
        />
      )}
    </Panel>
  )
}
