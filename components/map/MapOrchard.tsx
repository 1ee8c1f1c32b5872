'use client'

import type L from 'leaflet'
import { useEffect, useEffectEvent, useMemo, useRef } from 'react'
import { useMap } from 'react-leaflet'

import type { Tree } from '@/lib/domain/orchard/types'
import { OrchardLayer } from '@/lib/map/orchard-layer'
import type { Scene } from '@/lib/map/scene'
import { treesWithin } from '@/lib/map/trees-within'
import { begin, comeInto, goTo, takeInHand, zoomAt } from '@/lib/map/where-to-look'

import { listenToDrawing } from './listen-to-drawing'
import { listenToKeys } from './listen-to-keys'
import { listenToPage } from './listen-to-page'
import type { Drawing, MapProps } from './map-props'

const none: ReadonlySet<number> = new Set()
const noCorners: Drawing['corners'] = []
const noKeepOuts: NonNullable<MapProps['keepOuts']> = []

type MapOrchardProps = Omit<MapProps, 'trees' | 'blocks' | 'upDeg'> & { scene: Scene }

/** Hands the orchard to the layer and brings back what was tapped. Draws nothing itself. */
export function MapOrchard({
  scene,
  looks,
  selected = none,
  dimmed = none,
  long = none,
  keepOuts = noKeepOuts,
  disease = null,
  called = null,
  me = null,
  aerial = null,
  tiles = null,
  hasGaps = false,
  drawing = null,
  lookAt = null,
  words,
  onTap,
  onTapRow,
}: MapOrchardProps) {
  const map = useMap()
  const spoken = useRef<HTMLParagraphElement>(null)
  const hasTiles = tiles !== null
  const layer = useMemo(
    () => new OrchardLayer(scene, words.notSurveyed, hasTiles),
    [scene, words.notSurveyed, hasTiles]
  )

  useEffect(() => begin(map, scene, called), [map, scene, called])
  useEffect(() => {
    layer.addTo(map)
    return () => {
      layer.remove()
    }
  }, [map, layer])
  useEffect(() => layer.setLooks(looks), [layer, looks])
  useEffect(
    () =>
      layer.setHighlights({
        selected,
        dimmed,
        long,
        keepOuts,
        disease,
        called,
        me,
        aerial,
        hasGaps,
      }),
    [layer, selected, dimmed, long, keepOuts, disease, called, me, aerial, hasGaps]
  )
  useEffect(() => {
    if (lookAt) goTo(map, scene, lookAt.tree)
  }, [map, scene, lookAt])
  useEffect(() => listenToPage(map, () => layer.readPalette()), [map, layer])

  const tap = useEffectEvent((point: L.Point) => {
    if (drawing) return
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

  const corners = drawing?.corners ?? noCorners
  useEffect(() => layer.setOutline(corners), [layer, corners])
  const draw = useEffectEvent((points: readonly L.Point[], isOver: boolean) => {
    const stroke = points.flatMap((point) => layer.planeAt(point) ?? [])
    takeInHand(map)
    layer.setOutline([...corners, ...stroke])
    if (!isOver || !drawing || stroke.length === 0) return
    drawing.onStroke(stroke, treesWithin(scene, [...corners, ...stroke]))
  })
  const isDrawing = drawing !== null
  useEffect(
    () => (isDrawing ? listenToDrawing(map, { onStroke: draw }) : undefined),
    [map, isDrawing]
  )

  const focus = useEffectEvent((tree: Tree | null) => {
    layer.setFocused(tree?.no ?? null)
    if (!tree) return
    comeInto(map, scene, tree.no)
    if (spoken.current) spoken.current.textContent = words.tree(tree, looks.get(tree.no))
  })
  const choose = useEffectEvent((tree: Tree) => onTap(tree))
  const zoom = useEffectEvent((by: 1 | -1, tree: Tree | null) =>
    zoomAt(map, scene, { by, tree: tree?.no ?? null })
  )
  useEffect(
    () => listenToKeys(map.getContainer(), { scene, startAt: called, focus, choose, zoom }),
    [map, scene, called]
  )
  useEffect(() => {
    map.getContainer().setAttribute('aria-label', words.label)
  }, [map, words.label])

  return <p ref={spoken} className="sr" role="status" />
}
