'use client'

import { usePathname } from 'next/navigation'
import { useEffect, useState } from 'react'

import { routes } from '@/lib/routes'
import { useDoorWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { JoinFrame } from './JoinFrame'
import { LanguageFirst } from './LanguageFirst'
import { keepScannedTree } from './scanned-tree'

/** Nobody is in on this device: what this is, and how one gets in. */
export function Welcome() {
  const { join } = useDoorWords()
  const path = usePathname()
  const [isScanned, setIsScanned] = useState(false)
  useEffect(() => setIsScanned(keepScannedTree(path, Date.now()) !== null), [path])
  return (
    <JoinFrame
      bench={
        <ButtonLink kind="call" href={routes.join()}>
          {join.title}
        </ButtonLink>
      }
    >
      <h1>{join.welcome}</h1>
      <p>{join.welcomeWhy}</p>
      {isScanned && <Note icon="camera">{join.treeWaits}</Note>}
      <LanguageFirst />
    </JoinFrame>
  )
}
