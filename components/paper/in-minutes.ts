import { degreesAndMinutes } from '@/lib/domain/orchard/degrees'
import type { Position } from '@/lib/domain/orchard/types'
import type { Compass } from '../day/where-we-are'

/** "38° 7.404′ north, 1° 21.555′ west" */
export function inMinutes({ lat, lon }: Position, compass: Compass): string {
  const said = (value: number, side: string) => {
    const { degrees, minutes } = degreesAndMinutes(value)
    return `${degrees}° ${minutes}′ ${side}`
  }
  return [
    said(lat, lat < 0 ? compass.south : compass.north),
    said(lon, lon < 0 ? compass.west : compass.east),
  ].join(', ')
}
