import type { errors as en } from '../en/errors'

export const errors: typeof en = {
  network: 'El huerto no responde. Queda guardado y se envía solo.',
  busy: 'La máquina del huerto está ocupada. Se le pregunta otra vez sola.',
  signedOut:
    'Este dispositivo está fuera de sesión. Abre otra vez el enlace; lo que hiciste sigue guardado.',
  tooLarge: 'Es demasiado grande para enviarlo. Hazlo más corto o más pequeño.',
  notAllowed: 'Esto no te corresponde. Pregunta a tu jefe de cuadrilla.',
  notFound: 'Esto ya no está. Vuelve a tu árbol.',
  badInput: 'Algo escrito aquí no se puede leer. Míralo otra vez.',
  newVersion: 'Hay un Rowcall más nuevo. Cárgalo cuando todo esté enviado.',
  loadNewVersion: 'Cargarlo',
  unknown: (code) =>
    `Algo salió mal (${code}). Intenta otra vez o pregunta a tu jefe de cuadrilla.`,
  refusedUnknown: (code) => `Esto no se aceptó (${code}). Pregunta a tu jefe de cuadrilla.`,
}
