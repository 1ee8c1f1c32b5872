'use client'

import dynamic from 'next/dynamic'
import { usePathname, useSearchParams } from 'next/navigation'
import { type ReactNode, Suspense, use, useEffect, useRef } from 'react'

import { isLeadView, usePhase, useSelect } from '@/lib/hooks'
import { keepApp } from '@/lib/offline/keep-app'
import type { Language } from '@/lib/text/language'
import { leadMessages, messages } from '@/lib/text/messages'

import { Fetching } from '../layout/Fetching'
import { ShownHere } from '../layout/use-go'
import { useLanguage } from '../layout/Words'
import { drawingOf, screens } from './screen-list'
import { type ScreenName, screenNameAt, screenPaths } from './screen-paths'
import '../tree/tree.css'
import '../tree/flag-tiles.css'
import { useLinksInPage } from './use-links-in-page'
import { useTopOfNewScreen } from './use-top-of-new-screen'

/** Whoever joins by a link stands before neither. */
const gateFiles = {
  crew: async () => (await import('../layout/CrewGate')).CrewGate,
  lead: async () => (await import('../crew/LeadGate')).LeadGate,
}
const loading = () => <Fetching />
const gates = {
  crew: dynamic(gateFiles.crew, { loading }),
  lead: dynamic(gateFiles.lead, { loading }),
}

/** What comes when it is first shown, and then would not without signal: by the same call, or other files would come. */
const partsOfLead = [
  async () => (await import('../map/OrchardMap')).fetchMapFrame(),
  async () => (await import('../crew/LinkToShow')).fetchQrCode(),
  async () => (await import('../day/StopWorkScreen')).fetchHeadCount(),
]

/** So long the first screen has the line for itself. */
const afterFirstScreenMs = 1_500

/** The screen of the address; `children` is the server's page for addresses that have none here. */
export function Screens({ children }: { children: ReactNode }) {
  const path = usePathname()
  const query = useSearchParams()
  const name = screenNameAt(path)
  const address = `${path}?${query}`
  useLinksInPage(isShownHere)
  useFetchedAhead(name)
  useTopOfNewScreen(address)
  useHeadingInFocus(path)
  useOwnAddress(path)

  if (name === undefined) return <ShownHere value={isShownHere}>{children}</ShownHere>
  const Gate = gates[screens[name].gate]
  return (
    <ShownHere value={isShownHere}>
      <Gate>
        <Suspense fallback={<Fetching />}>
          <ScreenOf key={address} name={name} path={path} query={query} />
        </Suspense>
      </Gate>
    </ShownHere>
  )
}

type ScreenOfProps = { name: ScreenName; path: string; query: URLSearchParams }

function ScreenOf({ name, path, query }: ScreenOfProps) {
  const draw = use(drawingOf(name))
  return draw({ id: screenPaths[name].exec(path)?.[1] ?? '', query })
}

function isShownHere(path: string): boolean {
  return screenNameAt(new URL(path, location.href).pathname) !== undefined
}

/** The screen of the address at once; the others of this person when that one has come. */
function useFetchedAhead(first: ScreenName | undefined): void {
  const isIn = usePhase() === 'in'
  const isLead = useSelect(isLeadView)
  const language = useLanguage()
  useEffect(() => {
    if (first) ahead(drawingOf(first))
  }, [first])
  useEffect(() => {
    if (!isIn) return
    // What does not come now is asked for again when it is needed.
    const fetchAll = () => ahead(Promise.allSettled(allFor(isLead, language)).then(keepApp))
    const timer = setTimeout(fetchAll, afterFirstScreenMs)
    addEventListener('online', fetchAll)
    return () => {
      clearTimeout(timer)
      removeEventListener('online', fetchAll)
    }
  }, [isIn, isLead, language])
}

function allFor(isLead: boolean, language: Language): Promise<unknown>[] {
  const mine = [messages(language), gateFiles.crew(), ...namesFor(isLead).map(drawingOf)]
  return isLead ? [...mine, ...allForLeads()] : mine
}

function allForLeads(): Promise<unknown>[] {
  // A briefing is written in both languages.
  const words = (['en', 'es'] as const).flatMap((each) => [messages(each), leadMessages(each)])
  return [...words, gateFiles.lead(), ...partsOfLead.map((part) => part())]
}

function namesFor(isLead: boolean): ScreenName[] {
  // Object.keys knows no names.
  const names = Object.keys(screens) as ScreenName[]
  return names.filter((name) => isLead || screens[name].gate === 'crew')
}

/** Nobody waits for it. */
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

/** Without signal the page was written for another address than the one it is opened at. */
function useOwnAddress(path: string): void {
  useEffect(() => {
    if (location.pathname !== path) history.replaceState(null, '', location.href)
  }, [path])
}
