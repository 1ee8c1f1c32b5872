import type { errors as en } from '../en/errors'

export const errors: typeof en = {
  offline: 'El huerto no responde. Queda guardado y se envía solo.',
  busy: 'La máquina del huerto está ocupada. Se le pregunta otra vez sola.',
  signed_out:
    'Este dispositivo ya no tiene la sesión abierta. Abre otra vez el enlace; lo que hiciste sigue guardado.',
  not_allowed: 'Esto no te corresponde. Pregunta a tu jefe de cuadrilla.',
  malformed: 'Algo escrito aquí no se puede leer. Míralo otra vez.',
  too_large: 'Es demasiado grande para enviarlo. Hazlo más corto o más pequeño.',
  too_many:
    'Demasiados intentos desde este dispositivo. Espera una hora o pregunta a tu jefe de cuadrilla.',
  not_admitted: 'Primero tu jefe de cuadrilla tiene que dejarte entrar.',
  other_login:
    'Ahora usa este dispositivo otra persona. Abre otra vez tu propio enlace; lo que hiciste sigue guardado.',
  not_kept:
    'En este dispositivo no cabe más, así que no está hecho. Libera espacio e intenta otra vez.',
  not_understood:
    'La respuesta del huerto no es para esta página. Carga la página de nuevo e intenta otra vez.',
  command_id_used: 'En su lugar se envió otra cosa. Mira lo que hay y hazlo otra vez.',
  gone: 'Esto ya no está. Vuelve a tu árbol.',
  noAnswer: 'No llegó respuesta. Nada cambió; intenta otra vez donde haya señal.',
  newVersion: 'Hay un Rowcall más nuevo. Cárgalo cuando todo esté enviado.',
  loadNewVersion: 'Cargarlo',
  unknown: (code) =>
    `Algo salió mal (${code}). Intenta otra vez o pregunta a tu jefe de cuadrilla.`,
  refusedUnknown: (code) => `Esto no se aceptó (${code}). Pregunta a tu jefe de cuadrilla.`,
}
