import type { breakLeave as en } from '../en/break-leave'
import { plural } from './plural'

export const breakLeave: typeof en = {
  title: 'Pausa o a casa',
  hereSince: (time) => `Aquí desde las ${time}`,
  takeBreak: 'Hacer una pausa',
  takeBreakNote: 'Agua y sombra. Sin límite de tiempo, y nadie pregunta por qué.',
  onBreakTitle: 'En pausa',
  onBreakSince: (time) => `Desde las ${time}. Vuelve cuando quieras.`,
  backToWork: 'Volver al trabajo',
  leave: 'Me voy a casa',
  leaveTitle: 'Marca tu salida',
  leaveNote: 'Para que nadie te busque al anochecer.',
  before: 'Antes de irte:',
  stillHeld: (tag) => `Todavía tienes ${tag}`,
  stillAtRow: 'Todavía trabajas en una fila',
  finishFirst: 'Termínalo, déjalo a medias o pásalo a otra persona.',
  stillTools: (tools) => `Todavía tienes: ${tools}`,
  giveBackFirst: 'Devuelve lo que tomaste.',
  breakNeedsTree: 'La pausa viene después del árbol: termínalo o déjalo a medias primero.',
  unsentFirst: (count) =>
    plural(count, 'Falta 1 cosa por enviar', `Faltan ${count} cosas por enviar`),
  unsentFirstNote: 'Queda en este teléfono y se envía sola. Deja Rowcall abierto hasta entonces.',
  countedOut: (time) => `Salida marcada a las ${time}`,
  thanks: (trees) =>
    plural(
      trees,
      'Un árbol está hecho gracias a ti.',
      `${trees} árboles están hechos gracias a ti.`
    ),
  goodWay: 'Que llegues bien a casa.',
  cameBack: 'He vuelto',
  notHere: 'Aún no consta tu llegada',
  notHereNote: 'Di «Aquí estoy» cuando llegues.',
  shiftNotOpen: 'El turno no está abierto, así que no se cuenta a nadie.',
}
