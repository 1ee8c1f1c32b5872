/** Beside the page: a phone takes a while for a million and a half pixels. */

import { opennessOf } from '@/lib/domain/pruning/openness'
import type { Pixels } from '@/lib/domain/pruning/pixels'

self.onmessage = ({ data }: MessageEvent<Pixels>) => self.postMessage(opennessOf(data))
