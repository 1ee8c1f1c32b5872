import type { join as en } from '../en/join'

export const join: typeof en = {
  title: 'Unirse a la cuadrilla',
  shiftOn: (day) => `Turno del ${day}.`,
  noShiftYet: 'Aún no hay turno. Un jefe de cuadrilla te deja entrar antes del primero.',
  forLead: 'Con este enlace entras como jefe de cuadrilla. Vale una vez.',
  forManager: 'Con este enlace entras como responsable del huerto. Vale una vez.',
  forDevice:
    'Este enlace es de alguien que ya está en la cuadrilla. Hace suyo también este dispositivo; no se pide nombre.',
  forRecovery: 'Este código deja entrar otra vez a un responsable. Vale una vez.',
  yourName: 'Tu nombre',
  whoSeesIt: 'Solo lo ve esta cuadrilla. Sin correo ni contraseña.',
  writeName: 'Escribe un nombre que la cuadrilla conozca.',
  nameTooLong: 'Escribe un nombre más corto, de 60 letras como mucho.',
  ageQuestion: '¿Qué edad tienes?',
  adult: 'Mayor de edad',
  minor: 'Menor de edad',
  sayAge: 'Di si eres mayor de edad y entra.',
  joinCrew: 'Unirme a la cuadrilla',
  linkDevice: 'Este dispositivo es mío',
  backIn: 'Entrar otra vez',
  joining: 'Entrando…',
  linkUntilClose: 'Este enlace vale hasta que cierre el turno.',
  looking: 'Mirando el enlace…',
  noCode:
    'Este enlace no lleva código. Escanea el del punto de encuentro o pide el enlace a tu jefe de cuadrilla.',
  codeLabel: 'Código de tu jefe de cuadrilla',
  codeHint: 'También vale el enlace entero.',
  writeCode: 'Escribe el código tal como está en la tarjeta.',
  useCode: 'Usar este código',
  overTitle: 'Este enlace no deja entrar a nadie',
  overWhy: {
    code_wrong: 'Nadie hizo este enlace: quizá se perdió una parte por el camino.',
    code_expired: 'Ha caducado: era para otro día, o un jefe de cuadrilla lo cerró.',
    code_used: 'Ya se usó, y vale una sola vez.',
  },
  overDo:
    'Escanea otra vez el código del punto de encuentro o pide un enlace nuevo a tu jefe de cuadrilla.',
  otherCode: 'Probar otro código',
  alreadyIn: (name) => `Este dispositivo ya está en esta cuadrilla, como ${name}.`,
  goOnAs: (name) => `Seguir como ${name}`,
  someoneElse: 'Otra persona entra en este dispositivo',
  waitTitle: 'Casi dentro. Falta que te dejen entrar.',
  waitWhy: (name) =>
    `No hay turno abierto, así que un jefe de cuadrilla deja entrar a cada persona. Dile que estás aquí como ${name}.`,
  leadWaitTitle: 'Casi dentro. Falta que te deje entrar un responsable.',
  leadWaitWhy: (name) =>
    `Este enlace es para un solo jefe o responsable, así que un responsable mira primero. Dile que entraste como ${name}. ¿Vienes a podar? Pide el enlace de la cuadrilla.`,
  waitNote: 'Esta página sigue sola.',

  welcome: 'El día de poda de un huerto, árbol por árbol',
  treeWaits: 'Has escaneado el código de un árbol. Se abre en cuanto entres.',
  welcomeWhy: 'Se entra con un enlace o un código del huerto. Nada que instalar, sin correo.',
  chooseTitle: '¿Quién eres?',
  chooseWhy: 'Este dispositivo lo usan varias personas.',
  waitsToBeLetIn: 'Falta que le dejen entrar',
  signedOutTitle: 'En este dispositivo no hay sesión abierta',
  signedOutWhy:
    'Abre otra vez el enlace para volver. Lo que no se envió queda en este dispositivo.',
  outTitle: (orchard) => `Este dispositivo ya no está en ${orchard}`,
  outWhy: 'Saliste, o te sacaron de la cuadrilla. Pregunta a tu jefe de cuadrilla si es un error.',
  toHandIn: (count) =>
    count === 1 ? 'Una cosa quedó sin enviar.' : `${count} cosas quedaron sin enviar.`,
  handInNote:
    'Entrégalo: lo mira un jefe de cuadrilla y no se pierde nada. Se entrega una vez, antes de 48 horas.',
  handIn: 'Entregarlo',
  handedIn: 'Entregado. Lo mira un jefe de cuadrilla.',
  photosStay: (count) =>
    count === 1
      ? 'Una foto queda en este dispositivo. Enséñasela a un jefe de cuadrilla si importa.'
      : `${count} fotos quedan en este dispositivo. Enséñaselas a un jefe de cuadrilla si importan.`,
  someoneElseHere: 'Seguir como otra persona',
  joinAgain: 'Entrar con un enlace',
}
