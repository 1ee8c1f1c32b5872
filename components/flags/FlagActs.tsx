'use client'

import { type ReactNode, useState } from 'react'

import { type OpenFlag, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { ClearFlag } from './ClearFlag'
import { ConfirmFlag } from './ConfirmFlag'
import { KeepOutOf } from './KeepOutOf'
import { WithdrawFlag } from './WithdrawFlag'
import { WriteOnFlag } from './WriteOnFlag'

type FlagActsProps = { flag: OpenFlag; tag: string; isNext: boolean }
type Act = 'confirm' | 'withdraw' | 'write' | 'keepOut' | 'clear'

/** What a lead can do about a flag; clearing a hazard is the manager's. */
export function FlagActs({ flag, tag, isNext }: FlagActsProps) {
  const { flags: text } = useLeadWords()
  const [open, setOpen] = useState<Act | null>(null)
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const form = { flag, tag, onClose: () => setOpen(null) }
  const act = (which: Act, words: string, kind: 'plain' | 'call' = 'plain'): ReactNode => (
    <Button kind={kind} label={`${words}: ${tag}`} onPress={() => setOpen(which)}>
      {words}
    </Button>
  )
  const first = isNext ? 'call' : 'plain'
  const isNew = flag.state === 'suspected'
  return (
    <>
      <div className="flag-acts">
        {flag.kind === 'disease' ? (
          <>
            {act('confirm', isNew ? text.confirm : text.correct, isNew ? first : 'plain')}
            {act('withdraw', text.withdraw)}
          </>
        ) : (
          <>
            <ButtonLink
              kind={first}
              href={routes.referral(flag.id)}
              label={`${text.refer}: ${tag}`}
            >
              {text.refer}
            </ButtonLink>
            {act('keepOut', text.changeKeepOut)}
            {isManager && act('clear', text.clear)}
          </>
        )}
        {act('write', text.write)}
        <ButtonLink icon="map" href={routes.map(flag.tree)} label={text.onMapOf(tag)}>
          {text.onMap}
        </ButtonLink>
      </div>
      {flag.kind === 'arborist' && !isManager && <p className="small">{text.clearWho}</p>}
      {open === 'confirm' && <ConfirmFlag {...form} />}
      {open === 'withdraw' && <WithdrawFlag {...form} />}
      {open === 'write' && <WriteOnFlag {...form} />}
      {open === 'keepOut' && <KeepOutOf {...form} isManager={isManager} />}
      {open === 'clear' && <ClearFlag {...form} />}
    </>
  )
}
