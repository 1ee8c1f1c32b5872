/** The tree sheet: what rarely changes about trees, as columns of integers, and the rows that are in it. */

import type { Block, Cultivar, Tree } from '@/lib/domain/orchard/types'

export type Sheet = {
  version: number
  trees: readonly Tree[]
  blocks: readonly Block[]
  cultivars: readonly Cultivar[]
}
