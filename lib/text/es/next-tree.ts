import type { nextTree as en } from '../en/next-tree'
import { plural } from './plural'

export const nextTree: typeof en = {
  title: 'Tu próximo árbol',
  otherTree: 'Otro árbol',
  other: 'Otro',
  claim: 'Tomar este árbol',
  claimTag: (tag) => `Tomar ${tag}`,
  askingFor: (tag) => `Pidiendo ${tag}…`,
  askingKept: 'Guardado. Te avisamos cuando llegue la respuesta.',

  dealtBy: (name) => `Te lo asignó ${name}`,
  dealt: 'Asignado a ti',
  sameRow: 'El siguiente en la fila donde estás',
  nearest: 'El árbol más cercano que puedes tomar',
  oneOfDeals: (count) => plural(count, '1 árbol asignado a ti', `${count} árboles asignados a ti`),
  begun: 'Empezado antes, queda el resto',
  diseaseThere: 'Marcado por enfermedad: limpia después las herramientas',
  needsTwo: 'Dos personas: escalera o serrucho',

  paces: (count) => plural(count, 'un paso', `${count} pasos`),
  way: (distance, paces) => `${distance}, unos ${paces}`,
  noWay: 'Sin posición medida. Cuenta los árboles desde el extremo marcado.',
  upRow: (row) => `Por la fila ${row}, alejándote del extremo marcado`,
  downRow: (row) => `Por la fila ${row}, hacia el extremo marcado`,
  crossTo: (row) => `Cruza hasta la fila ${row}`,
  alongRow: (row, trees) =>
    plural(trees, `Por la fila ${row}, un árbol`, `Por la fila ${row}, ${trees} árboles`),
  onYourLeft: 'a tu izquierda',
  onYourRight: 'a tu derecha',
  youAreHere: 'Estás aquí',

  confirmTitle: 'Mira el árbol. ¿Es este?',
  rowAndPlace: (row, place) => `Fila ${row}, el ${place} desde el extremo marcado.`,
  standsBetween: (tree, others) => `${tree}, entre dos ${others}.`,
  standsBetweenTwo: (tree, before, after) => `${tree}, entre ${before} y ${after}.`,
  standsNextTo: (tree, other) => `${tree}, junto a ${other}.`,
  standsAlone: (tree) => `${tree}.`,
  isIt: '¿Es este?',
  yesClaim: 'Sí, lo tomo',
  notThisOne: 'No, otro árbol',
  withWhom: '¿Quién trabaja contigo?',
  alone: 'Nadie más',

  wasFirst: (name, tag) => `${name} llegó antes. Toma ${tag}.`,
  noneLeft: 'Ahora mismo no queda árbol para ti',
  noneLeftWhy: 'Ayuda a alguien cerca o pregunta a tu jefe de cuadrilla.',
  noneBecause: 'Qué lo impide',
  haulBrush: 'Sacar ramas de esta fila',
}
