/** The manager's rooms, and the history of a tree. A part of `screens`. */

import { treeNumber } from '../tree/tree-number'
import type { Screen } from './screen-list'

export const screensOfRooms = {
  rooms: {
    gate: 'lead',
    load: async () => {
      const { RoomsScreen } = await import('../rooms/RoomsScreen')
      return () => <RoomsScreen />
    },
  },
  invites: {
    gate: 'lead',
    load: async () => {
      const { InvitesScreen } = await import('../rooms/InvitesScreen')
      return () => <InvitesScreen />
    },
  },
  rounds: {
    gate: 'lead',
    load: async () => {
      const { RoundsScreen } = await import('../rooms/RoundsScreen')
      return () => <RoundsScreen />
    },
  },
  shifts: {
    gate: 'lead',
    load: async () => {
      const { ShiftsScreen } = await import('../rooms/ShiftsScreen')
      return () => <ShiftsScreen />
    },
  },
  shiftRecord: {
    gate: 'lead',
    load: async () => {
      const { ShiftRecordScreen } = await import('../rooms/ShiftRecordScreen')
      return ({ id }) => <ShiftRecordScreen id={id} />
    },
  },
  hours: {
    gate: 'lead',
    load: async () => {
      const { HoursScreen } = await import('../rooms/HoursScreen')
      return () => <HoursScreen />
    },
  },
  season: {
    gate: 'lead',
    load: async () => {
      const { SeasonScreen } = await import('../planning/SeasonScreen')
      return () => <SeasonScreen />
    },
  },
  settings: {
    gate: 'lead',
    load: async () => {
      const { SettingsScreen } = await import('../rooms/SettingsScreen')
      return () => <SettingsScreen />
    },
  },
  left: {
    gate: 'lead',
    load: async () => {
      const { LeftScreen } = await import('../rooms/LeftScreen')
      return () => <LeftScreen />
    },
  },
  forget: {
    gate: 'lead',
    load: async () => {
      const { ForgetScreen } = await import('../rooms/ForgetScreen')
      return ({ id }) => <ForgetScreen id={id} />
    },
  },
  audit: {
    gate: 'lead',
    load: async () => {
      const { AuditScreen } = await import('../rooms/AuditScreen')
      return ({ query }) => (
        <AuditScreen
          tree={treeNumber(query.get('tree') ?? undefined)}
          about={query.get('person')}
        />
      )
    },
  },
  treeHistory: {
    gate: 'crew',
    load: async () => {
      const { HistoryScreen } = await import('../history/HistoryScreen')
      return ({ id }) => <HistoryScreen no={treeNumber(id)} />
    },
  },
} satisfies Record<string, Screen>
