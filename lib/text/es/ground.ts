import type { ground as english } from '../en/ground'
import { groundNew } from './ground-new'
import { groundTrees } from './ground-trees'
import { plural } from './plural'

const trees = (count: number) => plural(count, '1 árbol', `${count} árboles`)
const rows = (count: number) => plural(count, '1 fila', `${count} filas`)

export const ground: typeof english = {
  title: 'Bloques y árboles',
  roomNote: (blocks) =>
    blocks === 0 ? 'Traza el primero' : plural(blocks, '1 bloque', `${blocks} bloques`),
  onlyManager: 'Solo los responsables cambian el terreno',
  onlyManagerNote: 'Un jefe de cuadrilla deja árboles fuera de una ronda en el mapa, y los asigna.',
  toMap: 'Al mapa',
  noBlocks:
    'Todavía no hay ningún bloque. Traza uno desde sus esquinas, o trae una lista de árboles.',
  newBlock: 'Trazar un bloque',
  bringIn: 'Traer una lista',
  labels: 'Imprimir etiquetas',
  cultivars: 'Variedades',
  open: 'Árboles de este bloque',
  made: (name, count) => `${name} está trazado: ${trees(count)}.`,
  inRows: (inRows, standing) => `${rows(inRows)}, ${trees(standing)}`,
  gaps: (count) => plural(count, '1 lugar vacío', `${count} lugares vacíos`),
  spacing: (between, along) => `${between} entre filas, ${along} en la fila`,

  north: 'N',
  ...groundNew,
  ...groundTrees,
}
