import type { labels as en } from '../en/labels'
import { plural } from './plural'

export const labels: typeof en = {
  title: 'Imprimir etiquetas de árbol',
  link: 'Imprimir etiquetas de árbol',
  lead: 'Cada etiqueta dice bloque, fila y árbol, y lleva un código que abre el árbol en el teléfono que lo escanea.',
  block: 'Bloque',
  fromRow: 'Desde la fila',
  toRow: 'Hasta la fila',
  rowsRange: (from, to) => `Escribe filas de ${from} a ${to}, primero la menor.`,
  noTrees: 'En este bloque no hay ningún árbol en pie. Elige otro.',
  sheet: 'Hoja',
  sheets: {
    a4_cards: 'A4 papel normal, 8 tarjetas de 105 × 74 mm para cortar',
    a4_99x68: 'A4, 8 etiquetas de 99,1 × 67,7 mm',
    a4_70x37: 'A4, 24 etiquetas de 70 × 37 mm',
    a4_64x38: 'A4, 21 etiquetas de 63,5 × 38,1 mm',
    letter_cards: 'US Letter papel normal, 8 tarjetas de 4¼ × 2¾ in para cortar',
    letter_102x51: 'US Letter, 10 etiquetas de 4 × 2 in',
    letter_67x25: 'US Letter, 30 etiquetas de 2⅝ × 1 in',
  },
  first: 'Empezar en la etiqueta',
  firstHint: 'Para una hoja usada en parte: cuenta desde arriba a la izquierda, línea por línea.',
  firstRange: (most) => `Escribe un número de 1 a ${most}.`,
  count: (labels, sheets) =>
    `${plural(labels, '1 etiqueta', `${labels} etiquetas`)} en ${plural(sheets, '1 hoja', `${sheets} hojas`)}`,
  tooMany: (most) => `Imprime como mucho ${most} etiquetas de una vez: elige menos filas.`,
  print: 'Imprimir las etiquetas',
  howTo:
    'Imprime al 100 %, sin márgenes, en el papel que se nombra arriba. Imprime primero una hoja en papel normal y compárala con las etiquetas.',
  preview: 'Las hojas',
  sheetNo: (no) => `Hoja ${no}`,
  row: 'Fila',
  tree: 'Árbol',
  code: (tag) => `Código de ${tag}`,
  trial:
    'Esta dirección es de prueba: los códigos que imprimas ahora solo sirven en esta red y mientras esta máquina conserve su dirección. Imprime las etiquetas definitivas cuando Rowcall tenga un nombre https.',
  onlyHere:
    'Esta dirección solo sirve en esta máquina, así que ningún teléfono abriría estos códigos. Abre Rowcall por la dirección a la que llegan los teléfonos y luego imprime.',
  opensAt: (address) => `Los códigos abren ${address}`,

  poster: 'Imprimir un cartel',
  posterTitle: 'Cartel para entrar',
  posterNote:
    'Cuélgalo en el punto de encuentro. Quítalo cuando acabe el turno: su código acaba entonces.',
  posterHowTo: 'Cabe en A4 y en US Letter.',
  printPoster: 'Imprimir el cartel',
  noLink:
    'Crea antes el enlace para entrar en la página del turno. Su código se guarda en el dispositivo en que se creó.',
  toShift: 'Al turno',
  joinHere: 'Entra en la cuadrilla',
  scan: 'Escanea el código con la cámara del teléfono o abre la dirección.',
  noPhone: '¿Sin teléfono? Díselo al jefe de cuadrilla.',
  ends: (day, from, to) => `${day}, de ${from} a ${to}. Vale hasta que termine el turno.`,
}
