import type { brushRows as en } from '../en/brush-rows'

import { plural } from './plural'

export const brushRows: typeof en = {
  title: 'Leña',
  down: (rows) => plural(rows, 'Hay leña cortada en 1 fila', `Hay leña cortada en ${rows} filas`),
  noneDown: 'No hay leña cortada en ninguna parte',
  hauledRows: (rows) => plural(rows, '1 fila recogida', `${rows} filas recogidas`),
  trees: (lying, hauled) =>
    `${plural(lying, 'bajo 1 árbol', `bajo ${lying} árboles`)}, ${plural(hauled, '1 recogido', `${hauled} recogidos`)}`,
  allHauled: 'recogida',
  haul: (names) => `${names} en ello`,
  nobody: 'no hay nadie',
  goes: { burn: 'quemar', chip: 'triturar', bag: 'a bolsas', pile: 'montón al final de la fila' },
  goesUnknown: 'Nadie ha dicho adónde va',
  whereTo: '¿Adónde va la leña?',
  notSaid: 'Sin decir',
  wholeBlock: 'Lo mismo para todas las filas del bloque',
  sick: (trees) =>
    `Enfermos: ${trees}. Aparte, en bolsas o quemada; nunca triturada entre las filas.`,
  keepAway: (trees) => `Se queda: ${trees}, junto a un peligro`,
  markHauled: 'Está recogida',
  markLying: 'Todavía está ahí',
  pickRow: 'Abre una fila para decir adónde va su leña.',
  endHauling: (name) => `Terminar la fila de ${name}`,
  ofRow: (row) => `Leña de la fila ${row}`,
  handBack: 'Devolverla, nada recogido',
  toRows: 'Filas y leña',
  haulsRow: (row) => `recoge leña, ${row}`,
}
