'use client'

import {
  openShiftOf,
  stillInTheDark,
  stillToLeave,
  stopInForce,
  useNow,
  useSelect,
} from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { SilentBanner } from '../alarm/SilentBanner'
import { useSound } from '../alarm/use-sound'
import { Banner, Banners } from '../layout/Banner'
import { stillUp } from '../shift/briefed'
import { StillUpBanner } from '../shift/StillUpBanner'
import { ButtonLink } from '../ui/ButtonLink'
import { InTheDarkBanner } from '../weather/InTheDarkBanner'
import { StillInBanner } from '../weather/StillInBanner'
import { NotFoundBanner } from './NotFoundBanner'
import { useLeadWords } from './use-lead-words'

/** A stop in force, a lost signal and a silent device, above whatever a lead is doing. */
export function LeadBanners({ hideStop }: { hideStop: boolean }) {
  const { leadMap } = useLeadWords()
  const isStopped = useSelect((view) => stopInForce(view) !== null) && !hideStop
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  const hasShift = useSelect((view) => openShiftOf(view) !== null)
  const isSilent = useSound() !== 'on' && hasShift
  const isUp = useSelect((view) => stillUp(view).length > 0)
  const isMissing = useSelect((view) => Object.keys(view.state?.notFound ?? {}).length > 0)
  const isIn = useSelect((view) => stillToLeave(view).length > 0)
  const now = useNow()
  const isDark = useSelect((view) => now !== null && stillInTheDark(view, now).length > 0)
  if (!isIn && !isMissing && !isStopped && !isOffline && !isSilent && !isUp && !isDark) return null
  return (
    <Banners>
      {isStopped && (
        <Banner
          tone="stop"
          icon="stop"
          action={<ButtonLink href={routes.headCount()}>{leadMap.toTheStop}</ButtonLink>}
        >
          {leadMap.stopInForce}
        </Banner>
      )}
      <NotFoundBanner />
      <StillInBanner />
      <InTheDarkBanner />
      <StillUpBanner />
      {isOffline && (
        <Banner tone="ink" icon="nobars">
          {leadMap.noSignal}
        </Banner>
      )}
      {isSilent && <SilentBanner />}
    </Banners>
  )
}
