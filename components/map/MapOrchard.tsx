'use client'

import type L from 'leaflet'
import { useEffect, useEffectEvent, useMemo, useRef } from 'react'
import { useMap } from 'react-leaflet'

import type { Tree } from '@/lib/domain/orchard/types'
import { OrchardLayer } from '@/lib/map/orchard-layer'
import type { Scene } from '@/lib/map/scene'
import { begin, comeInto } from '@/lib/map/where-to-look'

import { listenToKeys } from './listen-to-keys'
import { listenToPage } from './listen-to-page'
import type { MapProps } from './map-props'

const nobody: ReadonlySet<number> = new Set()

type MapOrchardProps = Omit<MapProps, 'trees' | 'blocks' | 'upDeg'> & { scene: Scene }

/** Hands the orchard to the layer and brings back what was tapped. Draws nothing itself. */
export function MapOrchard({
  scene,
  looks,
  selected = nobody,
  called = null,
  words,
  onTap,
  onTapRow,
}: MapOrchardProps) {
  const map = useMap()
  const spoken = useRef<HTMLParagraphElement>(null)
  const layer = useMemo(
    () => new OrchardLayer(scene, words.notSurveyed),
    [scene, words.notSurveyed]
  )

  useEffect(() => begin(map, scene, called), [map, scene, called])
  useEffect(() => {
    layer.addTo(map)
    return () => {
      layer.remove()
    }
  }, [map, layer])
  useEffect(() => layer.setLooks(looks), [layer, looks])
  useEffect(() => layer.setHighlights({ selected, called }), [layer, selected, called])
  useEffect(() => listenToPage(map, () => layer.readPalette()), [map, layer])

  const tap = useEffectEvent((point: L.Point) => {
    const tapped = layer.tappedAt(point)
    if (tapped.kind === 'tree') onTap(tapped.tree)
    if (tapped.kind === 'row') onTapRow?.(tapped.block, tapped.row)
  })
  useEffect(() => {
    const onClick = ({ containerPoint }: L.LeafletMouseEvent) => tap(containerPoint)
    map.on('click', onClick)
    return () => {
      map.off('click', onClick)
    }
  }, [map])

  const focus = useEffectEvent((tree: Tree | null) => {
    layer.setFocused(tree?.no ?? null)
    if (!tree) return
    comeInto(map, scene, tree.no)
    if (spoken.current) spoken.current.textContent = words.tree(tree, looks.get(tree.no))
  })
  const choose = useEffectEvent((tree: Tree) => onTap(tree))
  useEffect(
    () => listenToKeys(map.getContainer(), { scene, startAt: called, focus, choose }),
    [map, scene, called]
  )
  useEffect(() => {
    map.getContainer().setAttribute('aria-label', words.label)
  }, [map, words.label])

  return <p ref={spoken} className="sr" role="status" />
}
