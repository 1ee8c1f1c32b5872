'use client'

import { Suspense } from 'react'

import {
  myClaimLacks,
  openShiftOf,
  otherToAnswer,
  stopInForce,
  useNow,
  useRowcall,
  useSelect,
  type View,
} from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { Banner, Banners } from '../layout/Banner'
import { useLater } from '../layout/use-later'
import { useStartWords } from '../layout/Words'
import { Button } from '../ui/Button'

/** Comes with the first tree that is left to one. */
const loadAlone = async () => (await import('./AloneBanner')).AloneBanner
/** Comes with the first call for help. */
const loadCalls = async () => (await import('../call/CallBanners')).CallBanners

/** From here on a phone says by itself that it may not know of a stop. */
const minutesUntilOutOfTouch = 15

/** What everybody on a shift must know, on whatever screen they are: the gravest first. */
export function DayBanners({ hideStop, hideMyCalls }: { hideStop: boolean; hideMyCalls: boolean }) {
  const { stop, ready, errors } = useStartWords()
  const isStopped = useSelect((view) => stopInForce(view) !== null)
  const hasCalls = useSelect((view) => Object.keys(view.state?.calls ?? {}).length > 0)
  const lack = useSelect(myClaimLacks)
  const changed = useSelect(changedBriefing)
  const minutes = useMinutesOutOfTouch()
  const reloadWanted = useSelect((view) => view.reloadWanted)

  const CallBanners = useLater(hasCalls, loadCalls)
  const AloneBanner = useLater(lack !== null, loadAlone)
  return (
    <Banners>
      {isStopped && !hideStop && <StopBanner />}
      {lack && AloneBanner && (
        <Suspense fallback={null}>
          <AloneBanner lack={lack} />
        </Suspense>
      )}
      {CallBanners && (
        // Its words come with the words of the day, which a first screen has not fetched.
        <Suspense fallback={null}>
          <CallBanners hideMine={hideMyCalls} />
        </Suspense>
      )}
      {changed !== null && (
        <Banner
          tone="call"
          icon="warn"
          action={<Way href={routes.briefing()}>{stop.bannerSee}</Way>}
        >
          {changed === 'come_down' ? ready.comeDown : ready.briefingAgain}
        </Banner>
      )}
      {minutes !== null && minutes >= minutesUntilOutOfTouch && (
        <Banner tone="ink" icon="nobars">
          {stop.outOfTouch(minutes)}
        </Banner>
      )}
      {reloadWanted && (
        <Banner action={<Button onPress={() => location.reload()}>{errors.loadNewVersion}</Button>}>
          {errors.newVersion}
        </Banner>
      )}
    </Banners>
  )
}

/** On a device of several people it is handed to whoever has not answered. */
function StopBanner() {
  const { stop } = useStartWords()
  const { choose } = useRowcall()
  const other = useSelect(otherToAnswer)
  const action = other ? (
    <Button onPress={() => choose(other.orchardId, other.personId)}>{stop.bannerAnswer}</Button>
  ) : (
    <Way href={routes.stopWork()}>{stop.bannerSee}</Way>
  )
  return (
    <Banner tone="stop" icon="stop" action={action}>
      {other ? stop.bannerOther(other.personName) : stop.bannerStopped}
    </Banner>
  )
}

function Way({ href, children }: { href: string; children: string }) {
  return (
    <a className="btn" href={href}>
      {children}
    </a>
  )
}

/** A newer briefing than the one that I signed today. */
function changedBriefing(view: View): 'come_down' | 'before_next_tree' | null {
  const shift = openShiftOf(view)
  const signed = view.me && view.state?.briefed[view.me.personId]?.signedVersion
  if (!shift || !signed || signed >= shift.briefingVersion) return null
  return signed < shift.comeDownVersion ? 'come_down' : 'before_next_tree'
}

function useMinutesOutOfTouch(): number | null {
  const since = useSelect((view) => view.outOfTouchSince)
  const now = useNow()
  return since === null || now === null
    ? null
    : Math.floor((now.getTime() - Date.parse(since)) / 60_000)
}
