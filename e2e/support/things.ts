/** What the small orchard has. Names are nobody's and no word of either language. */

import { morningLongitude } from './morning'

export const orchardName = 'Quillerbeck'
export const blockName = 'Varnholt'

export const emergencyCard = {
  where: 'Quillerbeck, Varnholt 3',
  access: 'Varnholt 3',
  call: '112',
  first_aid: 'Varnholt 3',
  meeting_point: 'Varnholt 3',
}

/** Where tree 1 stands; the sun is up there. */
export const corner = { lat: 48, lon: morningLongitude(Date.now()) + 0.4 }

const rows = 3
const places = 12

/**
 * Trees 1 to 36 in three rows: A 1·1 is tree 1, A 2·1 is tree 13. All are apples low enough for feet on the
 * ground, but for a cherry at A 1·4 and a tall pear at A 3·12. A 3·1 bears in the middle of its shoots, A 3·2 at
 * their tips.
 */
export const inventory = {
  p_blocks: [
    {
      code: 'A',
      name: blockName,
      rowSpacingM: 6,
      treeSpacingM: 5,
      bearingDeg: 10,
      firstLatE7: corner.lat * 1e7,
      firstLonE7: Math.round(corner.lon * 1e7),
    },
  ],
  p_cultivars: [
    { species: 'apple', name: 'Ordwin', habit: 'spur' },
    { species: 'apple', name: 'Jorquen', habit: 'both', buds: 'middle' },
    { species: 'apple', name: 'Fernoth', habit: 'shoot', buds: 'tip' },
    { species: 'cherry', name: 'Tamsel' },
    { species: 'pear', name: 'Wessam' },
  ],
  p_trees: Array.from({ length: rows * places }, (_, index) => {
    const row = 1 + Math.floor(index / places)
    const place = 1 + (index % places)
    return { block: 'A', row, place, planted: 2010, trunkMm: 140, ...kindAt(row, place) }
  }),
}

function kindAt(row: number, place: number) {
  if (row === 1 && place === 4) return { species: 'cherry', cultivar: 'Tamsel', heightCm: 230 }
  if (row === 3 && place === 12) return { species: 'pear', cultivar: 'Wessam', heightCm: 420 }
  const apple = { species: 'apple', heightCm: 220 }
  if (row === 3 && place === 1) return { ...apple, cultivar: 'Jorquen' }
  if (row === 3 && place === 2) return { ...apple, cultivar: 'Fernoth' }
  return { ...apple, cultivar: 'Ordwin' }
}
