import type { briefing as en } from '../en/briefing'
import { plural } from './plural'

export const briefing: typeof en = {
  title: 'Charla de seguridad',
  progress: (topic, topics) => `Tema ${topic} de ${topics}`,
  nextTopic: 'Tema siguiente',
  yourLeadSays: 'De tu jefe de cuadrilla',
  notGivenYet: 'Aún no se ha dado. Escucha primero a tu jefe de cuadrilla y firma después.',
  given: 'Un jefe de cuadrilla anotó que la escuchaste.',
  version: (version) => `Versión ${version}.`,
  changed: (version) => `Versión ${version}: hay algo nuevo. Todos firman otra vez.`,
  newTitle: (version) => `Qué hay de nuevo desde la versión ${version}`,
  newNote: 'Esa la firmaste. Lee lo nuevo y firma otra vez.',
  added: 'Nuevo',
  reworded: 'Con otras palabras',
  leftOut: 'Ya no se cuenta',
  onlyOrder: 'Los mismos temas en otro orden.',
  readSame: (count) =>
    plural(count, 'Leer también el otro tema', `Leer también los otros ${count} temas`),
  writtenIn: { en: 'Escrito solo en inglés.', es: 'Escrito solo en español.' },
  comeDown: {
    title: 'Baja ahora',
    orders:
      'Pies en el suelo, cuchillas cerradas, sal de debajo del árbol. Después lee lo que cambió.',
    treeStaysYours: (tag) => `${tag} sigue siendo tuyo. Sigues en cuanto firmes.`,
    staysYours: 'La fila sigue siendo tuya. Sigues en cuanto firmes.',
    notRead: 'Aquí no se puede cargar lo que cambió. Ve con tu jefe de cuadrilla y escúchalo.',
    iRead: 'Ya bajé y lo he leído',
    iWasTold: 'Ya bajé y mi jefe de cuadrilla me lo contó',
    signAs: (name, version) => `Firma la versión ${version} como ${name}`,
  },
  howHeard: '¿Cómo te llegó la charla?',
  heard: 'La escuché',
  readToMe: 'Me la leyeron',
  readMyself: 'La leí',
  chooseHow: 'Di cómo te llegó y firma.',
  sign: 'Firmar la charla',
  signAs: (name, topics) =>
    plural(topics, `como ${name}, 1 tema`, `como ${name}, los ${topics} temas`),
  signed: (version) => `Firmada, versión ${version}`,
  goOn: 'Seguir',
  none: 'Aún no hay charla escrita. La escribe tu jefe de cuadrilla.',
  noShift: 'No hay ningún turno programado, así que no hay charla.',
  reading: 'Cargando la charla…',
  notRead:
    'No se pudo cargar la charla. Escucha a tu jefe de cuadrilla; ábrela otra vez donde haya señal.',
}
