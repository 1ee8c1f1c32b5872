import type { mapTools as en } from '../en/map-tools'
import { plural } from './plural'

export const mapTools: typeof en = {
  draw: 'Rodear',
  drawing: 'Rodea los árboles con un dedo, o toca esquinas',
  undoStroke: 'Quitar la última línea',
  endDrawing: 'Rodeados',

  filter: 'Filtrar',
  filterOn: (count) => plural(count, 'Filtrar, 1 elección', `Filtrar, ${count} elecciones`),
  filterTitle: '¿Qué árboles?',
  blocks: 'Bloques',
  species: 'Clases de árboles',
  statuses: 'Cómo están',
  shows: (shown, all) => `Se ven ${shown} de ${all} árboles.`,
  showsAll: (all) => `Se ven los ${all} árboles.`,
  showAll: 'Ver todos',
  stillThere:
    'Lo que queda fuera sigue en el mapa, tenue. No se elige al tocar una fila ni al rodear.',
  shown: {
    unpruned: 'sin podar',
    held: 'en manos de alguien',
    begun: 'a medias',
    done: 'hechos',
    dealt: 'asignados',
    disease: 'marcados por enfermedad',
    arborist: 'marcados para un arborista con licencia',
    closed: 'cerrados',
  },

  find: 'Buscar un árbol',
  findLabel: 'Bloque, fila, árbol',
  findHint: 'Como en su placa: S 7 14. O 7/14, o solo su número.',
  findGo: 'Ver dónde está',
  notRead: 'Eso no nombra ningún árbol. Escribe bloque, fila y árbol, como S 7 14.',
  noNumber: (no) => `Ningún árbol tiene el número ${no}.`,
  noneThere: (row, place) => `Ningún bloque tiene un árbol ${place} en la fila ${row}.`,
  inWhichBlock: '¿En qué bloque?',

  table: 'Árboles',
  tableHint:
    'Las flechas mueven, Intro abre un árbol, espacio lo elige, mayúsculas con flechas eligen de uno a otro.',
  asTable: 'Tabla',
  show: 'Ver',
  showTitle: 'Qué ver',
  sortBy: 'Ordenar por',
  columns: { tree: 'Árbol', kind: 'Clase', status: 'Estado', who: 'Quién' },
  dealtTo: (names) => `para ${names}`,
  minutes: (names, duration) => `${names}, ${duration}`,

  photo: 'Una foto para dibujar encima',
  photoHint: 'Si ayuda. Lo que dibujes queda en ella.',
  drawOnPhoto:
    'Dibuja a lo largo de cada rama que se va. Empieza donde va el corte: ahí sale una raya.',
  photoToDrawOn: (strokes) =>
    `Foto del árbol con ${plural(strokes, '1 línea dibujada', `${strokes} líneas dibujadas`)}`,
  markAgain: 'Marcarlos de nuevo',
  unmark: 'Quitar la marca',

  dealtLeft: (count) => plural(count, 'le queda 1 árbol', `le quedan ${count} árboles`),
}
