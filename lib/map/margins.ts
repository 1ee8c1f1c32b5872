/** What lies round the screen: four strips that together with it make the whole box. */

import type { Box } from './grid-index'

export function marginsOf(box: Box, screen: Box): Box[] {
  return [
    { ...box, maxY: screen.minY },
    { ...box, minY: screen.maxY },
    { ...screen, minX: box.minX, maxX: screen.minX },
    { ...screen, minX: screen.maxX, maxX: box.maxX },
  ]
}
