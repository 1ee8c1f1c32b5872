/**
 * Where trees lie on the flat map, computed once.
 *
 * Zoom-0 units of the web map's projection, as Leaflet counts them: one degree for all zooms,
 * scaled by 2^zoom when drawn. The plane can be turned round a centre so that a walk goes up
 * the screen; Leaflet then works with positions that are turned likewise, and never knows.
 */

import type { Position } from '@/lib/domain/orchard/types'

export type Point = { x: number; y: number }

export type Plane = {
  pointOf: (position: Position) => Point
  /** What Leaflet must be told so that it looks at this point. */
  leafletAt: (point: Point) => Position
  unitsPerM: number
}

/** `upDeg` is the compass bearing that points up; 0 is a map as everybody knows it. */
export function planeAround(centre: Position, upDeg = 0): Plane {
  const middle = project(centre)
  const sine = Math.sin((-upDeg * Math.PI) / 180)
  const cosine = Math.cos((-upDeg * Math.PI) / 180)
  return {
    pointOf: (position) => {
      const { x, y } = project(position)
      const east = x - middle.x
      const south = y - middle.y
      return {
        x: middle.x + east * cosine - south * sine,
        y: middle.y + east * sine + south * cosine,
      }
    },
    leafletAt: unproject,
    unitsPerM: worldUnits / (equatorM * Math.cos((centre.lat * Math.PI) / 180)),
  }
}

const worldUnits = 256
const equatorM = 2 * Math.PI * 6_378_137

function project({ lat, lon }: Position): Point {
  const sine = Math.sin((lat * Math.PI) / 180)
  return {
    x: worldUnits * (lon / 360 + 0.5),
    y: worldUnits * (0.5 - Math.log((1 + sine) / (1 - sine)) / (4 * Math.PI)),
  }
}

function unproject({ x, y }: Point): Position {
  const north = Math.PI * (1 - (2 * y) / worldUnits)
  return {
    lat: (Math.atan(Math.sinh(north)) * 180) / Math.PI,
    lon: (x / worldUnits - 0.5) * 360,
  }
}
