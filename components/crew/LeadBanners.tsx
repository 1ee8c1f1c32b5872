'use client'

import { stopInForce, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { Banner, Banners } from '../layout/Banner'
import { ButtonLink } from '../ui/ButtonLink'
import { useLeadWords } from './use-lead-words'

/** A stop in force and a lost signal, above whatever a lead is doing. */
export function LeadBanners() {
  const { leadMap } = useLeadWords()
  const isStopped = useSelect((view) => stopInForce(view) !== null)
  const isOffline = useSelect((view) => view.signal === 'no_signal')
  if (!isStopped && !isOffline) return null
  return (
    <Banners>
      {isStopped && (
        <Banner
          tone="stop"
          icon="stop"
          action={<ButtonLink href={routes.stopWork()}>{leadMap.toTheStop}</ButtonLink>}
        >
          {leadMap.stopInForce}
        </Banner>
      )}
      {isOffline && (
        <Banner tone="ink" icon="nobars">
          {leadMap.noSignal}
        </Banner>
      )}
    </Banners>
  )
}
