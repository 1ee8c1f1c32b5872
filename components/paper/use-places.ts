'use client'

import { useMemo } from 'react'

import { type Places, placesOf } from '@/lib/domain/orchard/around'
import { useSelect } from '@/lib/hooks'

/** Where the trees of the orchard are on the earth, as far as anybody knows. */
export function usePlaces(): Places {
  const ground = useSelect((view) => view.ground)
  return useMemo(() => placesOf([...ground.trees.values()], [...ground.blocks.values()]), [ground])
}
