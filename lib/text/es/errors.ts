import type { errors as en } from '../en/errors'

export const errors: typeof en = {
  offline: 'El huerto no responde. Queda guardado y se envía solo.',
  busy: 'La máquina del huerto está ocupada. Se le pregunta otra vez sola.',
  signed_out:
    'Este dispositivo está fuera de sesión. Abre otra vez el enlace; lo que hiciste sigue guardado.',
  not_allowed: 'Esto no te corresponde. Pregunta a tu jefe de cuadrilla.',
  malformed: 'Algo escrito aquí no se puede leer. Míralo otra vez.',
  too_large: 'Es demasiado grande para enviarlo. Hazlo más corto o más pequeño.',
  too_many:
    'Demasiados intentos desde este dispositivo. Espera una hora o pregunta a tu jefe de cuadrilla.',
  gone: 'Esto ya no está. Vuelve a tu árbol.',
  noAnswer: 'No llegó respuesta. Nada cambió; intenta otra vez donde haya señal.',
  newVersion: 'Hay un Rowcall más nuevo. Cárgalo cuando todo esté enviado.',
  loadNewVersion: 'Cargarlo',
  unknown: (code) =>
    `Algo salió mal (${code}). Intenta otra vez o pregunta a tu jefe de cuadrilla.`,
  refusedUnknown: (code) => `Esto no se aceptó (${code}). Pregunta a tu jefe de cuadrilla.`,
}
