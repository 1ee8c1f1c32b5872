/** When this device makes a sound: once for each of these, so that nothing rings twice for the same reason. */

import {
  ageMs,
  askEverybodyAfterMs,
  callsToMe,
  comeDownToSign,
  isGrave,
  keepOutToLeave,
  lightCall,
  openShiftOf,
  stopToAnswer,
  toLeaveNow,
  type View,
} from '@/lib/hooks'
import type { Tone } from './sound'

export type Ring = { key: string; tone: Tone }

/**
 * A stop that wants my answer; a keep-out that I am in; weather that I come out of; light that goes; a briefing for which I come down; a call that nobody has
 * answered: again when a minute has passed, and where it
 * is grave each further minute.
 */
export function ringsOf(view: View, now: Date): Ring[] {
  const stop = stopToAnswer(view)
  const keepOut = keepOutToLeave(view)
  const leaving = toLeaveNow(view)
  const down = comeDownToSign(view)
  const light = lightCall(view, now)
  const calls = callsToMe(view, now).filter(({ answeredBy }) => answeredBy === null)
  return [
    ...(stop?.answer === 'stopped' ? [{ key: `stop|${stop.stop.id}`, tone: 'stop' as const }] : []),
    ...(keepOut ? [{ key: `keep-out|${keepOut.id}`, tone: 'stop' as const }] : []),
    ...(leaving
      ? [{ key: `leave|${leaving.claim}|${leaving.toldAt}`, tone: 'stop' as const }]
      : []),
    ...(light ? [{ key: `light|${light}|${openShiftOf(view)?.id}`, tone: 'call' as const }] : []),
    ...(down ? [{ key: `come down|${down.shiftId}|${down.version}`, tone: 'call' as const }] : []),
    ...calls.map((call) => {
      const minutes = Math.floor(ageMs(call, now) / askEverybodyAfterMs)
      const times = isGrave(call.kind) ? minutes : Math.min(minutes, 1)
      return { key: `call|${call.id}|${times}`, tone: 'call' as const }
    }),
  ]
}
