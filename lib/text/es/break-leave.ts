import type { breakLeave as en } from '../en/break-leave'
import { plural } from './plural'

export const breakLeave: typeof en = {
  title: 'Pausa o a casa',
  takeBreak: 'Hacer una pausa',
  takeBreakNote: 'Tu árbol sigue siendo tuyo. Sin límite de tiempo.',
  onBreakSince: (time) => `En pausa desde las ${time}`,
  backToWork: 'Volver al trabajo',
  leave: 'Irme a casa',
  leaveTitle: 'Que te cuenten antes de irte',
  leaveNote: 'Para que nadie te busque al anochecer.',
  stillHeld: (tag) => `Todavía tienes ${tag}`,
  finishFirst: 'Termínalo o déjalo a medias primero.',
  stillTools: (count) =>
    plural(
      count,
      'Todavía tienes 1 herramienta en la mano',
      `Todavía tienes ${count} herramientas en la mano`
    ),
  giveBackFirst: 'Devuelve lo que tomaste.',
  unsentFirst: 'Hay trabajo sin enviar',
  unsentFirstNote: 'Queda en este teléfono y se envía solo. Deja el teléfono encendido.',
  signOut: 'Me voy a casa',
  signedOut: (time) => `Saliste a las ${time}; estás contado.`,
  thanks: (trees) =>
    plural(
      trees,
      'Un árbol está hecho gracias a ti.',
      `${trees} árboles están hechos gracias a ti.`
    ),
  cameBack: 'He vuelto',
}
