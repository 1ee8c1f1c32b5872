/** Which kinds of tree a sign is a sign of, where a source names them. Signs are those of a flag. */

import type { Species } from '../orchard/types'

type Hosts = {
  disease: string
  signs: readonly string[]
  species: readonly Species[]
  source: string
}

export const knownHosts: readonly Hosts[] = [
  {
    disease: 'eutypa_dieback',
    signs: ['canker', 'gum', 'dead_twigs'],
    species: ['apricot', 'cherry', 'sour_cherry'],
    source: 'UC IPM, Pest Management Guidelines, Apricot and Cherry: Eutypa dieback',
  },
  {
    disease: 'bacterial_canker',
    signs: ['canker', 'gum'],
    species: ['apricot', 'cherry', 'sour_cherry', 'plum', 'european_plum', 'japanese_plum'],
    source: 'UC IPM, Bacterial canker and blast; WSU Tree Fruit, sweet cherry',
  },
  {
    disease: 'fire_blight',
    signs: ['canker', 'dead_twigs'],
    species: ['apple', 'pear', 'quince'],
    source: 'PNW Plant Disease Management Handbook, Quince: fire blight',
  },
]

/** A sick tree of one kind and a tree of another share a disease with this sign, by a source. */
export function shareDisease(sign: string, sick: Species, other: Species): boolean {
  return knownHosts.some(
    ({ signs, species }) =>
      signs.includes(sign) && species.includes(sick) && species.includes(other)
  )
}
