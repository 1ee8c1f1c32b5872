/** All that screens need of the client. */

export type { BeginResult } from '@/lib/state/begun'
export * from '@/lib/state/brush'
export * from '@/lib/state/calls'
export * from '@/lib/state/come-down'
export { newCommandId } from '@/lib/state/command-id'
export * from '@/lib/state/company'
export * from '@/lib/state/flags'
export * from '@/lib/state/light'
export * from '@/lib/state/looking-over'
export { countMarks, looksOf } from '@/lib/state/looks'
export * from '@/lib/state/me'
export * from '@/lib/state/people'
export * from '@/lib/state/readiness'
export type {
  AerialRead,
  AuditFilter,
  AuditTrail,
  BeforeForgetting,
  Briefing,
  CallRead,
  CameIn,
  FlagDetails,
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
  TreeHistory,
  TreeNote,
  VolunteerHours,
  WorkTimes,
} from '@/lib/state/reads'
export type { Send } from '@/lib/state/sending'
export type { Sent } from '@/lib/state/sent'
export * from '@/lib/state/trees'
export type { Begun, Kept, Membership, Phase, Sheet, Signal, View } from '@/lib/state/view'
export * from '@/lib/state/weather'
export { RowcallProvider } from './provider'
export { type Draft, useDraft } from './use-draft'
export { useNow } from './use-now'
export {
  type Reading,
  useBriefing,
  useCalls,
  useCameIn,
  useFlagDetails,
  useIncidents,
  useMarkPhoto,
  useMyFlags,
  useNotesOfRound,
  useOldBriefing,
  usePhoto,
  usePrivatePeople,
  useShiftRecord,
  useToLookOver,
  useToolFaults,
  useTreeNotes,
} from './use-read'
export * from './use-rooms'
export { usePhase, useSelect } from './use-select'
export { type Doings, useRowcall, useSend } from './use-send'
export { useWorkerAnswer } from './use-worker-answer'
