import type { lookOver as en } from '../en/look-over'

import { plural } from './plural'

export const lookOver: typeof en = {
  title: (count) => plural(count, '1 árbol por revisar', `${count} árboles por revisar`),
  none: 'Nada por revisar',
  noneNote: 'Todos los árboles hechos están aprobados, o trabajaste tú en ellos.',
  whichNote:
    'Primero un árbol de cada persona, la más nueva antes que nadie; luego uno de cada cinco al azar.',
  allSeen: 'De todos se ha revisado un árbol',
  allSeenNote: 'El resto está en la lista. Abre el que quieras.',
  prunedBy: (names, time) => `${names}, hecho a las ${time}`,
  firstOf: (name) => `De ${name} no se ha revisado nada en esta ronda`,
  drawn: 'Salió al azar',
  chosen: 'Lo elegiste tú',
  before: (found) => `Reabierto antes: ${found}`,
  pass: 'Aprobar',
  reopen: 'Reabrir',
  reopenTitle: (tag) => `Reabrir ${tag}`,
  reopenNote:
    'Vuelve a estar empezado y va a quien lo terminó, si está aquí. Esa persona lee por qué.',
  note: '¿Qué falta por hacer?',
  noteHint: 'Si quieres. Lo lee quien venga al árbol.',
  onMap: 'En el mapa',
  yours: 'Trabajaste en este árbol. Lo revisa otro jefe de cuadrilla.',
  passed: 'Revisado y aprobado',
  reopened: (found, name) => `Reabierto por ${name}: ${found}`,
  listOf: 'Hechos y sin revisar, por persona',
  proposed: 'propuesto',
}
