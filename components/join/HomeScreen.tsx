'use client'

import { useRouter } from 'next/navigation'
import { useEffect } from 'react'

import { useSelect } from '@/lib/hooks'
import { CrewGate } from '../layout/CrewGate'
import { Fetching } from '../layout/Fetching'
import { whereTo } from './where-to'

/** The way in: sends each person where they belong, by who they are and what the day is at. */
export function HomeScreen() {
  return (
    <CrewGate>
      <OnTheWay />
    </CrewGate>
  )
}

function OnTheWay() {
  const router = useRouter()
  const path = useSelect(whereTo)
  useEffect(() => router.replace(path), [router, path])
  return <Fetching />
}
