/** Every screen of the crew and its leads, by its address. Fetched once, then shown without asking anybody. */

import type { ReactNode } from 'react'

import { treeNumber } from '../tree/tree-number'

/** What an address says beyond which screen it is. */
export type Said = { id: string; query: URLSearchParams }

/** Draws the screen for what its address says. */
export type Draw = (said: Said) => ReactNode

export type Screen = { path: RegExp; gate: 'crew' | 'lead'; load: () => Promise<Draw> }

export const screens: readonly Screen[] = [
  crew(/^\/$/, async () => {
    const { HomeScreen } = await import('../join/HomeScreen')
    return () => <HomeScreen />
  }),

  // before you start
  crew(/^\/ready$/, async () => {
    const { ReadyScreen } = await import('../ready/ReadyScreen')
    return () => <ReadyScreen />
  }),
  crew(/^\/consent$/, async () => {
    const { ConsentScreen } = await import('../ready/ConsentScreen')
    return () => <ConsentScreen />
  }),
  crew(/^\/briefing$/, async () => {
    const { BriefingScreen } = await import('../ready/BriefingScreen')
    return () => <BriefingScreen />
  }),
  crew(/^\/tools$/, async () => {
    const { ToolsScreen } = await import('../ready/ToolsScreen')
    return () => <ToolsScreen />
  }),

  // at the trees
  crew(/^\/next$/, async () => {
    const { NextTreeScreen } = await import('../tree/NextTreeScreen')
    return ({ query }) => <NextTreeScreen asked={treeNumber(query.get('tree') ?? undefined)} />
  }),
  crew(/^\/tree\/([^/]+)$/, async () => {
    const { TreeScreen } = await import('../tree/TreeScreen')
    return ({ id }) => <TreeScreen no={treeNumber(id)} />
  }),
  crew(/^\/tree\/([^/]+)\/finish$/, async () => {
    const { FinishScreen } = await import('../tree/FinishScreen')
    return ({ id }) => <FinishScreen no={treeNumber(id)} />
  }),
  crew(/^\/tree\/([^/]+)\/half-done$/, async () => {
    const { HalfDoneScreen } = await import('../tree/HalfDoneScreen')
    return ({ id }) => <HalfDoneScreen no={treeNumber(id)} />
  }),
  crew(/^\/tree\/([^/]+)\/flag$/, async () => {
    const { FlagScreen } = await import('../tree/FlagScreen')
    return ({ id }) => <FlagScreen no={treeNumber(id)} />
  }),

  // when something is wrong
  crew(/^\/flag$/, async () => {
    const { WhichTreeScreen } = await import('../tree/WhichTreeScreen')
    return () => <WhichTreeScreen />
  }),
  crew(/^\/emergency$/, async () => {
    const { EmergencyScreen } = await import('../day/EmergencyScreen')
    return () => <EmergencyScreen />
  }),
  crew(/^\/call$/, async () => {
    const { CallLeadScreen } = await import('../day/CallLeadScreen')
    return () => <CallLeadScreen />
  }),
  crew(/^\/stop$/, async () => {
    const { StopWorkScreen } = await import('../day/StopWorkScreen')
    return () => <StopWorkScreen />
  }),

  // the day
  crew(/^\/break$/, async () => {
    const { BreakScreen } = await import('../day/BreakScreen')
    return () => <BreakScreen />
  }),
  crew(/^\/unsent$/, async () => {
    const { UnsentScreen } = await import('../tree/UnsentScreen')
    return () => <UnsentScreen />
  }),
  crew(/^\/device$/, async () => {
    const { DeviceScreen } = await import('../day/DeviceScreen')
    return () => <DeviceScreen />
  }),

  // leads and managers
  lead(/^\/map$/, async () => {
    const { MapScreen } = await import('../crew/MapScreen')
    return ({ query }) => <MapScreen tree={treeNumber(query.get('tree') ?? undefined)} />
  }),
  lead(/^\/people$/, async () => {
    const { PeopleScreen } = await import('../crew/PeopleScreen')
    return () => <PeopleScreen />
  }),
]

function crew(path: RegExp, load: Screen['load']): Screen {
  return { path, gate: 'crew', load }
}

function lead(path: RegExp, load: Screen['load']): Screen {
  return { path, gate: 'lead', load }
}

export function screenAt(path: string): Screen | undefined {
  return screens.find((screen) => screen.path.test(path))
}

const loading = new Map<Screen, Promise<Draw>>()

/** Fetched once; what did not come (no signal) is asked for again the next time. */
export function drawingOf(screen: Screen): Promise<Draw> {
  const known = loading.get(screen)
  if (known !== undefined) return known
  const coming = screen.load()
  loading.set(screen, coming)
  coming.catch(() => loading.delete(screen))
  return coming
}
