/** Things that are read one at a time. What was read once can be read again without signal. */

import type {
  Briefing,
  CallRead,
  CameIn,
  FlagDetails,
  Incident,
  Invite,
  MyFlag,
  NotesOfRound,
  PrivatePeople,
  ShiftRecord,
  ToLookOver,
  ToolFaults,
  TreeNote,
} from '@/lib/data/answers'
import type { Backend } from '@/lib/data/backend'
import type {
  AerialRead,
  AuditFilter,
  AuditTrail,
  BeforeForgetting,
  CloseWatchRead,
  ExceptionRead,
  Forecast,
  Invites,
  MyHours,
  PersonWhoLeft,
  RoundRead,
  readsOfRooms,
  ShiftRead,
  ThingOfTree,
  TreeHistory,
  VolunteerHours,
  WorkTimes,
} from '@/lib/data/rooms'
import type { Outcome } from '@/lib/events/answer'
import type { Storage } from '@/lib/sync/ports'

export type {
  AerialRead,
  AuditFilter,
  AuditTrail,
  BeforeForgetting,
  Briefing,
  CallRead,
  CameIn,
  CloseWatchRead,
  ExceptionRead,
  FlagDetails,
  Forecast,
  Incident,
  Invite,
  Invites,
  MyFlag,
  MyHours,
  NotesOfRound,
  PersonWhoLeft,
  PrivatePeople,
  RoundRead,
  ShiftRead,
  ShiftRecord,
  ThingOfTree,
  ToLookOver,
  ToolFaults,
  TreeHistory,
  TreeNote,
  VolunteerHours,
  WorkTimes,
}

export type Reads = {
  /** `version` null: the newest. */
  briefing: (shiftId: string, version: number | null) => Promise<Outcome<Briefing | null>>
  photo: (photoId: string) => Promise<Outcome<{ jpeg: string }>>
  /** The same of marked cuts, which are wanted at the tree, where there may be no signal. */
  markPhoto: (photoId: string) => Promise<Outcome<{ jpeg: string }>>
  treeNotes: (tree: number) => Promise<Outcome<TreeNote[]>>
  /** Telephone numbers are never kept on a device. */
  privatePeople: () => Promise<Outcome<PrivatePeople>>
  /** Nor is what somebody wrote of a person. */
  cameIn: () => Promise<Outcome<CameIn>>
  toolFaults: () => Promise<Outcome<ToolFaults>>
  calls: () => Promise<Outcome<CallRead[]>>
  incidents: () => Promise<Outcome<Incident[]>>
  toLookOver: () => Promise<Outcome<ToLookOver>>
  notesOfRound: () => Promise<Outcome<NotesOfRound>>
  shiftRecord: (shiftId: string | null) => Promise<Outcome<ShiftRecord | null>>
  flagDetails: (flags: readonly string[]) => Promise<Outcome<FlagDetails>>
  /** What became of what this person reported. */
  myFlags: () => Promise<Outcome<MyFlag[]>>
  myHours: () => Promise<Outcome<MyHours>>
  treeHistory: (tree: number) => Promise<Outcome<TreeHistory>>
  /** The picture from above, for leads; null without one. */
  aerial: () => Promise<Outcome<AerialRead | null>>
  /** Names of people who left are never kept on a device: one of them may be forgotten. */
  volunteerHours: (season: number | null) => Promise<Outcome<VolunteerHours>>
  /** How long trees took: nobody is named. */
  workTimes: () => Promise<Outcome<WorkTimes>>
  invites: () => Promise<Outcome<Invites>>
  rounds: () => Promise<Outcome<RoundRead[]>>
  shifts: () => Promise<Outcome<ShiftRead[]>>
  peopleWhoLeft: () => Promise<Outcome<PersonWhoLeft[]>>
  beforeForgetting: (personId: string) => Promise<Outcome<BeforeForgetting>>
  auditTrail: (filter: AuditFilter) => Promise<Outcome<AuditTrail>>
  forecast: () => Promise<Outcome<Forecast>>
  /** Kept: heat comes where there is no signal, too. */
  closeWatch: () => Promise<Outcome<CloseWatchRead>>
  exceptions: () => Promise<Outcome<ExceptionRead[]>>
}

