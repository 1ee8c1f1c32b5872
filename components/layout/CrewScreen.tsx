'use client'

import type { ReactNode } from 'react'

import { isLeadView, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { DayBanners } from '../day/DayBanners'
import { UnsentBadge } from '../sync/UnsentBadge'
import { Icon } from '../ui/Icon'
import { Bench } from './Bench'
import { PhoneFrame } from './PhoneFrame'
import { Strip } from './Strip'
import { useFormat } from './use-format'
import { useTitle } from './use-title'
import { useDoorWords } from './Words'

type CrewScreenProps = {
  /** Stands for the orchard and the day: the tag of the tree in hand. */
  who?: ReactNode
  /** Stands for the signal: minutes, or a way to close. */
  end?: ReactNode
  banners?: ReactNode
  /** The reason above the next step. */
  why?: ReactNode
  side?: ReactNode
  /** The next step, in apricot. */
  step?: ReactNode
  /** The tree that the flag in the strip is about. */
  tree?: number | undefined
  /** The screen itself says that work is stopped. */
  isAboutStop?: boolean
  /** The screen itself says what became of my call. */
  isAboutCall?: boolean
  children: ReactNode
}

/** A phone screen of somebody in the crew: signal at the top, the next step and the strip below. */
export function CrewScreen({
  who,
  end,
  banners,
  why,
  side,
  step,
  tree,
  isAboutStop = false,
  isAboutCall = false,
  children,
}: CrewScreenProps) {
  const words = useDoorWords()
  useTitle()
  return (
    <PhoneFrame
      who={who ?? <OrchardAndDay />}
      hideLogo={who !== undefined}
      net={
        <>
          <ToMap />
          {end ?? <Signal />}
        </>
      }
      banners={
        <>
          <DayBanners hideStop={isAboutStop} hideMyCalls={isAboutCall} />
          {banners}
        </>
      }
      bench={
        <Bench
          why={why}
          side={side}
          step={step}
          strip={
            <Strip
              text={words.common.strip}
              ways={{
                emergency: { href: routes.emergency() },
                callLead: { href: routes.callLead() },
                flag: { href: tree === undefined ? routes.flag() : routes.flagTree(tree) },
                stopWork: { href: routes.stopWork() },
              }}
            />
          }
        />
      }
    >
      {children}
    </PhoneFrame>
  )
}

/** A lead among the trees gets back to the whole crew in one press. */
function ToMap() {
  const words = useDoorWords()
  const isLead = useSelect(isLeadView)
  if (!isLead) return null
  return (
    <a className="to-map" href={routes.map()}>
      <Icon name="map" size={18} />
      {words.common.toMap}
    </a>
  )
}

/** The signal and what waits for it; a press opens the list of it. */
export function Signal() {
  const words = useDoorWords()
  const unsent = useSelect((view) => view.unsent.length)
  const needYou = useSelect((view) => view.refused.length)
  const online = useSelect((view) => view.signal !== 'no_signal')
  return (
    <UnsentBadge
      unsent={unsent}
      needYou={needYou}
      online={online}
      href={routes.unsent()}
      text={words.common.net}
    />
  )
}

/** "Quillet Hill · Saturday", "Ann · Saturday" where several use it: the way to this device, and to going home. */
function OrchardAndDay() {
  const words = useDoorWords()
  const format = useFormat()
  const orchard = useSelect((view) => view.me?.orchardName ?? null)
  const holder = useHolder()
  const startsAt = useSelect(
    (view) =>
      Object.values(view.state?.shifts ?? {}).find((shift) => shift.state === 'open')?.startsAt ??
      null
  )
  if (orchard === null) return words.common.appName
  const name = holder ?? orchard
  return (
    <a className="device" href={routes.device()} aria-describedby="to-device">
      {startsAt === null ? name : `${name} · ${format.day(new Date(startsAt))}`}
      <Icon name="down" size={14} />
      <span id="to-device" hidden>
        {words.common.toDevice}
      </span>
    </a>
  )
}

/** On a device of several people whoever holds it now, so that nobody works under the name of another. */
export function useHolder(): string | null {
  return useSelect(({ me, memberships }) => {
    const others = memberships.filter(({ orchardId }) => orchardId === me?.orchardId)
    return me && others.length > 1 ? me.personName : null
  })
}
