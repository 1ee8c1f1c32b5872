/** The manager's rooms: people, links, rounds, shifts, hours, settings, and forgetting somebody. */

import { plural } from './plural'

export const rooms = {
  title: 'Rooms',
  tab: 'Rooms',
  lead: 'What is set up, what is kept, and who did what.',
  forManagers: 'This is for managers',
  forManagersNote: 'Ask a manager of this orchard.',
  back: 'All rooms',

  crewGroup: 'The crew',
  workGroup: 'The work',
  groundGroup: 'The orchard',
  peopleNote: (count: number) => plural(count, '1 person', `${count} people`),
  waiting: (count: number) => plural(count, '1 waits to be let in', `${count} wait to be let in`),
  invitesNote: 'Who can still come in by a link, and links that are over',
  leftTitle: 'People who left',
  leftNote: 'Their work stays; their names can be forgotten',
  hoursNote: 'Per person, shift and season, to print or as CSV',
  roundsNote: (open: number) =>
    plural(open, '1 is open', `${open} are open`).replace(/^0 are open$/, 'None is open'),
  shiftsNote: (planned: number) => plural(planned, '1 is planned', `${planned} are planned`),
  settingsNote: 'Name, language, units, emergency card',
  labelsNote: 'Each tree’s tag, with a code to scan',
  houseRulesNote: 'Limits, each with its source',
  auditTitle: 'What happened, and who did it',
  auditNote: 'Every change, to be read and never altered',
}

export const invites = {
  title: 'Links',
  lead: 'Whoever has one of the open links can come in by it.',
  open: 'Open',
  over: 'Over',
  noneOpen: 'No link is open.',
  kinds: {
    join: 'For the crew',
    role: (role: string) => `For one person: ${role}`,
    device: (name: string) => `Another device for ${name}`,
    recovery: (name: string) => `The way back in for ${name}`,
  },
  onDay: (day: string) => `shift on ${day}`,
  madeBy: (name: string, day: string) => `made by ${name}, ${day}`,
  byHost: (day: string) => `made when the host started, ${day}`,
  until: (day: string) => `until ${day}`,
  used: (times: number) => plural(times, 'used once', `used ${times} times`),
  notUsed: 'not used',
  ended: (day: string) => `ended ${day}`,
  ranOut: 'ran out',
  usedUp: 'used up',
  end: 'End this link',
  endOf: (link: string) => `End: ${link}`,
  endTitle: 'End this link?',
  endNote: 'Nobody comes in by it any more. Whoever is in stays in.',
  crewLinkNote: 'The link for the whole crew stands on the shift’s screen.',
  toShift: 'To the crew’s link',
  waits: 'They came by a lead’s or manager’s link, and wait for you',
  waitsNote: 'Let somebody in only when they are who you gave the link to.',
  notThem: (name: string) => `Not them: remove ${name}`,
}

export const rounds = {
  title: 'Rounds',
  lead: 'A round is one visit to the trees: what is done in it stays, and the next one begins with every tree unpruned.',
  open: 'Open now',
  past: 'Past',
  noneOpen: 'No round is open.',
  days: (from: string, to: string) => `${from} to ${to}`,
  ofTrees: (done: number, all: number) =>
    `${done} of ${plural(all, '1 tree', `${all} trees`)} done`,
  doneTrees: (done: number) => plural(done, '1 tree done', `${done} trees done`),
  begun: (count: number) => `${count} half done`,
  leftOut: (count: number) => `${count} left out`,
  held: (count: number) => plural(count, '1 shift', `${count} shifts`),
  planned: (count: number) => `${count} planned`,
  closedOn: (day: string) => `closed ${day}`,
  worksHere: 'Work counts here',
  anotherTitle: 'Another round',
  another: 'Start another round',
  anotherNote:
    'One round is open already. From now on work counts in the new one, except in shifts that are planned in the old one. Close the old one first if it is over.',
  reopen: 'Open it again',
  reopenOf: (round: string) => `Open again: ${round}`,
  reopenTitle: 'Open this round again?',
  reopenNote:
    'Its trees are as they were. Trees that were dealt, and shifts that were called off, do not come back.',
  closePlanned: (count: number) =>
    plural(
      count,
      '1 shift is planned in this round. It is called off:',
      `${count} shifts are planned in this round. They are called off:`
    ),
  closePlannedNote: 'Tell the crew yourself: no message is sent.',
  closeBegun: (count: number) =>
    plural(
      count,
      '1 tree is half done. It stays so in the record, and begins anew in the next round.',
      `${count} trees are half done. They stay so in the record, and begin anew in the next round.`
    ),
  closeAndCallOff: (count: number) =>
    plural(count, 'Call off 1 shift and close', `Call off ${count} shifts and close`),
  keepOpen: 'Keep it open',
}