/** Under which name a briefing is kept. */
export function briefingName(shiftId: string, version: number | null): string {
  return version === null ? `briefing|${shiftId}` : `briefing|${shiftId}|${version}`
}

export function readsOf(
  backend: Pick<
    Backend,
    | 'briefing'
    | 'photo'
    | 'treeNotes'
    | 'privatePeople'
    | 'cameIn'
    | 'toolFaults'
    | 'calls'
    | 'incidents'
    | 'toLookOver'
    | 'notesOfRound'
    | 'shiftRecord'
    | 'flagDetails'
    | 'myFlags'
    | 'read'
  >,
  storage: Storage,
  { owner, orchardId, personId }: { owner: string; orchardId: string; personId: string }
): Reads {
  return {
    briefing: (id, version) =>
      kept(briefingName(id, version), () => backend.briefing(orchardId, id, version)),
    photo: (id) => backend.photo(orchardId, id),
    markPhoto: (id) => kept(`photo|${id}`, () => backend.photo(orchardId, id)),
    treeNotes: (tree) => kept(`notes|${tree}`, () => backend.treeNotes(orchardId, tree)),
    privatePeople: () => backend.privatePeople(orchardId),
    cameIn: () => backend.cameIn(orchardId),
    toolFaults: () => backend.toolFaults(orchardId),
    calls: () => backend.calls(orchardId),
    incidents: () => backend.incidents(orchardId),
    notesOfRound: () => kept('notes-of-round', () => backend.notesOfRound(orchardId)),
    shiftRecord: (id) => kept(`record|${id}`, () => backend.shiftRecord(orchardId, id)),
    toLookOver: () => kept('look-over', () => backend.toLookOver(orchardId)),
    flagDetails: (flags) => backend.flagDetails(orchardId, flags),
    myFlags: () => kept('my-flags', () => backend.myFlags(orchardId, personId)),
    myHours: () => kept('my-hours', () => inRooms((rooms) => rooms.myHours(orchardId, personId))),
    aerial: () => kept('aerial', () => inRooms((rooms) => rooms.aerial(orchardId))),
    treeHistory: (tree) => inRooms((rooms) => rooms.treeHistory(orchardId, tree)),
    volunteerHours: (season) => inRooms((rooms) => rooms.volunteerHours(orchardId, season)),
    workTimes: () => kept('work-times', () => inRooms((rooms) => rooms.workTimes(orchardId))),
    invites: () => inRooms((rooms) => rooms.invites(orchardId)),
    rounds: () => kept('rounds', () => inRooms((rooms) => rooms.rounds(orchardId))),
    shifts: () => kept('shifts', () => inRooms((rooms) => rooms.shifts(orchardId))),
    peopleWhoLeft: () => inRooms((rooms) => rooms.peopleWhoLeft(orchardId)),
    beforeForgetting: (subject) => inRooms((rooms) => rooms.beforeForgetting(orchardId, subject)),
    forecast: () => kept('forecast', () => inRooms((rooms) => rooms.forecast(orchardId))),
    closeWatch: () => kept('close-watch', () => inRooms((rooms) => rooms.closeWatch(orchardId))),
    exceptions: () => inRooms((rooms) => rooms.exceptions(orchardId)),
    auditTrail: (filter) => inRooms((rooms) => rooms.auditTrail(orchardId, filter)),
  }

  /** Their shapes are fetched when something is looked up: they would weigh on the first screen. */
  async function inRooms<Value>(
    ask: (rooms: ReturnType<typeof readsOfRooms>) => Promise<Outcome<Value>>
  ): Promise<Outcome<Value>> {
    try {
      const { readsOfRooms } = await import('@/lib/data/rooms')
      return await ask(readsOfRooms(backend.read))
    } catch {
      return { ok: false, fault: 'offline' }
    }
  }

  async function kept<Value>(
    name: string,
    run: () => Promise<Outcome<Value>>
  ): Promise<Outcome<Value>> {
    const key = `read|${owner}|${name}`
    const told = await run()
    if (told.ok) await storage.write(key, told.value).catch(() => {})
    if (told.ok || told.fault !== 'offline') return told
    const last = await storage.read(key)
    // Written above, or by `keepTexts`, as the same kind of thing.
    return last === undefined ? told : { ok: true, value: last as Value }
  }
}
