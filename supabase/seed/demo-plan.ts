/** What stands in the demo's shed, and who works where. All invented. */

import type { ToolKind } from '@/lib/events/state'

export const emergencyCard = {
  where: 'Ashmerrow orchard, County Road 9, the second gate after the grain bins.',
  access: 'Ambulance by the second gate, straight on to the shed. Somebody waits at the road.',
  number: '911',
  call: 'Maren, whose number hangs inside the shed door.',
  hospital: 'Ashmerrow hospital, Mill Road, 20 minutes by car.',
  first_aid: 'Green box on the wall of the shed, and one in each lead’s pack.',
  first_aider: 'The leads.',
  meeting_point: 'The well, at the corner of Well Field.',
}

export const toolsInTheShed: readonly { label: string; kind: ToolKind }[] = [
  ...numbered('P', 'pruner', 14),
  ...numbered('L', 'lopper', 5),
  ...numbered('S', 'saw', 6),
  ...numbered('T', 'ladder', 3),
  ...numbered('R', 'pole_pruner', 1),
]

/** Not checked well enough when it was hung up last time. */
export const failedTool = { label: 'S6', items: ['blade_tight'], note: 'Wobbles in its handle.' }

/** What a lead would take into a briefing there; none of it says anything about people. */
export const topics = ['stop_signal', 'tools', 'ladders', 'saws', 'keep_out', 'disease'].map(
  (code) => ({ code })
)

function numbered(letter: string, kind: ToolKind, count: number) {
  return Array.from({ length: count }, (_, index) => ({ label: `${letter}${index + 1}`, kind }))
}

export type Place = readonly [block: string, row: number, place: number]

export type Worker = {
  name: string
  /** Where they begin; the nearest tree they may have comes first. */
  from: Place
  /** Comes along as helper, learner, or stands by. */
  with?: { part: 'helpers' | 'learners' | 'buddy'; name: string }
  ladder?: boolean
  /** Trees that are done when somebody opens the demo. */
  trees: number
  /** Then: in a next tree, on a break, or free; half_done leaves the last tree so. */
  next: 'holds' | 'half_done' | 'break' | 'free'
}

export const workers: readonly Worker[] = [
  { name: 'Tobin Achterberg', from: ['L', 7, 1], trees: 7, next: 'free' },
  {
    name: 'Rosaura Quiñones',
    from: ['L', 8, 2],
    with: { part: 'learners', name: 'Lucía Quiñones' },
    trees: 6,
    next: 'holds',
  },
  { name: 'Pim Delacroix', from: ['L', 9, 2], trees: 7, next: 'half_done' },
  {
    name: 'Nadia Brightwater',
    from: ['W', 5, 4],
    with: { part: 'buddy', name: 'Sunniva Park' },
    trees: 6,
    next: 'holds',
  },
  { name: 'Sunniva Park', from: ['W', 6, 9], trees: 7, next: 'holds' },
  { name: 'Eliseo Montalbán', from: ['W', 7, 5], trees: 6, next: 'break' },
  { name: 'Greta Holloway', from: ['W', 8, 6], trees: 5, next: 'holds' },
  { name: 'Abel Ferreira', from: ['W', 8, 16], trees: 6, next: 'holds' },
  { name: 'Hob Larrimore', from: ['L', 4, 16], trees: 6, next: 'holds' },
  {
    name: 'Wilma Thackeray',
    from: ['W', 2, 16],
    with: { part: 'helpers', name: 'Dorothea Nkemelu' },
    ladder: true,
    trees: 5,
    next: 'holds',
  },
]

/** Rows whose big cuts are marked, for people who do not prune alone yet. */
export const markedRows = [
  ['W', 7],
  ['W', 8],
  ['W', 9],
  ['L', 8],
] as const

/** Old apricots that stand together; the lead has looked at some of them. */
export const cankers: readonly {
  at: Place
  severity: 'low' | 'high'
  isConfirmed: boolean
}[] = [
  { at: ['L', 1, 8], severity: 'high', isConfirmed: true },
  { at: ['L', 1, 9], severity: 'low', isConfirmed: true },
  { at: ['L', 1, 10], severity: 'low', isConfirmed: false },
  { at: ['L', 2, 8], severity: 'low', isConfirmed: false },
  { at: ['L', 2, 9], severity: 'high', isConfirmed: true },
]

/** Found in the morning. The second closes the trees around it. */
export const diseasedTree: Place = ['W', 6, 4]
export const dangerousTree: Place = ['W', 1, 8]
export const keepOutM = 9
