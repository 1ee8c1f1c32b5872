/** The day in numbers: hours, trees, answers. */

import { plural } from './plural'

export const record = {
  title: 'The day in numbers',
  show: 'Count up to now',
  total: (people: string, hours: string, trees: string, begun: number) =>
    `${people}, ${hours} worked, ${trees} done${begun > 0 ? `, ${begun} half done` : ''}.`,
  block: (block: string, done: number, begun: number) =>
    `${block}: ${done} done${begun > 0 ? `, ${begun} half done` : ''}.`,
  stop: (from: string, to: string) => `Stop from ${from} to ${to}.`,
  stillOn: 'now',
  answered: (people: number) => plural(people, '1 person answered.', `${people} people answered.`),
  name: 'Name',
  worked: 'Worked',
  done: 'Done',
  begun: 'Half done',
  helped: 'Helped at',
  save: 'Save as a table (CSV)',
  heads: [
    'Date',
    'Name',
    'Arrived',
    'Left',
    'Hours here',
    'Hours on breaks',
    'Hours worked',
    'Trees done',
    'Trees half done',
    'Trees helped at',
    'Trees also worked on',
    'Entered from paper',
  ],
}
