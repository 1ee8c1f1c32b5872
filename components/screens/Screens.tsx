'use client'

import { usePathname, useSearchParams } from 'next/navigation'
import { type ReactNode, Suspense, use, useEffect, useRef } from 'react'

import { isLeadView, usePhase, useSelect } from '@/lib/hooks'
import { leadMessages, messages } from '@/lib/text/messages'

import { LeadGate } from '../crew/LeadGate'
import { CrewGate } from '../layout/CrewGate'
import { Fetching } from '../layout/Fetching'
import { ShownHere } from '../layout/use-go'
import { useLanguage } from '../layout/Words'
import { drawingOf, type Screen, screenAt, screens } from './screen-list'
import '../tree/tree.css'
import { useLinksInPage } from './use-links-in-page'

/** So long the first screen has the line for itself. */
const afterFirstScreenMs = 1_500

/** The screen of the address; `children` is the server's page for addresses that have none here. */
export function Screens({ children }: { children: ReactNode }) {
  const path = usePathname()
  const screen = screenAt(path)
  useLinksInPage(isShownHere)
  useFetchedAhead(screen)
  useHeadingInFocus(path)

  if (screen === undefined) return <ShownHere value={isShownHere}>{children}</ShownHere>
  const Gate = screen.gate === 'lead' ? LeadGate : CrewGate
  return (
    <ShownHere value={isShownHere}>
      <Gate>
        <Suspense fallback={<Fetching />}>
          <ScreenOf key={path} screen={screen} path={path} />
        </Suspense>
      </Gate>
    </ShownHere>
  )
}

function ScreenOf({ screen, path }: { screen: Screen; path: string }) {
  const query = useSearchParams()
  const draw = use(drawingOf(screen))
  return draw({ id: screen.path.exec(path)?.[1] ?? '', query })
}

function isShownHere(path: string): boolean {
  return screenAt(new URL(path, location.href).pathname) !== undefined
}

/** The screen of the address at once; the others of this person when that one has come. */
function useFetchedAhead(first: Screen | undefined): void {
  const isIn = usePhase() === 'in'
  const isLead = useSelect(isLeadView)
  const language = useLanguage()
  useEffect(() => {
    if (first) ahead(drawingOf(first))
  }, [first])
  useEffect(() => {
    if (!isIn) return
    const fetchAll = () => {
      ahead(messages(language))
      if (isLead) ahead(leadMessages(language))
      for (const screen of screens.filter(({ gate }) => isLead || gate === 'crew'))
        ahead(drawingOf(screen))
    }
    const timer = setTimeout(fetchAll, afterFirstScreenMs)
    addEventListener('online', fetchAll)
    return () => {
      clearTimeout(timer)
      removeEventListener('online', fetchAll)
    }
  }, [isIn, isLead, language])
}

/** What does not come now is asked for again when it is needed. */
function ahead(coming: Promise<unknown>): void {
  coming.catch(() => {})
}

/** After a change of screen, keys and screen readers go on from its heading. */
function useHeadingInFocus(path: string): void {
  const before = useRef(path)
  useEffect(() => {
    if (before.current === path) return
    before.current = path
    const heading = document.querySelector<HTMLElement>('main h1')
    heading?.setAttribute('tabindex', '-1')
    heading?.focus({ preventScroll: true })
  }, [path])
}
