import type { takeOut as en } from '../en/take-out'
import { plural } from './plural'

export const takeOut: typeof en = {
  title: 'Sacar datos',
  note: 'Árboles, registros o el huerto entero',
  lead: 'Son tuyos. Aquí no cambia nada por sacarlos.',
  needsSignal: 'Sin señal. Los árboles están en este dispositivo; lo demás necesita señal.',

  treesTitle: 'Árboles',
  treesLead: (count) =>
    `${plural(count, '1 árbol', `${count} árboles`)} con todo lo que se sabe de ellos. Trae el archivo otra vez y no cambia nada.`,
  asCsv: 'Árboles en CSV',
  asGeoJson: 'Árboles en GeoJSON',

  recordsTitle: 'Registros',
  recordsLead: 'En estos archivos hay nombres de personas. Guárdalos donde solo tú puedas leerlos.',
  history: 'Historia de los árboles en CSV',
  hours: 'Horas de los voluntarios en CSV',
  historyHeads: [
    'Bloque',
    'Fila',
    'Árbol',
    'Temporada',
    'Ronda',
    'Cuándo',
    'Qué',
    'Hecho %',
    'Quién',
    'Nota',
  ],
  hoursHeads: [
    'Fecha',
    'Ronda',
    'Quién',
    'Horas aquí',
    'Horas de descanso',
    'Árboles hechos',
    'Árboles a medias',
    'Árboles con ayuda suya',
  ],
  results: {
    done: 'hecho',
    begun: 'a medias',
    also_worked: 'también trabajado',
    passed: 'revisado, aprobado',
    reopened: 'revisado, reabierto',
  },

  archiveTitle: 'El huerto entero',
  archiveLead:
    'Un archivo con todo: árboles, personas, rondas, días, fotos. Entra en otro Rowcall, o de vuelta en uno vacío, tal como estaba.',
  archiveNotes: [
    'Los accesos de las personas no van dentro: allí haces un enlace para cada una.',
    'Lleva nombres y teléfonos. Guárdalo donde solo tú puedas leerlo.',
    'Quien fue olvidado no tiene nombre en él. Si alguien se olvida más tarde, este archivo lo nombra aún: bórralo entonces y saca otro.',
  ],
  archive: 'Sacar el archivo',
  reading: (rows) => `Leyendo: ${plural(rows, '1 entrada', `${rows} entradas`)} hasta ahora…`,
  saved: (name) => `${name} está en tus descargas.`,
  moved: 'La gente trabaja más deprisa de lo que se lee. Sácalo cuando termine el turno.',
  failed: 'No se pudo leer entero. No se guardó nada; inténtalo otra vez.',

  files: { trees: 'arboles', history: 'historia', hours: 'horas', archive: 'huerto' },

  inInstead: 'Tengo el archivo de un huerto',
  makeInstead: 'Hacer un huerto nuevo',
  inTitle: 'Traer un huerto',
  inLead:
    'De un archivo que un responsable sacó de otro Rowcall. Quien fue olvidado después está en él con su nombre: olvídalo aquí otra vez.',
  inChoose: 'Elegir el archivo',
  inOf: (name, at) => `${name}, sacado el ${at}`,
  inWho: '¿Quién eres?',
  inWhoHint: 'Sigues como este responsable. Los demás necesitan un enlace nuevo tuyo.',
  inNobody: 'En este archivo no hay ningún responsable. Saca otro.',
  inGo: 'Traerlo',
  inSending: (sent, of) => `Parte ${sent} de ${of}…`,
  notArchive: 'No es el archivo de un huerto. Elige el que termina en «rowcall.gz».',
}
