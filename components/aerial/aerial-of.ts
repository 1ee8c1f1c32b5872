/** From what the referee keeps to what the map draws. */

import type { Aerial } from '../map/map-props'

type Kept = { points: readonly (readonly [number, number, number, number])[]; opacity: number }

export function aerialOf({ points, opacity }: Kept, image: ImageBitmap): Aerial | null {
  const [first, second, third] = points.map(([x, y, lat, lon]) => ({
    x: (x / 10_000) * image.width,
    y: (y / 10_000) * image.height,
    position: { lat: lat / 1e7, lon: lon / 1e7 },
  }))
  return first && second && third
    ? { image, points: [first, second, third], opacity: opacity / 100 }
    : null
}
