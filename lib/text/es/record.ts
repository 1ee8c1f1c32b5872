import type { record as en } from '../en/record'
import { plural } from './plural'

export const record: typeof en = {
  title: 'El día en números',
  show: 'Contar hasta ahora',
  total: (people, hours, trees, begun) =>
    `${people}, ${hours} de trabajo. Hecho: ${trees}${begun > 0 ? `; a medias: ${begun}` : ''}.`,
  block: (block, done, begun) =>
    `${block}: ${done} ${plural(done, 'hecho', 'hechos')}${begun > 0 ? `, ${begun} a medias` : ''}.`,
  stop: (from, to) => `Parada de ${from} a ${to}.`,
  stillOn: 'ahora',
  answered: (people) => plural(people, 'Respondió 1 persona.', `Respondieron ${people} personas.`),
  name: 'Nombre',
  worked: 'Trabajo',
  done: 'Hechos',
  begun: 'A medias',
  helped: 'Ayudó en',
  save: 'Guardar como tabla (CSV)',
  heads: [
    'Fecha',
    'Nombre',
    'Llegada',
    'Salida',
    'Horas aquí',
    'Horas de pausa',
    'Horas de trabajo',
    'Árboles hechos',
    'Árboles a medias',
    'Árboles con ayuda',
    'También trabajados',
    'Anotado del papel',
  ],
}
