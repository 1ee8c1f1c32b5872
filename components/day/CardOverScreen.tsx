'use client'

import { useState } from 'react'

import { useStartWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { EmergencyCard } from './EmergencyCard'

/** The emergency card on what lies over the whole screen, and hides the way to it. */
export function CardOverScreen() {
  const { stop } = useStartWords()
  const [isOpen, setIsOpen] = useState(false)
  return (
    <>
      <Button icon="aid" expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
        {stop.emergency}
      </Button>
      {isOpen && <EmergencyCard />}
    </>
  )
}
