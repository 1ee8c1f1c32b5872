import type { brush as en } from '../en/brush'

import { plural } from './plural'

export const brush: typeof en = {
  row: (block, row) => `la fila ${block} ${row}`,
  instead: 'Mejor recoger ramas',
  title: (row) => `Recoge las ramas de ${row}`,
  none: 'No hay ramas por recoger',
  noneNote: 'En ninguna fila hay ramas cortadas, o ya hay alguien. Pregunta a tu jefe qué sigue.',
  lies: (trees) => plural(trees, 'Hay ramas bajo 1 árbol', `Hay ramas bajo ${trees} árboles`),
  goes: {
    burn: 'Al lugar donde se queman',
    chip: 'Al lugar donde se trituran. La trituradora no es tarea tuya.',
    bag: 'A las bolsas',
    pile: 'Al montón del final de la fila',
  },
  goesUnknown: 'Nadie ha dicho adónde van. Pregunta a tu jefe.',
  sick: (trees) =>
    `Las ramas de ${trees} aparte, en bolsas o quemadas. Nunca se trituran entre las filas ni se dejan en montones.`,
  keepAway: (trees) =>
    `No te acerques a ${trees}: hay un peligro marcado. Esas ramas se quedan donde están.`,
  overhead: (who, tree) =>
    `${who} trabaja con escalera o serrucho en ${tree}. Quédate lejos hasta que baje y avisa antes de pasar.`,
  haulNear: (names) =>
    `Recogiendo ramas aquí o en la fila de al lado: ${names}. Nadie se queda debajo mientras cortas: avisa y espera respuesta.`,
  gloves:
    'Guantes y gafas puestos. Lleva por delante el lado grueso, y nadie arrastra solo lo que pide dos.',
  take: 'Tomar esta fila',
  join: (name) => `Unirte a ${name}`,
  with: (names) => `Recogiendo aquí: ${names}`,
  otherRows: 'Otras filas',
  toTrees: 'A los árboles',
  needsSignal: 'Para tomar una fila hace falta señal. Lo que tienes lo puedes terminar sin ella.',

  inHand: (row) => `Recoges ${row}`,
  stillLies: '¿Hasta dónde has llegado?',
  all: 'Están todas recogidas',
  part: 'Solo una parte',
  nothing: 'Todavía nada',
  from: 'Del árbol',
  to: 'al árbol',
  inThisRow: 'En esta fila',
  leaveRow: 'Me voy, los demás siguen',
  holdsRow: 'Estás recogiendo una fila',
  holdsRowNote: 'Di primero hasta dónde has llegado. Luego toma un árbol.',
  backToIt: 'Volver a tu fila',
  finish: 'La fila está recogida',
  handBack: 'Devolverla así',
}
