import type { nextTree as en } from '../en/next-tree'
import { plural } from './plural'

export const nextTree: typeof en = {
  title: 'Tu próximo árbol',
  otherTree: 'Otro árbol',
  other: 'Otro',
  claim: 'Tomar este árbol',
  claimTag: (tag) => `Tomar ${tag}`,
  askingFor: (tag) => `Pidiendo ${tag}…`,

  dealtBy: (name) => `Te lo asignó ${name}`,
  dealt: 'Asignado a ti',
  sameRow: 'El siguiente en la fila donde estás',
  nearest: 'El árbol más cercano que puedes tomar',
  begun: 'Empezado antes, queda el resto',
  diseaseThere: 'Marcado por enfermedad: limpia después las herramientas',
  needsTwo: 'Dos personas: escalera o serrucho',

  paces: (count) => plural(count, 'un paso', `${count} pasos`),
  way: (distance, paces) => `${distance}, ${paces}`,
  wayFor: (distance, paces, minutes) => `${distance}, ${paces}, unos ${minutes}`,
  towards: {
    far: (row) => `Por la fila ${row}, alejándote del extremo con placa`,
    tagged: (row) => `Por la fila ${row}, hacia el extremo con placa`,
    across: (row) => `Justo enfrente, en la fila ${row}`,
  },
  start: {
    tagged_end: 'Ve al extremo con la placa de la fila.',
    far_end: 'Ve al extremo lejano.',
    shorter_row_end: 'Pasa por donde termina una fila más corta.',
  },
  treesOn: (count) => plural(count, 'el primer árbol', `${count} árboles más allá`),
  side: { left: 'a tu izquierda', right: 'a tu derecha', ahead: 'delante de ti' },

  confirmTitle: 'Mira el árbol. ¿Es este?',
  rowAndPlace: (row, place) => `Fila ${row}, el ${place} desde el extremo con placa.`,
  betweenTwo: (tree, others) => `${tree}, entre dos ${others}.`,
  leftAndRight: (tree, left, right) =>
    `${tree}, con ${left} a la izquierda y ${right} a la derecha.`,
  aloneInRow: (tree) => `${tree}, el único de su fila.`,
  gap: 'un hueco',
  gaps: 'huecos',
  rowEnd: 'el final de la fila',
  isIt: '¿Es este?',
  yesClaim: 'Sí, lo tomo',
  notThisOne: 'No, otro árbol',
  withWhom: '¿Quién trabaja contigo?',
  alone: 'Nadie más',

  wasFirst: (name, tag) => `${name} llegó antes. Toma ${tag}.`,
  noneLeft: 'Ahora mismo no queda árbol para ti',
  noneLeftWhy: 'Pide uno a tu jefe de cuadrilla. Mientras tanto, ayuda a alguien cerca.',
  noneBecause: 'Qué lo impide',
  noneAlso: 'Qué más lo impide',
}
