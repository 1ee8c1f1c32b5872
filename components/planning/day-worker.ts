/** Beside the page: the day is gone through some hundred times. */

import { type DayAsked, dayAhead } from '@/lib/domain/planning/day-ahead'

self.onmessage = ({ data }: MessageEvent<DayAsked>) => self.postMessage(dayAhead(data))
