import type { brushRows as en } from '../en/brush-rows'

import { plural } from './plural'

export const brushRows: typeof en = {
  title: 'Ramas',
  down: (rows) =>
    plural(rows, 'Hay ramas cortadas en 1 fila', `Hay ramas cortadas en ${rows} filas`),
  noneDown: 'No hay ramas cortadas en ninguna parte',
  hauledRows: (rows) => plural(rows, '1 fila recogida', `${rows} filas recogidas`),
  trees: (lying, hauled) =>
    `${plural(lying, 'bajo 1 árbol', `bajo ${lying} árboles`)}, ${plural(hauled, '1 recogido', `${hauled} recogidos`)}`,
  allHauled: 'recogidas',
  haul: (names) => `${names} en ello`,
  nobody: 'no hay nadie',
  goes: { burn: 'quemar', chip: 'triturar', bag: 'a bolsas', pile: 'montón al final de la fila' },
  goesUnknown: 'Nadie ha dicho adónde van',
  whereTo: '¿Adónde van las ramas?',
  notSaid: 'Sin decir',
  wholeBlock: 'Lo mismo para todas las filas del bloque',
  sick: (trees) =>
    `Enfermos: ${trees}. Aparte, en bolsas o quemadas; nunca trituradas entre las filas.`,
  keepAway: (trees) => `Se quedan: ${trees}, junto a un peligro`,
  markHauled: 'Están recogidas',
  markLying: 'Todavía están ahí',
  pickRow: 'Abre una fila para decir adónde van sus ramas.',
  endHauling: (name) => `Terminar la fila de ${name}`,
  ofRow: (row) => `Ramas de la fila ${row}`,
  handBack: 'Devolverla, nada recogido',
  toRows: 'Filas y ramas',
  haulsRow: (row) => `recoge ramas, ${row}`,
}
