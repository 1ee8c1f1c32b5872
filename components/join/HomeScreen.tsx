'use client'

import { useEffect } from 'react'

import { useSelect } from '@/lib/hooks'
import { Fetching } from '../layout/Fetching'
import { useGo } from '../layout/use-go'
import { takeScannedTree } from './scanned-tree'
import { whereTo } from './where-to'

/** The way in: sends each person where they belong, by who they are and what the day is at. */
export function HomeScreen() {
  const go = useGo()
  const path = useSelect(whereTo)
  useEffect(() => go.replace(takeScannedTree(Date.now()) ?? path), [go, path])
  return <Fetching />
}
