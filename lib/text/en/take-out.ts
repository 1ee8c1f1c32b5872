/** Taking an orchard's data out: trees, records, and the whole of it. */

import { plural } from './plural'

export const takeOut = {
  title: 'Take out',
  note: 'Trees, records, or the whole orchard',
  lead: 'It is yours. Nothing changes here by taking it out.',
  needsSignal: 'No signal. The trees are on this device; everything else needs signal.',

  treesTitle: 'Trees',
  treesLead: (count: number) =>
    `${plural(count, '1 tree', `${count} trees`)} with all that is known of them. Bring the file in again, and nothing changes.`,
  asCsv: 'Trees as CSV',
  asGeoJson: 'Trees as GeoJSON',

  recordsTitle: 'Records',
  recordsLead: 'Names of people are in these files. Keep them where only you can read them.',
  history: 'History of the trees as CSV',
  hours: 'Hours of the volunteers as CSV',
  historyHeads: [
    'Block',
    'Row',
    'Tree',
    'Season',
    'Round',
    'When',
    'What',
    'Done %',
    'Who',
    'Note',
  ],
  hoursHeads: [
    'Date',
    'Round',
    'Who',
    'Hours here',
    'Hours of breaks',
    'Trees done',
    'Trees half done',
    'Trees helped at',
  ],
  results: {
    done: 'done',
    begun: 'half done',
    also_worked: 'also worked on',
    passed: 'looked over, passed',
    reopened: 'looked over, reopened',
  },

  archiveTitle: 'The whole orchard',
  archiveLead:
    'One file with everything: trees, people, rounds, days, photos. It goes into another Rowcall, or back into an empty one, just as it was.',
  archiveNotes: [
    'Nobody’s sign-in goes with it: there, you make each person a link.',
    'Names and telephone numbers are in it. Keep it where only you can read it.',
    'Whoever was forgotten has no name in it. When somebody is forgotten later, this file still names them: delete it then, and take out a new one.',
  ],
  archive: 'Take the archive out',
  reading: (rows: number) => `Reading: ${plural(rows, '1 entry', `${rows} entries`)} so far…`,
  saved: (name: string) => `${name} is in your downloads.`,
  moved: 'People work faster than it can be read. Take it out when the shift is over.',
  failed: 'It could not be read whole. Nothing was saved; try again.',

  files: { trees: 'trees', history: 'tree-history', hours: 'volunteer-hours', archive: 'orchard' },

  inInstead: 'I have an archive of an orchard',
  makeInstead: 'Make a new orchard',
  inTitle: 'Bring in an orchard',
  inLead:
    'From an archive that a manager took out of another Rowcall. Whoever was forgotten after that is in it by name: forget them again here.',
  inChoose: 'Choose the archive',
  inOf: (name: string, at: string) => `${name}, taken out on ${at}`,
  inWho: 'Who are you?',
  inWhoHint: 'You go on as this manager. Everybody else needs a new link from you.',
  inNobody: 'No manager is in this archive. Take out another one.',
  inGo: 'Bring it in',
  inSending: (sent: number, of: number) => `Part ${sent} of ${of}…`,
  notArchive: 'This file is no archive of an orchard. Choose the one that ends in “rowcall.gz”.',
}
