'use client'

import { type ReactNode, useState } from 'react'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { Step, Steps } from '../ui/Steps'
import { CheckProtection } from './CheckProtection'
import { ReadConsent } from './ReadConsent'
import { lacksOf } from './readiness'
import { SignFor } from './SignFor'
import { useLeadWords } from './use-lead-words'

type Open = 'consent' | 'sign' | 'protection' | null

/** What somebody needs before they start, and doing each for them. */
export function PersonPapers({ id, name }: { id: string; name: string }) {
  const { common, tools } = useWords()
  const { people: text, shift } = useLeadWords()
  const format = useFormat()
  const [open, setOpen] = useState<Open>(null)
  const lacks = useSelect((view) => lacksOf(view, id))
  const version = useSelect((view) => openShiftOf(view)?.briefingVersion ?? null)
  const failed = useSelect((view) => view.state?.failedEquipment[id] ?? [])
  const close = () => setOpen(null)
  const equipment: Record<string, { name: string }> = tools.equipment

  const step = (lack: string, title: string, way: ReactNode) => (
    <Step state={lacks.includes(lack) ? 'later' : 'done'} title={title} doneWord={common.doneStep}>
      {lacks.includes(lack) && way}
    </Step>
  )

  if (version === null) return null
  return (
    <Panel title={text.papers}>
      <Steps>
        {step(
          'consent_missing',
          text.consentGiven,
          <Button onPress={() => setOpen('consent')}>{text.consentButton}</Button>
        )}
        {step(
          'briefing_not_given',
          text.briefed,
          <ButtonLink href={routes.giveBriefing()}>{text.briefButton}</ButtonLink>
        )}
        {step(
          'briefing_not_signed',
          text.signed,
          <Button onPress={() => setOpen('sign')}>{shift.signForShort}</Button>
        )}
        {step(
          'equipment_not_checked',
          text.protection,
          <>
            {failed.length > 0 && (
              <p className="small">
                {text.faulty(format.list(failed.map((code) => equipment[code]?.name ?? code)))}
              </p>
            )}
            <Button onPress={() => setOpen('protection')}>{text.protectionButton}</Button>
          </>
        )}
      </Steps>
      <ReadConsent open={open === 'consent'} id={id} name={name} onClose={close} />
      <SignFor open={open === 'sign'} id={id} name={name} version={version} onClose={close} />
      <CheckProtection open={open === 'protection'} id={id} name={name} onClose={close} />
    </Panel>
  )
}
