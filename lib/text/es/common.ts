import type { common as en } from '../en/common'
import { plural } from './plural'

export const common: typeof en = {
  appName: 'Rowcall',
  back: 'Atrás',
  close: 'Cerrar',
  cancel: 'Ahora no',
  save: 'Guardar',
  undo: 'Deshacer',
  yes: 'Sí',
  no: 'No',
  tryAgain: 'Intentar otra vez',
  askLead: 'Pregunta a tu jefe de cuadrilla',
  asking: 'Preguntando…',
  kept: 'Guardado',
  goesOutByItself: 'se envía solo',
  keptOnThisDevice: 'Guardado en este dispositivo. Se envía solo cuando haya señal.',
  doneStep: 'hecho',
  loading: 'Trayendo el huerto. Lo que hagas mientras tanto se guarda.',
  toDevice: 'Este dispositivo, pausas y volver a casa',
  youAre: (name) => `Eres ${name}`,
  you: 'tú',

  language: 'Idioma',
  english: 'English',
  spanish: 'Español',
  theme: 'Claro u oscuro',
  themeDevice: 'Como el dispositivo',
  themeLight: 'Claro, para el sol',
  themeDark: 'Oscuro, para el anochecer',

  strip: {
    label: 'Si algo va mal',
    emergency: 'Emergencia',
    callLead: 'Llamar',
    flag: 'Avisar',
    stopWork: 'Parar todo',
  },

  net: {
    sent: 'Hay señal, todo enviado',
    sending: (count) => `Enviando ${count}`,
    offline: 'Sin señal',
    kept: (count) => plural(count, '1 guardado', `${count} guardados`),
    needsYou: (count) => plural(count, '1 te necesita', `${count} te necesitan`),
  },

  plate: { block: 'Bloque', row: 'Fila', tree: 'Árbol' },
  treeSpoken: (block, row, place) => `${block}, fila ${row}, árbol ${place}`,
  trees: (count) => plural(count, '1 árbol', `${count} árboles`),
  people: (count) => plural(count, '1 persona', `${count} personas`),
  years: (count) => plural(count, '1 año', `${count} años`),
  speciesAndCultivar: (species, cultivar) => `${species} ‘${cultivar}’`,

  status: {
    unpruned: 'sin podar',
    in_progress: 'en curso',
    done: 'hecho',
    disease: 'marcado por enfermedad',
    arborist: 'marcado para un arborista con licencia',
    held_by_me: 'lo tienes tú',
    dealt_to_me: 'asignado a ti',
    closed: 'cerrado',
  },
  legend: 'Qué dicen las marcas',
  zoomIn: 'Más cerca',
  zoomOut: 'Más lejos',
}
