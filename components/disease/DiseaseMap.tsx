'use client'

import { useMemo } from 'react'

import type { Look } from '@/lib/domain/orchard/status'
import type { Tree } from '@/lib/domain/orchard/types'
import { looksOf, useSelect } from '@/lib/hooks'
import { NoTrees } from '../crew/NoTrees'
import type { DealingNow } from '../crew/use-dealing'
import { useLeadWords } from '../crew/use-lead-words'
import { useMapWords } from '../crew/use-map-words'
import type { DiseaseShown } from '../map/map-props'
import { OrchardMap } from '../map/OrchardMap'
import { DiseaseLegend } from './DiseaseLegend'
import { othersThan, sickFirst } from './disease-shown'

type DiseaseMapProps = {
  shown: DiseaseShown
  dealing: DealingNow
  onTree: (tree: number) => void
}

/** The sick trees, the ring to look over, and everything else faint. */
export function DiseaseMap({ shown, dealing, onTree }: DiseaseMapProps) {
  const { disease } = useLeadWords()
  const sheet = useSelect((view) => view.sheet)
  const looks = useSelect(looksOf)
  const sick = useMemo(() => sickFirst(looks, shown), [looks, shown])
  const dimmed = useMemo(() => othersThan(shown, sheet?.trees ?? []), [shown, sheet])
  const mapWords = useMapWords(dealing.picked)
  const words = useMemo(() => {
    const isOf = (no: number) =>
      shown.confirmed.has(no)
        ? [disease.isConfirmed]
        : shown.suspected.has(no)
          ? [disease.isSuspected]
          : shown.toScout.has(no)
            ? [disease.isToScout]
            : []
    return {
      ...mapWords,
      label: disease.mapLabel,
      tree: (tree: Tree, look: Look | undefined) =>
        [mapWords.tree(tree, look), ...isOf(tree.no)].join(', '),
    }
  }, [mapWords, disease, shown])
  if (!sheet || sheet.trees.length === 0) return <NoTrees />
  return (
    <div className="disease-map">
      <OrchardMap
        trees={sheet.trees}
        blocks={sheet.blocks}
        looks={sick}
        selected={dealing.picked}
        dimmed={dimmed}
        disease={shown}
        words={words}
        onTap={({ no }) => (dealing.isPicking ? dealing.pickTree(no) : onTree(no))}
      />
      <DiseaseLegend />
    </div>
  )
}
