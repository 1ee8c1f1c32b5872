'use client'

import { CrewScreen } from '../layout/CrewScreen'
import { useStartWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { EmergencyCard } from './EmergencyCard'

/** The emergency card, one tap from everywhere and there without signal. */
export function EmergencyScreen() {
  const { help } = useStartWords()
  return (
    <CrewScreen>
      <h1>{help.emergencyTitle}</h1>
      <EmergencyCard />
      <Note icon="kept">{help.keptHere}</Note>
    </CrewScreen>
  )
}
