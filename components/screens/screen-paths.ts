/** The address of every screen that is shown inside the page. What stands in brackets is of whom or what it is. */

import type { routes } from '@/lib/routes'

export const screenPaths = {
  home: /^\/$/,
  // before you start
  ready: /^\/ready$/,
  consent: /^\/consent$/,
  briefing: /^\/briefing$/,
  tools: /^\/tools$/,
  // at the trees
  nextTree: /^\/next$/,
  tree: /^\/tree\/([^/]+)$/,
  finishTree: /^\/tree\/([^/]+)\/finish$/,
  halfDoneTree: /^\/tree\/([^/]+)\/half-done$/,
  flagTree: /^\/tree\/([^/]+)\/flag$/,
  cutAtTree: /^\/tree\/([^/]+)\/cut$/,
  shortenAtTree: /^\/tree\/([^/]+)\/shorten$/,
  openness: /^\/tree\/([^/]+)\/openness$/,
  limbsOfTree: /^\/tree\/([^/]+)\/limbs$/,
  weighLimb: /^\/tree\/([^/]+)\/weight$/,
  treeHistory: /^\/tree\/([^/]+)\/history$/,
  haul: /^\/haul$/,
  // when something is wrong
  flag: /^\/flag$/,
  emergency: /^\/emergency$/,
  callLead: /^\/call$/,
  stopWork: /^\/stop$/,
  // the day
  breakOrLeave: /^\/break$/,
  unsent: /^\/unsent$/,
  device: /^\/device$/,
  // leads and managers
  map: /^\/map$/,
  shift: /^\/shift$/,
  giveBriefing: /^\/shift\/briefing$/,
  plan: /^\/plan$/,
  lookOver: /^\/look-over$/,
  houseRules: /^\/house-rules$/,
  weather: /^\/weather$/,
  flags: /^\/flags$/,
  disease: /^\/disease$/,
  referral: /^\/referral\/([^/]+)$/,
  brush: /^\/brush$/,
  board: /^\/board$/,
  calls: /^\/calls$/,
  paper: /^\/paper$/,
  fromPaper: /^\/from-paper$/,
  labels: /^\/labels$/,
  aerial: /^\/aerial$/,
  poster: /^\/poster\/([^/]+)$/,
  bringIn: /^\/bring-in$/,
  takeOut: /^\/take-out$/,
  person: /^\/people\/([^/]+)$/,
  people: /^\/people$/,
  cameIn: /^\/came-in$/,
  headCount: /^\/count$/,
  // managers
  rooms: /^\/rooms$/,
  invites: /^\/invites$/,
  rounds: /^\/rounds$/,
  shifts: /^\/shifts$/,
  shiftRecord: /^\/shifts\/([^/]+)$/,
  hours: /^\/hours$/,
  season: /^\/season$/,
  settings: /^\/settings$/,
  left: /^\/left$/,
  forget: /^\/forget\/([^/]+)$/,
  audit: /^\/audit$/,
  ground: /^\/ground$/,
  newBlock: /^\/ground\/new$/,
  cultivars: /^\/ground\/cultivars$/,
  block: /^\/ground\/(\d+)$/,
} as const satisfies Partial<Record<keyof typeof routes, RegExp>>

export type ScreenName = keyof typeof screenPaths

/** Undefined where the server has a page of its own, or nothing. */
export function screenNameAt(path: string): ScreenName | undefined {
  // Object.keys knows no names.
  const names = Object.keys(screenPaths) as ScreenName[]
  return names.find((name) => screenPaths[name].test(path))
}
