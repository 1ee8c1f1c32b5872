/** Every path of the app, built here, so that a moved page breaks the build and not a link. */

export const routes = {
  home: () => '/',

  // getting in: codes stand in the fragment, which no log and no referrer sees
  join: (code?: string) => `/join${code === undefined ? '' : `#${code}`}`,
  setUp: (code?: string) => `/set-up${code === undefined ? '' : `#${code}`}`,
  consent: () => '/consent',

  // before you start
  ready: () => '/ready',
  briefing: () => '/briefing',
  tools: () => '/tools',

  // at the trees
  nextTree: () => '/next',
  tree: (tree: number) => `/tree/${tree}`,
  finishTree: (tree: number) => `/tree/${tree}/finish`,
  halfDoneTree: (tree: number) => `/tree/${tree}/half-done`,
  openness: (tree: number) => `/tree/${tree}/openness`,
  /** About its limb: whether a limb that looks high or thick is ours or the arborist's. */
  flagTree: (tree: number, about?: 'limb') =>
    `/tree/${tree}/flag${about === undefined ? '' : `?about=${about}`}`,
  treeHistory: (tree: number) => `/tree/${tree}/history`,
  shortenAtTree: (tree: number) => `/tree/${tree}/shorten`,
  cutAtTree: (tree: number) => `/tree/${tree}/cut`,
  limbsOfTree: (tree: number) => `/tree/${tree}/limbs`,
  weighLimb: (tree: number) => `/tree/${tree}/weight`,

  haul: () => '/haul',

  // when something is wrong
  flag: () => '/flag',
  emergency: () => '/emergency',
  callLead: (kind?: 'injury') => `/call${kind === undefined ? '' : `?kind=${kind}`}`,
  /** By a lead, for somebody without a phone. */
  callFor: (personId: string) => `/call?for=${personId}`,
  stopWork: () => '/stop',

  // the day
  breakOrLeave: () => '/break',
  unsent: () => '/unsent',
  device: () => '/device',

  // leads and managers
  map: (tree?: number) => `/map${tree === undefined ? '' : `?tree=${tree}`}`,
  shift: () => '/shift',
  people: () => '/people',
  person: (personId: string) => `/people/${personId}`,
  headCount: () => '/count',
  cameIn: () => '/came-in',
  giveBriefing: () => '/shift/briefing',
  plan: () => '/plan',
  lookOver: () => '/look-over',
  brush: () => '/brush',
  board: () => '/board',
  houseRules: () => '/house-rules',
  weather: () => '/weather',
  flags: () => '/flags',
  disease: () => '/disease',
  /** With the letters of a block that was laid out just now. */
  ground: (made?: string) =>
    `/ground${made === undefined ? '' : `?made=${encodeURIComponent(made)}`}`,
  newBlock: () => '/ground/new',
  cultivars: () => '/ground/cultivars',
  block: (block: number) => `/ground/${block}`,
  /** One sheet, or several at once. */
  referral: (...flags: string[]) => `/referral/${flags.join('+')}`,
  calls: (incidentOf?: string) =>
    `/calls${incidentOf === undefined ? '' : `?incident=${incidentOf}`}`,
  paper: () => '/paper',
  fromPaper: () => '/from-paper',
  labels: () => '/labels',
  aerial: () => '/aerial',
  poster: (shift: string) => `/poster/${shift}`,

  // managers
  rooms: () => '/rooms',
  invites: () => '/invites',
  rounds: () => '/rounds',
  shifts: () => '/shifts',
  shiftRecord: (shiftId: string) => `/shifts/${shiftId}`,
  hours: () => '/hours',
  season: () => '/season',
  settings: () => '/settings',
  left: () => '/left',
  forget: (personId: string) => `/forget/${personId}`,
  /** Of everything, or of one tree or person. */
  audit: (of: { tree: number } | { person: string } | null = null) =>
    `/audit${of === null ? '' : 'tree' in of ? `?tree=${of.tree}` : `?person=${of.person}`}`,
  bringIn: () => '/bring-in',
  takeOut: () => '/take-out',
} as const
