import type { flags as en } from '../en/flags'
import { plural } from './plural'

export const flags: typeof en = {
  tab: 'Marcas',
  title: (waiting) =>
    plural(
      waiting,
      '1 marca espera a un jefe de cuadrilla',
      `${waiting} marcas esperan a un jefe de cuadrilla`
    ),
  nothingWaits: 'Ninguna marca espera a un jefe de cuadrilla',
  none: 'No hay nada marcado',
  noneNote: 'Cualquiera marca lo que ve, desde la tira de abajo de su teléfono.',
  offline:
    'Sin señal. Ves lo que este dispositivo sabía. Lo que escribas se guarda y sale solo; para cerrar un peligro hace falta señal.',
  hazards: 'Peligros',
  diseases: 'Enfermedad',
  printAll: 'Imprimir las derivaciones',

  states: {
    suspected: 'sospechada',
    confirmed: 'confirmada',
    open: 'cerrado, para el arborista',
  },
  reported: (name, when, ago) => `${name}, ${when}, hace ${ago}`,
  keepOut: (distance) => `Zona cerrada de ${distance}`,
  noKeepOut: 'Solo está cerrado este árbol',
  reading: 'Leyendo las notas…',
  notRead: 'Las notas no se pueden leer sin señal.',
  photo: (tag, no) => `Foto ${no} de ${tag}`,
  photoComing: 'La foto está llegando…',
  photoNotRead: 'La foto no se puede leer sin señal.',

  inside: 'Con aviso de salir',
  wasAt: (tag) => `estaba en ${tag}`,
  wasAtRow: 'estaba recogiendo ramas en una fila',
  isOut: 'está fuera',
  notOut: 'no ha dicho que está fuera',
  seenByMe: 'Vi que salió',
  seenOut: (name) => `He visto salir a ${name}`,

  onMap: 'Mapa',
  refer: 'Hoja de derivación',
  onMapOf: (tag) => `Ver ${tag} en el mapa`,
  confirm: 'Confirmar',
  correct: 'Corregir',
  withdraw: 'Retirar',
  write: 'Anotar qué se hace',
  changeKeepOut: 'Zona cerrada',
  clear: 'Dar por resuelto',
  clearWho: 'Lo da por resuelto el responsable cuando haya venido el arborista.',
  cancel: 'Ahora no',

  confirmTitle: (tag) => `Confirmar enfermedad en ${tag}`,
  confirmNote:
    'Mira el árbol con tus propios ojos. Lo que elijas sustituye a lo avisado; las herramientas usadas allí cuentan como no limpias.',
  confirmSign: 'Elige qué señal.',
  noteForLeads: 'Unas palabras para los jefes de cuadrilla',
  noteHint: 'Qué hacer, cuándo volver a mirar. Nada sobre personas.',
  withdrawTitle: (tag) => `Retirar la marca de ${tag}`,
  withdrawNote: 'El árbol queda abierto otra vez. Quien avisó ve lo que escribas.',
  withdrawWhy: '¿Por qué no es enfermedad?',
  writeTitle: (tag) => `Qué se hace con ${tag}`,
  writeNote:
    'Para jefes de cuadrilla y responsables: a quién se llamó, cuándo viene, cuándo volver a mirar.',
  writeWords: 'En una o dos frases',
  writeFirst: 'Escribe unas palabras.',
  keepOutTitle: (tag) => `Zona cerrada alrededor de ${tag}`,
  keepOutNote:
    'Los árboles de dentro se dejan ya y se avisa a quien está en ellos de que baje. El teléfono no es la alarma: díselo tú.',
  keepOutWider: 'Un jefe de cuadrilla la agranda. Solo un responsable la reduce.',
  keepOutHow: (unit) => `Cuánto alrededor del árbol, en ${unit}`,
  keepOutSource: (distance) =>
    `Si nadie elige son ${distance}: regla de este huerto. Práctica común, sin fuente; un árbol más alto pide más. Mandan las normas locales.`,
  keepOutWrong: (most) => `Escribe una distancia de 0 a ${most}.`,
  keepOutNarrower: (now) => `Ahora es de ${now}. Solo un responsable la reduce.`,
  keepOutSet: 'Fijar la zona cerrada',
  clearTitle: (tag) => `Resolver el peligro de ${tag}`,
  clearNote:
    'Solo cuando haya venido un arborista con licencia. El árbol y su alrededor quedan abiertos otra vez. Se guarda en el registro.',
  clearDone: 'Qué se hizo',
  clearBy: 'Arborista o empresa',
  clearOn: 'Qué día',
  clearAll: 'Di qué se hizo, quién y qué día.',
  clearLater: 'No puede ser un día futuro.',

  metres: 'metros',
  feet: 'pies',
}
