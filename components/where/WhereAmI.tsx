'use client'

import './where.css'

import { useMemo } from 'react'

import { placesOf } from '@/lib/domain/orchard/around'
import { type Fix, whereIs } from '@/lib/domain/orchard/where'
import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { NearTrees } from './NearTrees'
import type { Location } from './use-location'

type WhereAmIProps = {
  location: Location
  /** Where no map beside it shows the same. */
  hasPlan?: boolean
  onAgain: () => void
  onTree: (tree: number) => void
}

/** So many are near enough to be worth a line. */
const shown = 4

/** What this device knows of where it is: a tree, several, or why it cannot say. */
export function WhereAmI({ location, hasPlan = false, onAgain, onTree }: WhereAmIProps) {
  const { where } = useWords()
  switch (location.state) {
    case 'off':
      return null
    case 'looking':
      return <p role="status">{where.looking}</p>
    case 'found':
      return (
        <>
          <AmongTrees fix={location.fix} hasPlan={hasPlan} onTree={onTree} />
          <p className="small">{where.stays}</p>
        </>
      )
    case 'insecure':
      return <Note role="status">{where.insecure}</Note>
    case 'no_way':
      return <Note role="status">{where.noWay}</Note>
    case 'denied':
      return (
        <>
          <Note role="status" lead={where.denied}>
            {where.deniedDo}
          </Note>
          <Button onPress={onAgain}>{where.again}</Button>
        </>
      )
    case 'lost':
      return (
        <>
          <Note role="status">{where.lost}</Note>
          <Button onPress={onAgain}>{where.again}</Button>
        </>
      )
  }
}

type AmongTreesProps = { fix: Fix; hasPlan: boolean; onTree: (tree: number) => void }

function AmongTrees({ fix, hasPlan, onTree }: AmongTreesProps) {
  const ground = useSelect((view) => view.ground)
  const places = useMemo(
    () => placesOf([...ground.trees.values()], [...ground.blocks.values()]),
    [ground]
  )
  const where = useMemo(
    () => whereIs(fix, ground.trees.values(), places, shown),
    [fix, ground, places]
  )
  return <NearTrees {...{ where, fix, places, hasPlan, onTree }} />
}
