import type { groundTrees as english } from '../en/ground-trees'
import { plural } from './plural'

const trees = (count: number) => plural(count, '1 árbol', `${count} árboles`)

export const groundTrees: typeof english = {
  blockGone: 'No existe ese bloque.',
  back: 'Todos los bloques',
  pickTitle: '¿Qué árboles?',
  picked: (count) => plural(count, '1 árbol elegido', `${count} árboles elegidos`),
  pickNone: 'Elige árboles en el mapa o por filas, o rodéalos.',
  pickAll: 'Elegir todo el bloque',
  pickRange: 'Elegir filas y lugares',
  pickRangeDo: 'Elegir estos',
  dropAll: 'No elegir ninguno',
  draw: 'Rodear',
  endDrawing: 'Terminar de rodear',
  undoStroke: 'Quitar la última línea',
  from: 'De',
  to: 'a',
  rowFrom: 'De la fila',
  rowTo: 'A la fila',
  placeFrom: 'Del lugar',
  placeTo: 'Al lugar',
  noneInRange: 'Ningún árbol tiene esas filas y lugares.',
  mapOf: (name) => `Mapa de ${name}. Las flechas van de árbol en árbol, Intro elige.`,
  setTitle: (count) => plural(count, 'Datos de 1 árbol', `Datos de ${count} árboles`),
  asItIs: 'Como está',
  unknown: 'No se sabe',
  cultivar: 'Variedad',
  size: 'Tamaño',
  sizes: { young: 'joven', small: 'pequeño', medium: 'mediano', large: 'grande' },
  planted: 'Año de plantación',
  height: 'Altura',
  trunk: 'Ancho del tronco',
  clearHint: 'Vacío: como está. Un guion: no se sabe.',
  asksSaw: 'Pide serrucho',
  yes: 'Sí',
  no: 'No',
  life: 'Qué hay ahí',
  lives: {
    standing: 'un árbol vivo',
    dead: 'un árbol muerto',
    removed: 'arrancado',
    gap: 'un lugar vacío',
  },
  yearFault: 'Escribe un año de 1700 a 2200, o un guion.',
  set: (count) => plural(count, 'Aplicar a 1 árbol', `Aplicar a ${count} árboles`),
  nothingToSet: 'No hay nada elegido que aplicar.',
  wasSet: (count) => plural(count, '1 árbol cambiado.', `${count} árboles cambiados.`),
  leaveOut: 'No en esta ronda',
  leaveOutReason: '¿Por qué no?',
  leaveOutHint: 'Lo lee quien llega al árbol.',
  leaveOutReasons: [
    'En formación, lo hace el jefe de cuadrilla',
    'Suelo mojado',
    'Hay pájaros anidando',
    'Se va a arrancar',
  ],
  leaveOutDo: (count) =>
    plural(
      count,
      'Dejar 1 árbol fuera de esta ronda',
      `Dejar ${count} árboles fuera de esta ronda`
    ),
  bringBack: (count) =>
    plural(count, 'Volver a incluir 1 árbol', `Volver a incluir ${count} árboles`),
  wasLeftOut: (count) =>
    plural(
      count,
      '1 árbol queda fuera de esta ronda.',
      `${count} árboles quedan fuera de esta ronda.`
    ),
  wasBroughtBack: (count) =>
    plural(
      count,
      '1 árbol está otra vez en esta ronda.',
      `${count} árboles están otra vez en esta ronda.`
    ),
  leaveOutStay: (count) =>
    plural(count, '1 de ellos sigue en esta ronda:', `${count} de ellos siguen en esta ronda:`),
  close: 'Cerrar',

  addTree: 'Añadir un árbol',
  addTreeDo: 'Añadir este árbol',
  added: 'El árbol está ahí.',
  row: 'Fila',
  place: 'Lugar',
  placeFault: 'Escribe un número de 1 a 9999.',
  taken: (tag) => `Ahí está ${tag}. Da otro lugar.`,
  fillGap: (tag) => `Llenar ${tag}`,
  gapsTitle: (count) => plural(count, '1 lugar vacío', `${count} lugares vacíos`),
  gapsLead: 'Cruces en el mapa. Toca una para plantar allí un árbol.',
  moreGaps: (count) => `Mostrar ${count} más`,
  plantedFault: 'Escribe un año de 1700 a 2200, o déjalo vacío.',
  fillsGap: 'Este lugar está vacío: el árbol queda donde está marcado.',
  putWhere: 'Dónde',
  putBySpacing: 'Por fila y lugar',
  putHere: 'Donde estoy',
  moveTree: 'Mover este árbol',
  moveHere: 'Adonde estoy',
  moveTyped: 'Posición',
  moveDo: 'Moverlo ahí',
  moved: 'El árbol está movido.',

  renumber: 'Numerar filas y lugares',
  renumberNote:
    'Un árbol conserva su número propio y su historia. Su placa cambia: imprime otra vez etiquetas y hojas de derivación.',
  firstRowNo: 'La primera fila es',
  firstPlaceNo: 'El primer lugar es',
  rowsBack: 'Filas desde el otro lado',
  placesBack: 'Lugares desde el otro extremo',
  closeUp: 'Cerrar los números que nadie tiene',
  renumberSee: (from, to) => `${from} pasa a ser ${to}`,
  renumberDo: (count) =>
    count === 0
      ? 'Numerar de nuevo los árboles'
      : plural(count, 'Numerar de nuevo 1 árbol', `Numerar de nuevo ${count} árboles`),
  renumberSame: 'No cambia ningún número.',
  renumberTooHigh: 'Los números llegan hasta 9999.',
  renumbered: 'Los números están cambiados.',

  changeBlock: 'Cambiar el bloque',
  taggedEnd: 'Las placas de fila cuelgan en los',
  taggedEnds: { low: 'números bajos', high: 'números altos' },
  bearingUnknown: 'Vacío: no se sabe.',
  saveBlock: 'Guardar el bloque',
  removeBlock: 'Quitar el bloque',
  removeBlockNote:
    'Para un bloque trazado por error. Se va con sus árboles, mientras no haya nada registrado ahí.',
  removeBlockDo: (name) => `Quitar ${name}`,

  cultivarsTitle: 'Variedades',
  cultivarsLead:
    'Lo que se escribe aquí dice en cada teléfono qué se puede acortar. Lo que nadie sabe queda sin saberse, y entonces no se acorta.',
  noCultivars: 'Todavía no hay variedades.',
  newCultivar: 'Añadir una variedad',
  cultivarName: 'Nombre de la variedad',
  cultivarNameFault: 'Escribe un nombre, 60 letras como mucho.',
  speciesOf: 'Especie',
  habit: 'Da fruto en',
  habits: {
    spur: 'dardos',
    shoot: 'brotes del año pasado',
    both: 'ambos',
    unknown: 'no se sabe',
  },
  buds: 'La mayoría de yemas de un brote están',
  budSites: {
    base: 'cerca de su base',
    middle: 'en sus dos tercios de abajo',
    tip: 'hasta la punta',
    unknown: 'no se sabe',
  },
  saveCultivar: 'Guardar la variedad',
  editCultivar: (name) => `Cambiar ${name}`,
  removeCultivar: 'Quitarla de la lista',
  treesOf: (count) => (count === 0 ? 'ningún árbol' : trees(count)),
}
