import type { groundNew as english } from '../en/ground-new'
import { plural } from './plural'

const trees = (count: number) => plural(count, '1 árbol', `${count} árboles`)
const rows = (count: number) => plural(count, '1 fila', `${count} filas`)

export const groundNew: typeof english = {
  newTitle: 'Bloque nuevo',
  newNamed: (name) => `Bloque nuevo: ${name}`,
  newLead: 'Ve a las esquinas, tócalas en el mapa o escríbelas. En el orden en que las encuentras.',
  name: 'Nombre del bloque',
  nameHint: 'Como lo llama la cuadrilla.',
  code: 'Letras de sus placas',
  codeHint: 'Hasta 4. Están en cada etiqueta.',
  species: 'Qué crece ahí',
  speciesHint: 'Los árboles sueltos se cambian después.',
  cornersTitle: 'Esquinas',
  corner: (letter) => `Esquina ${letter}`,
  cornerHint: 'Latitud, longitud',
  addCorner: 'Añadir una esquina',
  removeCorner: (letter) => `Quitar la esquina ${letter}`,
  hereIsCorner: 'Estoy en la próxima esquina',
  finding: 'Buscando dónde estás. No te muevas…',
  found: (within) => `Tomada, con un margen de ${within}.`,
  foundRough: (within) =>
    `Tomada, pero con un margen de ${within}. No te muevas durante un minuto y tómala otra vez, o arrástrala.`,
  noPlace: {
    insecure:
      'Esta página llegó sin https, y así el teléfono no dice a nadie dónde está. Escribe las esquinas, o abre Rowcall por https.',
    denied:
      'El teléfono no puede decir dónde está. Permítelo en sus ajustes, o escribe las esquinas.',
    failed: 'El teléfono no sabe dónde está. Ve a cielo abierto, o escribe las esquinas.',
  },
  cornerFaults: {
    unreadable: 'Escribe latitud y longitud, como 41,20418; −2,81774.',
    out_of_range: 'La latitud es como mucho 90, la longitud como mucho 180 grados.',
    swapped: 'La latitud va primero. Escribe el segundo número antes del primero.',
  },
  outline: {
    too_few_corners: 'Un bloque tiene al menos tres esquinas.',
    corner_twice: (a, b) => `${a} y ${b} son la misma esquina. Quita una.`,
    crosses_itself: (a, b) =>
      `El contorno se cruza: el lado que sale de ${a} pasa por encima del que sale de ${b}.`,
    too_wide: (corner, far) =>
      `La esquina ${corner} está a ${far} de otra. Mira otra vez sus números; un bloque mide como mucho 5 km.`,
    no_area: 'Las esquinas están en una línea. Mueve una.',
  },
  inOrder: 'Poner las esquinas en orden',
  seemsSwapped:
    'Donde están estas esquinas no hay ningún huerto de esta zona horaria; con la latitud y la longitud cambiadas, sí.',
  exchange: 'Cambiar latitud por longitud',
  farAway: (far) => `Esto está a ${far} de tus otros árboles. ¿Son correctas las esquinas?`,

  pattern: 'Cómo están los árboles',
  patterns: {
    rectangular: 'En filas',
    square: 'En cuadro',
    offset: 'Filas alternas',
    hexagonal: 'Hexagonal',
  },
  rowSpacing: 'Entre filas',
  treeSpacing: 'Entre árboles de una fila',
  treeSpacingOnly: 'Entre árboles',
  bearing: 'Las filas van hacia',
  bearingIs: (side) => `hacia el ${side}`,
  along: (a, b) => `Como de ${a} a ${b}`,
  headland: 'Libre en el borde',
  headlandHint: 'Sitio para girar, en todos los lados.',
  firstRow: 'Primera fila desde el borde',
  firstRowHint: 'Vacío: como el borde.',
  less: (what) => `Menos: ${what}`,
  more: (what) => `Más: ${what}`,
  range: (least, most) => `Escribe un número de ${least} a ${most}.`,
  wideRows: (typed, inFeet) => `${typed} entre filas es mucho. Si contaste en pies, son ${inFeet}.`,
  narrowRows: (typed, inMetres) =>
    `${typed} entre filas es poco. Si contaste en metros, son ${inMetres}.`,
  numbers: 'Números',
  rowsFrom: 'La fila 1 está al',
  placesFrom: 'El lugar 1 está al',
  serpentine: 'Contar de vuelta una fila sí y otra no, como se camina',

  tools: 'Qué hace un dedo en el mapa',
  toolCorners: 'Mover esquina',
  toolPlace: 'Dejar un lugar vacío',
  toolArea: 'Dejar una zona vacía',
  clearEmpty: 'Llenar otra vez todos los lugares',
  mapLabel: (sum) => `Mapa del bloque nuevo. ${sum}`,
  mapEmpty: 'Escribe la primera esquina o ve a ella: el mapa empieza ahí.',
  sums: { rows: 'filas', trees: 'árboles', area: 'superficie', inRow: 'árboles por fila' },
  fromTo: (least, most) => (least === most ? String(most) : `${least} a ${most}`),
  perHectare: (count) => `${count} árboles por hectárea`,
  perAcre: (count) => `${count} árboles por acre`,
  bySpacing: 'Solo por la distancia. Con bordes y cabeceras caben menos.',
  hectares: (number) => `${number} ha`,
  acres: (number) => `${number} ac`,
  stayEmpty: (count) =>
    plural(
      count,
      '1 lugar queda vacío. Añade ahí un árbol más tarde.',
      `${count} lugares quedan vacíos. Añade ahí árboles más tarde.`
    ),
  make: (rowCount, treeCount) => `Hacer ${rows(rowCount)}, ${trees(treeCount)}`,
  layingOut: 'Calculando…',
  makeNothing: 'Hacer el bloque',
  lacks: {
    corners: 'Faltan esquinas: al menos tres.',
    fault: 'Algo de arriba no puede ser. Ahí dice qué escribir.',
    name: 'El bloque todavía no tiene nombre o letras.',
    codeTaken: 'Otro bloque tiene estas letras. Elige otras.',
    no_room: 'No cabe ningún árbol. Menos sitio en el borde, o menos entre árboles.',
    too_many_trees: (about, most) =>
      `Serían unos ${about} árboles. En un bloque caben como mucho ${most}: mira las esquinas y las distancias.`,
  },
}
