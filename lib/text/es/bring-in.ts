import type { bringIn as en } from '../en/bring-in'
import { plural } from './plural'

const trees = (count: number) => plural(count, '1 árbol', `${count} árboles`)
const rows = (count: number) => plural(count, '1 fila', `${count} filas`)

export const bringIn: typeof en = {
  title: 'Traer árboles',
  note: 'De una tabla o de un archivo GeoJSON',
  lead: 'De una tabla o de un archivo GeoJSON. No entra nada que no hayas visto antes.',
  choose: 'Elegir un archivo',
  chooseHint:
    'CSV de cualquier hoja de cálculo (coma, punto y coma o tabulador) o GeoJSON. O suéltalo aquí.',
  needs:
    'Una línea por árbol. Hace falta la fila; el bloque, el lugar, la especie y lo demás, si lo tienes.',
  paste: 'O pega aquí la tabla',
  pasteHint: 'Copiada de una hoja de cálculo, con los nombres de las columnas arriba.',
  readPasted: 'Leer esto',
  pastedName: 'Tabla pegada',
  another: 'Otro archivo',
  notRead: 'No se puede leer este archivo. Elígelo otra vez.',
  kept: 'Guardado en este dispositivo hasta que entre.',

  understood: (name, count) => `${name}: ${rows(count)}`,
  kinds: {
    geojson: 'un archivo GeoJSON',
    ',': 'separada por comas',
    ';': 'separada por punto y coma',
    '\t': 'separada por tabuladores',
    '|': 'separada por barras verticales',
  },

  columnsTitle: 'Qué es cada columna',
  columnsLead: 'Propuesto según los nombres. Cambia lo que no sea así.',
  noName: (place) => `Columna ${place}, sin nombre`,
  such: (values) => `por ejemplo ${values}`,
  allEmpty: 'vacía',
  leftOut: 'No se usa',
  unit: 'Medido en',
  units: { mm: 'milímetros', cm: 'centímetros', m: 'metros', in: 'pulgadas', ft: 'pies' },
  columns: {
    block: 'Bloque',
    block_name: 'Nombre del bloque',
    row: 'Fila',
    place: 'Lugar en la fila',
    species: 'Especie',
    cultivar: 'Variedad',
    habit: 'Hábito de fructificación',
    buds: 'Dónde están las yemas de fruto',
    planted_year: 'Plantado en',
    trunk_cm: 'Diámetro del tronco',
    height_cm: 'Altura',
    size: 'Tamaño',
    asks_saw: 'Pide serrucho',
    life: 'En pie, muerto, arrancado o hueco',
    hazard: 'Peligro conocido',
    lat: 'Latitud',
    lon: 'Longitud',
    lat_lon: 'Latitud y longitud juntas',
  },
  noPlaces:
    'Ninguna columna es el lugar: los árboles de una fila se cuentan desde el 1 en el orden del archivo.',
  noBlocks: 'Ninguna columna es el bloque: todos los árboles van a uno.',
  onlyBlock: 'Sus letras en la placa',
  writeCode: 'Escribe de 1 a 4 letras o cifras que no tenga otro bloque.',

  speciesTitle: '¿Qué especie es esta?',
  speciesLead: 'El archivo tiene palabras que aquí no se conocen.',
  chooseSpecies: 'Sin elegir',

  blocksTitle: 'Bloques',
  newBlock: 'nuevo',
  code: 'Letras en la placa',
  where: 'Dónde está',
  whereGrid: 'No se sabe: una cuadrícula',
  whereFirst: 'Desde su primer árbol',
  gridNote: 'Se dibuja como una cuadrícula, con la nota «sin medir».',
  firstLat: 'Primer árbol, latitud',
  firstLon: 'Primer árbol, longitud',
  bearing: 'Rumbo de las filas (°)',
  bearingHint: 'La brújula del árbol 1 al 2; la fila 2 queda a la derecha.',
  rowSpacing: (unit) => `Entre filas (${unit})`,
  treeSpacing: (unit) => `Entre árboles (${unit})`,
  writeWithin: (least, most) => `Escribe un número de ${least} a ${most}.`,
  positions: 'Las posiciones están en el archivo.',

  comesIn: 'Qué entra',
  newTrees: (count) => plural(count, '1 árbol nuevo', `${count} árboles nuevos`),
  newBlocks: (count) => plural(count, '1 bloque nuevo', `${count} bloques nuevos`),
  newCultivars: (count) => plural(count, '1 variedad nueva', `${count} variedades nuevas`),
  sameTrees: (count) => `${trees(count)} sin cambios`,
  differing: (count) => `${trees(count)} con otros datos`,
  notSurveyed: (count) => `${trees(count)} sin posición`,
  stayOutside: (count) =>
    plural(count, '1 fila que está mal queda fuera', `${count} filas que están mal quedan fuera`),
  cultivarsTold: (count) =>
    plural(
      count,
      '1 variedad tiene otras yemas de fruto en el archivo',
      `${count} variedades tienen otras yemas de fruto en el archivo`
    ),
  cultivarsLead:
    'Dónde están decide qué se puede cortar. Se quedan como están, menos las que marques.',
  changeCultivars: (count) => plural(count, 'Cambiar 1 variedad', `Cambiar ${count} variedades`),

  wrongTitle: (count) => `${rows(count)} por corregir`,
  wrongLead:
    'Corrígelas en el archivo y elígelo otra vez. Mientras tanto no entra nada, salvo que las dejes fuera.',
  leaveOut: (count) =>
    plural(
      count,
      'Dejar fuera la fila que está mal y traer las demás',
      `Dejar fuera las ${count} filas que están mal y traer las demás`
    ),
  leaveOutHint:
    'Lo que queda fuera no está en ningún mapa ni lista. Descárgalo antes; de dos en un mismo lugar entra la primera.',
  cannotLeaveOut:
    'Los árboles de una fila se cuentan en el orden del archivo. Una fila que se deja fuera daría su número al árbol siguiente: corrígela.',
  atFeature: (no) => `Árbol ${no} del archivo`,
  moreWrong: (count) => `y ${rows(count)} más, en el archivo con lo que está mal`,
  download: 'Descargar lo que está mal',
  fileOfErrors: 'por-corregir.csv',
  headLine: 'Línea',
  headProblem: 'Qué está mal y qué hacer',
  tooMany: 'Es más de lo que entra de una vez. Divide el archivo por bloques.',

  changesTitle: (count) => `${trees(count)} con otros datos`,
  changesLead: 'Se quedan como están, salvo los que marques.',
  tickAll: 'Marcar todos',
  tickNone: 'No marcar ninguno',
  ticked: (count, of) => `${count} de ${of} marcados`,
  showMore: (count) => `Mostrar ${count} más`,
  fields: {
    species: 'especie',
    cultivar: 'variedad',
    plantedYear: 'plantado en',
    trunkCm: 'tronco',
    heightCm: 'altura',
    sizeClass: 'tamaño',
    asksSaw: 'pide serrucho',
    life: 'estado',
    position: 'posición',
  },
  sizes: { young: 'joven', small: 'pequeño', medium: 'mediano', large: 'grande' },
  lives: { standing: 'en pie', dead: 'muerto', removed: 'arrancado', gap: 'hueco' },
  nothing: 'no se sabe',

  map: 'En el mapa',
  mapLabel: 'Mapa de lo que entra. Las flechas van de árbol en árbol.',

  bringIn: (count) => `Traer ${trees(count)}`,
  bringInAndChange: (count, changed) => `Traer ${trees(count)} y cambiar ${changed}`,
  change: (count) => `Cambiar ${trees(count)}`,
  bringing: 'Trayendo…',
  whyWrong: (count) => `Antes hay que corregir ${rows(count)}.`,
  whySpecies: () => 'Di antes qué especie es cada palabra.',
  whyBlocks: () => 'Algunos campos de los bloques no están bien todavía.',
  whyNothing: () => 'Todo lo de este archivo ya está, tal cual.',
  whyTick: () => 'Ningún árbol es nuevo. Marca cuáles de los otros cambian.',

  done: (count, changed) =>
    changed === 0
      ? `${plural(count, 'Ha entrado 1 árbol.', `Han entrado ${count} árboles.`)}`
      : `Traído: ${trees(count)}; cambiado: ${changed}.`,
  onMap: 'Verlos en el mapa',
  nextRound: 'Rondas y turnos',
  moreTrees: 'Traer más',
  hazardsTitle: (count) =>
    plural(count, '1 árbol con un peligro conocido', `${count} árboles con un peligro conocido`),
  hazardsLead:
    'Lo dice el archivo; hoy no lo ha mirado nadie. Una marca cierra el árbol y lo que está cerca hasta que venga un arborista con licencia.',
  flagThem: (count) => plural(count, 'Marcar 1 árbol', `Marcar ${count} árboles`),
  notNow: 'No marcar ninguno',
  flagged: (count) => plural(count, '1 árbol está marcado.', `${count} árboles están marcados.`),
}
