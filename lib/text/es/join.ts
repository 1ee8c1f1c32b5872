import type { join as en } from '../en/join'

export const join: typeof en = {
  title: 'Unirse a la cuadrilla',
  shift: (day, from, to) => `Turno del ${day}, de ${from} a ${to}.`,
  leads: (name) => `Dirige ${name}.`,
  yourName: 'Tu nombre',
  whoSeesIt: 'Solo lo ve esta cuadrilla. Sin correo ni contraseña.',
  writeName: 'Escribe un nombre que la cuadrilla conozca.',
  nameTooLong: 'Escribe un nombre más corto, de 60 letras como mucho.',
  joinCrew: 'Unirme a la cuadrilla',
  joining: 'Entrando…',
  linkUntil: (time) => `Este enlace vale hasta las ${time} de hoy.`,
  linkUntilClose: 'Este enlace vale hasta que cierre el turno.',
  noCode:
    'Este enlace no lleva código. Escanea el del punto de encuentro o pide el enlace a tu jefe de cuadrilla.',
  waitTitle: 'Casi dentro. Falta que te den paso.',
  waitWhy:
    'El turno aún no está abierto, así que se admite a cada persona. Di tu nombre a tu jefe de cuadrilla.',
  alreadyIn: (name) => `Este dispositivo ya está en la cuadrilla como ${name}.`,
  goOnAs: (name) => `Seguir como ${name}`,
  someoneElse: 'Otra persona usa también este dispositivo',
  codeLabel: 'Código de tu jefe de cuadrilla',
  writeCode: 'Escribe el código tal como está en la tarjeta.',
}
