/** The live channel of an orchard: opened anew when it is lost, silent or has another topic. */

import { waitMs } from './backoff'
import { silenceMs } from './limits'
import type { Clock, Live, Random, Server } from './ports'
import { timerOf } from './timer'

export type ChannelParts = {
  server: Server
  clock: Clock
  random: Random
  heard: (event: Live) => void
  /** Joined, lost or silent: something may have been missed. */
  ask: () => void
  /** Only in a shift does silence matter. */
  isShift: () => boolean
}

export type Channel = { tune: (topic: string) => void; close: () => void }

export function openChannel({ server, clock, random, heard, ask, isShift }: ChannelParts): Channel {
  const rejoin = timerOf(clock)
  const silence = timerOf(clock)
  let hangUp = () => {}
  let tries = 0
  let silences = 0

  return {
    tune,
    close: () => {
      hangUp()
      rejoin.off()
      silence.off()
    },
  }

  function tune(topic: string): void {
    hangUp()
    rejoin.off()
    let isCurrent = true
    const stop = server.listen(topic, {
      heard: (event) => {
        if (!isCurrent) return
        framed(topic)
        heard(event)
      },
      frame: () => {
        if (isCurrent) framed(topic)
      },
      joined: () => {
        if (!isCurrent) return
        tries = 0
        framed(topic)
        ask()
      },
      lost: () => {
        if (!isCurrent) return
        isCurrent = false
        rejoin.in(waitMs(tries++, random.share()), () => {
          tune(topic)
          // The topic itself may be over.
          ask()
        })
      },
    })
    hangUp = () => {
      isCurrent = false
      stop()
    }
    silence.in(silenceMs, () => silent(topic))
  }

  function framed(topic: string): void {
    silences = 0
    silence.in(silenceMs, () => silent(topic))
  }

  function silent(topic: string): void {
    silence.in(silenceMs, () => silent(topic))
    if (!isShift()) return
    ask()
    // A socket can go silent without a close; a second silence is no accident.
    if (++silences < 2) return
    silences = 0
    tune(topic)
  }
}
