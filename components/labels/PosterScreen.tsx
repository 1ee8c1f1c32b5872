'use client'

import './poster.css'

import { use } from 'react'

import { useDraft, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { leadMessages } from '@/lib/text/messages'
import { useLeadWords } from '../crew/use-lead-words'
import { QrCode } from '../day/QrCode'
import { useOrigin } from '../layout/use-origin'
import { useTitle } from '../layout/use-title'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { AddressNote } from './AddressNote'
import { PosterWords } from './PosterWords'

/** The join link of a shift on a sheet to hang up: a code to scan from a few steps away, in both languages. */
export function PosterScreen({ shiftId }: { shiftId: string }) {
  const { labels: text, leadMap } = useLeadWords()
  const both = { en: use(leadMessages('en')), es: use(leadMessages('es')) }
  const origin = useOrigin()
  const orchard = useSelect((view) => view.state?.orchard.name ?? '')
  const shift = useSelect((view) => view.state?.shifts[shiftId] ?? null)
  // The same draft as on the shift page: nobody else ever knows the code.
  const code = useDraft<string | null>(`join-link|${shiftId}`, null)
  useTitle()
  const url = code.value === null || origin === null ? null : origin + routes.join(code.value)
  return (
    <main className="poster-page">
      <div className="off-poster">
        <h1>{text.posterTitle}</h1>
        <p>{url === null && code.ready ? text.noLink : text.posterNote}</p>
        {origin !== null && <AddressNote origin={origin} />}
        <div className="row wrap">
          {url !== null && (
            <Button kind="call" onPress={() => window.print()}>
              {text.printPoster}
            </Button>
          )}
          <ButtonLink kind={url === null && code.ready ? 'call' : 'plain'} href={routes.shift()}>
            {text.toShift}
          </ButtonLink>
          <ButtonLink icon="aid" href={routes.emergency()}>
            {leadMap.emergency}
          </ButtonLink>
        </div>
        <p className="small">{text.posterHowTo}</p>
      </div>
      {url !== null && (
        <article className="poster" aria-label={text.posterTitle}>
          <p className="poster-orchard">{orchard}</p>
          <PosterWords language="en" words={both.en.labels} shift={shift} />
          <div className="poster-code">
            <QrCode text={url} label={text.posterTitle} isPrinted />
          </div>
          <p className="poster-address">{url}</p>
          <PosterWords language="es" words={both.es.labels} shift={shift} />
        </article>
      )}
    </main>
  )
}
