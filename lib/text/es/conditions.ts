import type { conditions as en } from '../en/conditions'

export const conditions: typeof en = {
  off: (list) => `Ahora no: ${list}.`,
  offBecause: (what, why) => `${what} (${why})`,
  ladders: 'escaleras',
  mine: 'Tu árbol no se poda ahora. Ni un corte más; déjalo a medias, o pregunta a tu jefe de cuadrilla.',
  light: (left, set) => `Quedan ${left} de luz, hasta las ${set}.`,
  sunrise: (time) => `El sol sale a las ${time}.`,
  byLamps: 'Tu jefe de cuadrilla deja seguir con lámparas: pies en el suelo, sin escaleras.',
  offLadder: 'Baja de la escalera: se va la luz.',
  lastCut: 'Empieza tu último corte. Lo que falte queda a medias.',
  comeIn: 'Ni un corte más. Déjalo a medias y sal de las filas.',
  excepted: (list) => `Tu jefe de cuadrilla deja podar de todos modos ${list}.`,
  cup: (time) => `Bebe un vaso a las ${time}.`,
  restNow: 'Descansa ya a la sombra, diez minutos.',
  restAt: (time) => `Descansa a la sombra a las ${time}, diez minutos.`,
  unknown: 'Hace rato que nadie anota qué tiempo hace. Tu jefe de cuadrilla mira y decide.',
}
