/** The screens of leads and managers. A part of `screens`. */

import { treeNumber } from '../tree/tree-number'
import type { Screen } from './screen-list'

export const leadScreens = {
  aerial: {
    gate: 'lead',
    load: async () => {
      const { AerialScreen } = await import('../aerial/AerialScreen')
      return () => <AerialScreen />
    },
  },
  labels: {
    gate: 'lead',
    load: async () => {
      const { LabelsScreen } = await import('../labels/LabelsScreen')
      return () => <LabelsScreen />
    },
  },
  poster: {
    gate: 'lead',
    load: async () => {
      const { PosterScreen } = await import('../labels/PosterScreen')
      return ({ id }) => <PosterScreen shiftId={id} />
    },
  },
  map: {
    gate: 'lead',
    load: async () => {
      const { MapScreen } = await import('../crew/MapScreen')
      return ({ query }) => <MapScreen tree={treeNumber(query.get('tree') ?? undefined)} />
    },
  },
  shift: {
    gate: 'lead',
    load: async () => {
      const { ShiftScreen } = await import('../shift/ShiftScreen')
      return () => <ShiftScreen />
    },
  },
  giveBriefing: {
    gate: 'lead',
    load: async () => {
      const { GiveBriefingScreen } = await import('../shift/GiveBriefingScreen')
      return () => <GiveBriefingScreen />
    },
  },
  plan: {
    gate: 'lead',
    load: async () => {
      const { PlanScreen } = await import('../planning/PlanScreen')
      return () => <PlanScreen />
    },
  },
  board: {
    gate: 'lead',
    load: async () => {
      const { BoardScreen } = await import('../board/BoardScreen')
      return () => <BoardScreen />
    },
  },
  weather: {
    gate: 'lead',
    load: async () => {
      const { WeatherScreen } = await import('../weather/WeatherScreen')
      return () => <WeatherScreen />
    },
  },
  houseRules: {
    gate: 'lead',
    load: async () => {
      const { HouseRulesScreen } = await import('../shift/HouseRulesScreen')
      return () => <HouseRulesScreen />
    },
  },
  flags: {
    gate: 'lead',
    load: async () => {
      const { FlagsScreen } = await import('../flags/FlagsScreen')
      return () => <FlagsScreen />
    },
  },
  disease: {
    gate: 'lead',
    load: async () => {
      const { DiseaseScreen } = await import('../disease/DiseaseScreen')
      return () => <DiseaseScreen />
    },
  },
  referral: {
    gate: 'lead',
    load: async () => {
      const { ReferralScreen } = await import('../paper/ReferralScreen')
      return ({ id }) => <ReferralScreen flags={id.split('+')} />
    },
  },
  calls: {
    gate: 'lead',
    load: async () => {
      const { CallsScreen } = await import('../call/CallsScreen')
      return ({ query }) => <CallsScreen incidentOf={query.get('incident')} />
    },
  },
  paper: {
    gate: 'lead',
    load: async () => {
      const { PaperScreen } = await import('../paper/PaperScreen')
      return () => <PaperScreen />
    },
  },
  fromPaper: {
    gate: 'lead',
    load: async () => {
      const { FromPaperScreen } = await import('../paper/FromPaperScreen')
      return () => <FromPaperScreen />
    },
  },
  person: {
    gate: 'lead',
    load: async () => {
      const { PersonScreen } = await import('../crew/PersonScreen')
      return ({ id }) => <PersonScreen id={id} />
    },
  },
  cameIn: {
    gate: 'lead',
    load: async () => {
      const { CameInScreen } = await import('../crew/CameInScreen')
      return () => <CameInScreen />
    },
  },
  headCount: {
    gate: 'lead',
    load: async () => {
      const { HeadCountScreen } = await import('../count/HeadCountScreen')
      return () => <HeadCountScreen />
    },
  },
  people: {
    gate: 'lead',
    load: async () => {
      const { PeopleScreen } = await import('../crew/PeopleScreen')
      return () => <PeopleScreen />
    },
  },
} satisfies Record<string, Screen>
