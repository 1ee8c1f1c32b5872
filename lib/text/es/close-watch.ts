import type { closeWatch as en } from '../en/close-watch'
import { plural } from './plural'

export const closeWatch: typeof en = {
  title: 'Vigila de cerca',
  wave: (high, usual) =>
    `Ola de calor: hoy hasta ${high}, y ${usual} de media en los cinco días anteriores. Vigila de cerca a todos.`,
  waveUnknown:
    'No se sabe si es una ola de calor: faltan las máximas de hoy o de los cinco días anteriores. Lo es con 26,7 °C (80 °F) o más y 5,5 °C (10 °F) sobre su media; entonces, vigila a todos.',
  names: (list, day) =>
    day === 1 ? `${list}: primer día aquí` : `${list}: día ${day} de los primeros 14`,
  namesUnknown:
    'No se ha podido leer quién acaba de empezar. Pregunta quién está en sus primeros 14 días aquí.',
  whenWarm: (count) =>
    plural(
      count,
      'Una persona está en sus primeros 14 días: su nombre aparece aquí desde 26,7 °C (80 °F).',
      `${count} personas están en sus primeros 14 días: sus nombres aparecen aquí desde 26,7 °C (80 °F).`
    ),
  counted: 'Días de trabajo en esta ronda, con el de hoy.',
  source:
    'Cal. Code Regs. Title 8 §3395 (g), tomada como regla de la casa. Los 14 días son de su texto anterior, la ola de calor de memoria: compruébalos. Mandan las normas locales.',
}