export const shifts = {
  title: 'Shifts',
  past: 'Past shifts',
  none: 'No shift has been opened yet.',
  toShift: 'To the shift’s screen',
  isOpen: 'open now',
  calledOff: 'called off',
  people: (count: number) => plural(count, '1 person', `${count} people`),
  done: (count: number) => plural(count, '1 tree done', `${count} trees done`),
  back: 'All shifts',
  recordOf: (day: string) => `The shift on ${day}`,
}

export const hours = {
  title: 'Hours',
  lead: 'From counting in to counting out, less breaks.',
  season: 'Season',
  none: 'Nobody was counted in this season.',
  total: (hours: string, people: string, shifts: string) => `${hours}: ${people} in ${shifts}.`,
  shiftCount: (count: number) => plural(count, '1 shift', `${count} shifts`),
  byPerson: 'By person',
  byShift: 'By shift',
  name: 'Name',
  shifts: 'Shifts',
  worked: 'Worked',
  onBreak: 'Breaks',
  day: 'Day',
  people: 'People',
  print: 'Print',
  asCsv: 'This season as CSV',
  asCsvNote: 'A line for each person and shift. All seasons are under “Take out”.',
  isOpen: 'still open',
}

export const settings = {
  title: 'Settings',
  name: 'The orchard’s name',
  writeName: 'Write a name of up to 80 characters.',
  language: 'First language on new phones',
  languageNote: 'Everybody can choose another on their own phone.',
  units: 'Units',
  unitsNote: 'Only how numbers are shown and typed. What is kept does not change.',
  zone: (zone: string) => `Time zone: ${zone}`,
  zoneNote:
    'It decides when a day begins and when it gets dark. It is chosen once, when the orchard is made.',
  save: 'Keep these settings',
  saved: 'Kept.',
  nothing: 'Nothing is changed yet.',
  cardTitle: 'Emergency card',
  cardNote: 'Where we are, whom to call, where to meet.',
  toCard: 'To the emergency card',
  toRules: 'To the house rules',
}

export const left = {
  title: 'People who left',
  lead: 'They are out of the orchard. Their names stay with what they did, until you forget them.',
  nobody: 'Nobody has left.',
  since: (from: string, to: string) => `here from ${from} to ${to}`,
  forget: 'Forget',
  forgetOf: (name: string) => `Forget ${name}`,
}

export const forget = {
  link: 'Forget this person',
  title: (name: string) => `Forget ${name}?`,
  who: 'Is this the right person?',
  role: (role: string, day: string) => `${role}, added ${day}`,
  left: (day: string) => `left ${day}`,
  stillIn: 'still in the orchard: they are removed, too',
  worked: (shifts: number, hours: string) =>
    plural(shifts, `1 shift, ${hours} worked`, `${shifts} shifts, ${hours} worked`),
  never: 'never counted in',
  lastHere: (day: string) => `last here ${day}`,
  trees: (count: number) => plural(count, '1 tree finished', `${count} trees finished`),
  sameName: (count: number) =>
    plural(
      count,
      'Somebody else here has the same name. Compare the days and hours above.',
      `${count} others here have the same name. Compare the days and hours above.`
    ),
  goes: 'What goes, for good',
  goesList: [
    'Name and phone number, on all devices and in the records.',
    'What they wrote, and what was written about them when they were handed on, counted out or helped.',
    'Their devices lose access. Open links they made end.',
  ],
  stays: 'What stays',
  staysList: [
    'Trees, hours, consents and signatures, as somebody’s.',
    'Photos of trees, and notes on trees that are still flagged or marked, until that is over.',
    'Incidents, with the name taken out where it is written in full.',
  ],
  elsewhere: 'Where the name is until somebody deletes it',
  elsewhereList: [
    'Archives, tables of hours and histories that were taken out before. Delete them and take out new ones.',
    'Backups on the machine on which Rowcall runs: each night’s for 14 nights, others longer. When one is restored, the name is forgotten again. Whoever keeps the machine removes them now with “npm run backup -- --forget”.',
    'What was printed.',
  ],
  look: 'The name is also written here. Change it yourself',
  onCard: 'Emergency card',
  inBriefings: (count: number) =>
    plural(
      count,
      'the briefing of 1 shift, which stays as it was signed',
      `the briefings of ${count} shifts, which stay as they were signed`
    ),
  incidents: (count: number) => plural(count, '1 incident', `${count} incidents`),
  inTheWay: 'First, this has to end',
  type: (name: string) => `Write “${name}” to be sure`,
  typeWrong: (name: string) => `Write the name as it stands above: ${name}.`,
  button: (name: string) => `Forget ${name} for good`,
  cannotUndo: 'Nobody can undo this.',
  done: 'Forgotten.',
  doneNote: 'Phones drop the name as soon as they have signal.',
  gone: 'This name is forgotten.',
  toPerson: 'Back to this person',
  toLeft: 'To the people who left',
}
