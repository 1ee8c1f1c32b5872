import type { briefing as en } from '../en/briefing'
import { plural } from './plural'

export const briefing: typeof en = {
  title: 'Charla de seguridad',
  topicOf: (topic, topics) => `Charla, tema ${topic} de ${topics}`,
  progress: (topic, topics) => `Tema ${topic} de ${topics}`,
  nextTopic: 'Tema siguiente',
  toSigning: 'Ir a la firma',
  givenBy: 'La charla la da tu jefe de cuadrilla. El teléfono solo la anota.',
  notGivenYet: 'Aún no se ha dado. Escucha primero a tu jefe de cuadrilla y firma después.',
  givenNote: (name) => `${name} te dio la charla.`,
  version: (version, time) => `Versión ${version}, ${time}.`,
  changedAt: (version, time) =>
    `Versión ${version}, cambiada a las ${time}. Todos firman otra vez.`,
  newTopic: 'Nuevo',
  comeDown: 'Baja ahora y escucha lo que cambió.',
  beforeNextTree: 'Escucha lo que cambió antes de tu próximo árbol.',
  howHeard: '¿Cómo te llegó?',
  heard: 'La escuché',
  readToMe: 'Me la leyeron',
  readMyself: 'La leí',
  chooseHow: 'Di cómo te llegó y firma.',
  sign: 'Firmar la charla',
  signAs: (name, topics) =>
    plural(topics, `como ${name}, 1 tema`, `como ${name}, los ${topics} temas`),
  signed: (time) => `Firmada a las ${time}`,
  none: 'Aún no hay charla escrita. La escribe tu jefe de cuadrilla.',
  localRulesWin: 'Donde las normas locales piden más, valen ellas.',
}
