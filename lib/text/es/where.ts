import type { where as en } from '../en/where'
import { plural } from './plural'

export const where: typeof en = {
  title: '¿Dónde estoy?',
  find: 'Buscarme con este dispositivo',
  stop: 'Dejar de buscar',
  looking: 'Buscando este dispositivo…',
  stays: 'Dónde estás se queda en este dispositivo. No se envía a nadie.',
  at: (tag) => `Estás en ${tag}, por lo que sabe este dispositivo.`,
  oneOf: (count) =>
    plural(
      count,
      'Estás cerca de un árbol. Lee su placa.',
      `Puede ser cualquiera de ${count} árboles. Lee la placa.`
    ),
  ofMany: (count) => `Puede ser cualquiera de más de ${count} árboles. Lee la placa.`,
  unsure: (distance) =>
    `Este dispositivo puede equivocarse en ${distance}. Bajo las copas suele equivocarse en más.`,
  elsewhere: (distance, wind, tag) =>
    `No estás entre los árboles: el más cercano, ${tag}, está a ${distance} al ${wind}.`,
  noPlaces:
    'Ningún árbol tiene aún un lugar en el mapa, así que nadie puede decir en cuál estás. Lee la placa.',
  near: 'Los árboles más cercanos',
  away: (distance, paces, wind) => `${distance}, ${paces}, al ${wind}`,
  mayBe: 'puede ser este',
  reckoned: 'Algunos lugares se calculan con los marcos del bloque, no se han medido.',
  insecure:
    'Esta página no tiene dirección https, y un navegador solo dice a páginas https dónde está el dispositivo. Lee la placa y di dónde estás.',
  noWay: 'Este navegador no dice dónde está el dispositivo. Lee la placa y di dónde estás.',
  denied: 'Esta página no tiene permiso para saber dónde está el dispositivo.',
  deniedDo:
    'Pulsa el signo junto a la dirección, arriba, permite la ubicación para esta página e inténtalo de nuevo. Si no basta, permítela para el navegador en los ajustes del dispositivo.',
  lost: 'El dispositivo no sabe dónde está. Sal de debajo de las copas, espera medio minuto e inténtalo de nuevo.',
  again: 'Intentar de nuevo',
  winds: {
    n: 'norte',
    ne: 'noreste',
    e: 'este',
    se: 'sureste',
    s: 'sur',
    sw: 'suroeste',
    w: 'oeste',
    nw: 'noroeste',
  },
  me: 'Tú',
  plan: 'Plano de los árboles a tu alrededor, con el norte arriba',
}
