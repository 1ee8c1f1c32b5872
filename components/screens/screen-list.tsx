/** The screens of the crew and its leads. Each is fetched once, then shown without asking anybody. */

import type { ReactNode } from 'react'

import { callKindOf } from '../call/call-kinds'
import { treeNumber } from '../tree/tree-number'
import { cutScreens } from './cut-screens'
import { groundScreens } from './ground-screens'
import { leadScreens } from './lead-screens'
import type { ScreenName } from './screen-paths'
import { screensAfterPruning } from './screens-after-pruning'
import { screensOfInventory } from './screens-of-inventory'
import { screensOfLimbs } from './screens-of-limbs'
import { screensOfRooms } from './screens-of-rooms'

/** What an address says beyond which screen it is. */
export type Said = { id: string; query: URLSearchParams }

/** Draws the screen for what its address says. */
export type Draw = (said: Said) => ReactNode

export type Screen = { gate: 'crew' | 'lead'; load: () => Promise<Draw> }

export const screens: Record<ScreenName, Screen> = {
  ...screensAfterPruning,
  ...cutScreens,
  ...screensOfLimbs,
  ...screensOfRooms,
  home: {
    gate: 'crew',
    load: async () => {
      const { HomeScreen } = await import('../join/HomeScreen')
      return () => <HomeScreen />
    },
  },
  // before you start
  ready: {
    gate: 'crew',
    load: async () => {
      const { ReadyScreen } = await import('../ready/ReadyScreen')
      return () => <ReadyScreen />
    },
  },
  consent: {
    gate: 'crew',
    load: async () => {
      const { ConsentScreen } = await import('../ready/ConsentScreen')
      return () => <ConsentScreen />
    },
  },
  briefing: {
    gate: 'crew',
    load: async () => {
      const { BriefingScreen } = await import('../ready/BriefingScreen')
      return () => <BriefingScreen />
    },
  },
  tools: {
    gate: 'crew',
    load: async () => {
      const { ToolsScreen } = await import('../ready/ToolsScreen')
      return () => <ToolsScreen />
    },
  },
  // at the trees
  nextTree: {
    gate: 'crew',
    load: async () => {
      const { NextTreeScreen } = await import('../tree/NextTreeScreen')
      return ({ query }) => <NextTreeScreen asked={treeNumber(query.get('tree') ?? undefined)} />
    },
  },
  tree: {
    gate: 'crew',
    load: async () => {
      const { TreeScreen } = await import('../tree/TreeScreen')
      return ({ id }) => <TreeScreen no={treeNumber(id)} />
    },
  },
  finishTree: {
    gate: 'crew',
    load: async () => {
      const { FinishScreen } = await import('../tree/FinishScreen')
      return ({ id }) => <FinishScreen no={treeNumber(id)} />
    },
  },
  halfDoneTree: {
    gate: 'crew',
    load: async () => {
      const { HalfDoneScreen } = await import('../tree/HalfDoneScreen')
      return ({ id }) => <HalfDoneScreen no={treeNumber(id)} />
    },
  },
  flagTree: {
    gate: 'crew',
    load: async () => {
      const { FlagScreen } = await import('../tree/FlagScreen')
      return ({ id, query }) => (
        <FlagScreen no={treeNumber(id)} isAboutLimb={query.get('about') === 'limb'} />
      )
    },
  },
  openness: {
    gate: 'crew',
    load: async () => {
      const { OpennessScreen } = await import('../openness/OpennessScreen')
      return ({ id }) => <OpennessScreen no={treeNumber(id)} />
    },
  },
  // when something is wrong
  flag: {
    gate: 'crew',
    load: async () => {
      const { WhichTreeScreen } = await import('../tree/WhichTreeScreen')
      return () => <WhichTreeScreen />
    },
  },
  emergency: {
    gate: 'crew',
    load: async () => {
      const { EmergencyScreen } = await import('../day/EmergencyScreen')
      return () => <EmergencyScreen />
    },
  },
  callLead: {
    gate: 'crew',
    load: async () => {
      const { CallLeadScreen } = await import('../call/CallLeadScreen')
      return ({ query }) => (
        <CallLeadScreen asked={callKindOf(query.get('kind'))} forPerson={query.get('for')} />
      )
    },
  },
  stopWork: {
    gate: 'crew',
    load: async () => {
      const { StopWorkScreen } = await import('../day/StopWorkScreen')
      return () => <StopWorkScreen />
    },
  },
  // the day
  breakOrLeave: {
    gate: 'crew',
    load: async () => {
      const { BreakScreen } = await import('../day/BreakScreen')
      return () => <BreakScreen />
    },
  },
  unsent: {
    gate: 'crew',
    load: async () => {
      const { UnsentScreen } = await import('../tree/UnsentScreen')
      return () => <UnsentScreen />
    },
  },
  device: {
    gate: 'crew',
    load: async () => {
      const { DeviceScreen } = await import('../day/DeviceScreen')
      return () => <DeviceScreen />
    },
  },
  ...leadScreens,
  ...screensOfInventory,
  ...groundScreens,
}

const loading = new Map<ScreenName, Promise<Draw>>()

/** What did not come (no signal) is asked for again the next time. */
export function drawingOf(name: ScreenName): Promise<Draw> {
  const known = loading.get(name)
  if (known !== undefined) return known
  const coming = screens[name].load()
  loading.set(name, coming)
  coming.catch(() => loading.delete(name))
  return coming
}
