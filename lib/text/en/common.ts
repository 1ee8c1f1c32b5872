/** Words that many screens share. */

import { plural } from './plural'

export const common = {
  appName: 'Rowcall',
  back: 'Back',
  toWork: 'Back to work',
  close: 'Close',
  cancel: 'Not now',
  save: 'Save',
  undo: 'Undo',
  yes: 'Yes',
  no: 'No',
  tryAgain: 'Try again',
  askLead: 'Ask your lead',
  asking: 'Asking…',
  kept: 'Kept',
  goesOutByItself: 'goes out by itself',
  keptOnThisDevice: 'Kept on this device. Goes out by itself when there is signal.',
  doneStep: 'done',
  loading: 'Fetching the orchard. What you do meanwhile is kept.',
  toDevice: 'This device, breaks and going home',
  toMap: 'Map',
  youAre: (name: string) => `You are ${name}`,
  you: 'you',

  language: 'Language',
  english: 'English',
  spanish: 'Español',
  theme: 'Light or dark',
  themeDevice: 'Like the device',
  themeLight: 'Light, for sun',
  themeDark: 'Dark, for dusk',

  strip: {
    label: 'If something is wrong',
    emergency: 'Emergency',
    callLead: 'Call lead',
    flag: 'Flag',
    stopWork: 'Stop work',
  },

  net: {
    sent: 'Signal, everything sent',
    sending: (count: number) => `Sending ${count}`,
    offline: 'No signal',
    kept: (count: number) => `${count} kept`,
    needsYou: (count: number) => plural(count, '1 needs you', `${count} need you`),
  },

  plate: { block: 'Block', row: 'Row', tree: 'Tree' },
  treeSpoken: (block: string, row: number, place: number) => `${block}, row ${row}, tree ${place}`,
  trees: (count: number) => plural(count, '1 tree', `${count} trees`),
  people: (count: number) => plural(count, '1 person', `${count} people`),
  years: (count: number) => plural(count, '1 year', `${count} years`),
  speciesAndCultivar: (species: string, cultivar: string) => `${species} ‘${cultivar}’`,

  status: {
    unpruned: 'unpruned',
    in_progress: 'in progress',
    done: 'done',
    disease: 'flagged for disease',
    arborist: 'flagged for a licensed arborist',
    held_by_me: 'held by you',
    dealt_to_me: 'dealt to you',
    dealt: 'dealt',
    closed: 'closed',
  },
  legend: 'What the marks mean',
  zoomIn: 'Closer',
  zoomOut: 'Further away',
}
