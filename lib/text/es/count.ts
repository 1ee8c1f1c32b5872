import type { count as en } from '../en/count'
import { plural } from './plural'

export const count: typeof en = {
  title: 'Recuento',
  ofAll: (all) => `de ${all} están contadas`,
  seeNote: 'Marca a quien ves con tus propios ojos, no su teléfono.',
  missing: 'Sin contar todavía',
  found: 'Contadas',
  undoNote: 'Toca otra vez para deshacer.',
  seen: 'A la vista',
  seenPerson: (name) => `A la vista: ${name}`,
  notSeen: (name) => `No está a la vista: ${name}`,
  call: 'Llamar',
  callPerson: (name) => `Llamar a ${name}`,
  byPhone: 'respondió con su teléfono',
  seenBy: (name) => `lo confirmó ${name}`,
  lastAt: 'último árbol',
  noTree: 'ningún árbol en este turno',
  onBreak: 'en pausa',
  where: 'Dónde estaban',

  stopped: 'El trabajo está parado',
  stoppedIn: (block) => `El trabajo está parado en ${block}`,
  by: (name, time) => `Lo paró ${name} a las ${time}. La señal es:`,
  stopAll: 'Parar en todo el huerto',
  resumeWhy:
    'Todas las personas están contadas. Cada una responde otra vez antes del próximo árbol.',
  resumeWaits: (count) =>
    plural(
      count,
      'Falta 1 persona por contar. Encuéntrala primero.',
      `Faltan ${count} personas por contar. Encuéntralas primero.`
    ),
  resume: 'Reanudar el trabajo',

  countNow: 'Contar ahora',
  countNowNote: 'Para la comida, al anochecer, ante la duda. Se queda en este dispositivo.',
  here: (count) => plural(count, 'Hay 1 persona en el sitio', `Hay ${count} personas en el sitio`),
  kinds: {
    atWork: (count) => `${count} en un árbol`,
    free: (count) => `${count} sin árbol`,
    onBreak: (count) => `${count} en pausa`,
    visitors: (count) => plural(count, '1 visita', `${count} visitas`),
    minors: (count) => plural(count, '1 menor de edad', `${count} menores de edad`),
    noPhone: (count) => `${count} sin teléfono`,
  },
  nobody: 'No consta la llegada de nadie.',
  since: (time) => `Recuento empezado a las ${time}`,
  all: 'Todas las personas están contadas.',
  some: (count) =>
    plural(
      count,
      'Falta 1 persona por ver. Llámala y luego busca donde estaba.',
      `Faltan ${count} personas por ver. Llámalas y luego busca donde estaban.`
    ),
  lookFor: 'Llamar a todos a buscar',
  finish: 'Terminar el recuento',
  last: (time, seen, all) => `Último recuento, ${time}: ${seen} de ${all}.`,

  notFound: (name) => `${name} no apareció cuando se cerró el turno.`,
  notFoundNote: 'Se sigue buscando hasta que alguien la vea.',
  isFound: 'Apareció',
  isFoundPerson: (name) => `${name} apareció`,
}
