'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { BackToWork } from '../layout/BackToWork'
import { CrewScreen } from '../layout/CrewScreen'
import { useLater } from '../layout/use-later'
import { useStartWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { EmergencyCard } from './EmergencyCard'

// A volunteer's phone never loads what only a manager writes.
const loadWriting = async () => (await import('./WriteEmergencyCard')).WriteEmergencyCard

/** The emergency card, one tap from everywhere and there without signal. */
export function EmergencyScreen() {
  const { help } = useStartWords()
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const WriteEmergencyCard = useLater(isManager, loadWriting)
  return (
    <CrewScreen step={<BackToWork />}>
      <h1>{help.emergencyTitle}</h1>
      <EmergencyCard />
      <ButtonLink icon="call" href={routes.callLead('injury')}>
        {help.callLeadToo}
      </ButtonLink>
      {WriteEmergencyCard && <WriteEmergencyCard />}
      <Note icon="kept">{help.keptHere}</Note>
    </CrewScreen>
  )
}
