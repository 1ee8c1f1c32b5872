import type { proposals as en } from '../en/proposals'
import { plural } from './plural'

export const proposals: typeof en = {
  always: 'Se cuenta siempre.',
  off: (what, why) => `Hoy no: ${what} (${why}).`,
  ladders: 'escaleras',
  ladderTrees: (count) =>
    plural(
      count,
      '1 árbol de la ronda pide escalera.',
      `${count} árboles de la ronda piden escalera.`
    ),
  sawTrees: (count) =>
    plural(
      count,
      '1 árbol de la ronda pide serrucho.',
      `${count} árboles de la ronda piden serrucho.`
    ),
  minors: (count) =>
    plural(
      count,
      '1 persona es menor. No nombres a nadie.',
      `${count} personas son menores. No nombres a nadie.`
    ),
  hazard: (sign, trees) => `${sign}: ${trees}.`,
  disease: (block, count) =>
    plural(
      count,
      `${block}: 1 árbol marcado por enfermedad.`,
      `${block}: ${count} árboles marcados por enfermedad.`
    ),
  heatWave: 'Se espera una ola de calor: hoy se vigila de cerca a todos.',
  newInHeat: (count) =>
    plural(
      count,
      '1 persona está en sus primeros 14 días y con calor se la vigila de cerca. No nombres a nadie.',
      `${count} personas están en sus primeros 14 días y con calor se las vigila de cerca. No nombres a nadie.`
    ),
  round: { winter: 'Una ronda de invierno.', summer: 'Una ronda de verano.' },

  notIn: 'Propuestos y fuera de ella',
  take: 'Añadirlo',
  takeTopic: (topic) => `Añadir: ${topic}`,
  newFacts: 'Nuevo desde que se escribió:',
  putIn: (topic) => `Poner lo nuevo: ${topic}`,
  putInShort: 'Ponerlo',
  nowAt: (topic, place, all) => `${topic}: ahora ${place} de ${all}.`,
  optional: (language) => `${language}, si puedes`,

  askTitle: 'Lo que solo tú puedes ver',
  ask: {
    slope: '¿Hay suelo tan empinado o mojado que resbale un pie o una escalera?',
    nests: '¿Alguien vio abejas, avispas o avispones esta mañana?',
    lines: '¿Pasa una línea eléctrica por encima o al lado de estas filas?',
    heat: (c, f) => `¿Hará ${c} °C (${f} °F) o más?`,
    cold: (c, f) => `¿Hace menos de ${c} °C (${f} °F), o hay hielo?`,
    wind: (kmPerH, mph) =>
      `¿Se esperan ráfagas de ${kmPerH} km/h (${mph} mph)? Los árboles pequeños se mueven.`,
    thunder: '¿Puede haber truenos?',
    wet: '¿Están mojados los árboles o las escaleras?',
  },
  yesTo: (question) => `Sí: ${question}`,
  noTo: (question) => `No: ${question}`,

  nothingNew: 'Cambia algo primero.',
  comeDownNote:
    'Llena la pantalla de quien está en un árbol hasta que firme. Su árbol sigue siendo suyo. Grítalo también y mira quién baja: un teléfono no es la alarma.',
  beforeNextNote: 'Siguen en su árbol, y firman antes del próximo.',

  versions: 'Lo que se contó antes',
  version: (version) => `Versión ${version}`,
}
