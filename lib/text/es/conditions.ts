import type { conditions as en } from '../en/conditions'

export const conditions: typeof en = {
  off: (list) => `Ahora no: ${list}.`,
  offBecause: (what, why) => `${what} (${why})`,
  ladders: 'escaleras',
  mine: 'Tu árbol no se poda ahora. Ni un corte más; déjalo a medias, o pregunta a tu jefe de cuadrilla.',
  excepted: (list) => `Tu jefe de cuadrilla deja podar igualmente ${list}.`,
  cup: (time) => `Bebe un vaso a las ${time}.`,
  restNow: 'Descansa ya a la sombra, diez minutos.',
  restAt: (time) => `Descansa a la sombra a las ${time}, diez minutos.`,
  unknown: 'Nadie ha anotado el tiempo últimamente. Tu jefe de cuadrilla mira y decide.',
}
