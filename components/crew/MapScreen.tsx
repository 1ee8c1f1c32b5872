'use client'

import './map-tools.css'

import { useCallback, useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { CrewColumn } from './CrewColumn'
import { DealBar } from './DealBar'
import { DealtNote } from './DealtNote'
import { LeadScreen } from './LeadScreen'
import { type MapShow, MapWork } from './MapWork'
import { TreePanel } from './TreePanel'
import { useDealing } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { useMapFilter } from './use-map-filter'

type MapScreenProps = {
  /** The tree that is open when the screen comes up. */
  tree: number | null
}

/** The live map: who is where, one tree in detail, and dealing trees. */
export function MapScreen({ tree }: MapScreenProps) {
  const { leadMap } = useLeadWords()
  const [open, setOpen] = useState<number | null>(tree)
  const [show, setShow] = useState<MapShow>('map')
  const [lookAt, setLookAt] = useState<{ tree: number } | null>(null)
  const filter = useMapFilter()
  const dealing = useDealing(filter.dimmed)
  const hasTree = useSelect((view) => open !== null && view.ground.trees.has(open))
  const close = useCallback(() => setOpen(null), [])
  const find = (no: number) => {
    setOpen(no)
    setLookAt({ tree: no })
  }

  return (
    <LeadScreen
      here="map"
      fill
      sideLabel={hasTree ? leadMap.tree : leadMap.crew}
      side={
        hasTree && open !== null ? (
          <TreePanel key={open} no={open} dealing={dealing} onClose={close} />
        ) : (
          <CrewColumn onTree={setOpen} />
        )
      }
      deal={
        dealing.isPicking ? (
          <DealBar dealing={dealing} />
        ) : (
          dealing.dealt && <DealtNote dealt={dealing.dealt} />
        )
      }
    >
      <MapWork
        show={show}
        onShow={setShow}
        dealing={dealing}
        filter={filter}
        open={open}
        lookAt={lookAt}
        onFind={find}
        onTree={(no) => (dealing.isPicking ? dealing.pickTree(no) : setOpen(no))}
      />
    </LeadScreen>
  )
}
