/** Beside the page: a hundred thousand trees would hold up whoever drags a corner. */

import { type LayoutPlan, layOut } from '@/lib/domain/orchard/layout'

self.onmessage = ({ data }: MessageEvent<LayoutPlan>) => self.postMessage(layOut(data))
