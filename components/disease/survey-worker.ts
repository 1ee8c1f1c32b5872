/** Beside the page: ten thousand trees would hold it up for a fifth of a second. */

import { type SurveyAsked, survey } from '@/lib/domain/disease/survey'

self.onmessage = ({ data }: MessageEvent<SurveyAsked>) => self.postMessage(survey(data))
