/** What the host says at the terminal about the demo and its links. */

import type { Language } from '@/lib/text/language'

import type { SeatName } from './links'

const english = {
  loadingDemo: 'Making the demo orchard…',
  demoBroken: (folder: string) =>
    `The demo orchard was not finished when Rowcall last stopped. Delete ${folder}, or set ROWCALL_DATA to another folder, and start again.`,
  seats: {
    manager: 'Demo: the manager',
    lead: 'Demo: a crew lead',
    volunteer: 'Demo: a volunteer, ready for the next tree',
    newcomer: 'Demo: a volunteer who has just arrived',
    join: 'Demo: join the shift as somebody new',
    set_up:
      'Set up your orchard: this link makes you its first manager. It works once, within 24 hours.',
  } satisfies Record<SeatName, string>,
}

const spanish: typeof english = {
  loadingDemo: 'Se prepara el huerto de muestra…',
  demoBroken: (folder) =>
    `El huerto de muestra no estaba terminado cuando Rowcall paró. Borra ${folder}, o pon otra carpeta en ROWCALL_DATA, y empieza de nuevo.`,
  seats: {
    manager: 'Muestra: responsable',
    lead: 'Muestra: jefe de cuadrilla',
    volunteer: 'Muestra: un voluntario listo para el próximo árbol',
    newcomer: 'Muestra: un voluntario que acaba de llegar',
    join: 'Muestra: unirse al turno como alguien nuevo',
    set_up:
      'Crea tu huerto: este enlace te hace su primer responsable. Sirve una vez, durante 24 horas.',
  },
}

export function terminalText(language: Language): typeof english {
  return language === 'es' ? spanish : english
}
