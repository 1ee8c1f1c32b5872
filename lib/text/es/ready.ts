import type { ready as en } from '../en/ready'
import { plural } from './plural'

const words = ['Ninguna', 'Una', 'Dos', 'Tres', 'Cuatro', 'Cinco', 'Seis']

export const ready: typeof en = {
  title: 'Antes de empezar',
  toDo: (count) =>
    plural(
      count,
      'Falta una cosa antes de tu próximo árbol',
      `${words[count] ?? count} cosas antes de tu próximo árbol`
    ),
  waitTitle: 'Lo tuyo está hecho. Lo punteado es de otros.',
  waitBriefingTitle: 'Ve a escuchar la charla de tu jefe de cuadrilla',
  readyTitle: 'Todo listo',
  readyNote: 'Toma el próximo árbol cuando quieras.',
  visitorTitle: 'Estás aquí de visita',
  visitorNote:
    'Marca tu llegada, mira y no te pongas debajo de los árboles. Un jefe de cuadrilla puede cambiarlo.',
  whyLocked: 'Ningún árbol hasta que todo esto esté hecho.',
  goToTree: 'Buscar el próximo árbol',
  backToTree: 'Volver a tu árbol',

  inCrew: 'Estás en la cuadrilla',
  inCrewAs: (name) => `Como ${name}`,
  notAdmitted: 'Un jefe de cuadrilla te deja entrar',
  notAdmittedNote: 'Dile tu nombre.',
  arrive: 'Marca tu llegada',
  arriveNote: 'Para que nadie te busque al anochecer.',
  arriveButton: 'Aquí estoy',
  arrived: (time) => `Aquí desde las ${time}`,
  onBreak: 'Estás en pausa',
  onBreakNote: (time) => `Desde las ${time}. Sin límite de tiempo.`,
  endBreakButton: 'Volver al trabajo',
  consent: 'Consentimiento de la temporada',
  consentNote: 'Se lee una vez. Por un menor acepta un adulto.',
  consentDone: 'Aceptado para esta temporada',
  consentButton: 'Leer y aceptar',
  given: (name) => `${name ?? 'Tu jefe de cuadrilla'} da la charla`,
  givenAt: (time) => `A las ${time}, para todos. Ve y escucha.`,
  givenNote: 'Te la dio una persona',
  givenWait: (name) =>
    `No hay que tocar nada. ${name ?? 'Tu jefe de cuadrilla'} anota que la escuchaste.`,
  briefing: 'Firmar la charla',
  briefingNote: 'Escucha primero; después mírala y firma.',
  briefingAgain: 'Algo cambió. Escucha lo nuevo y firma otra vez.',
  comeDown: 'La charla cambió. Baja ahora y escucha lo nuevo.',
  briefingDone: (version) => `Firmada, versión ${version}`,
  briefingButton: 'Abrir la charla',
  equipment: 'Protección',
  equipmentNote: 'Guantes, ojos, calzado: mira cada cosa una vez.',
  equipmentDone: 'Revisada hoy',
  equipmentButton: 'Revisar la protección',
  tools: 'Herramientas',
  toolsNote: 'Recoge las tuyas del banco y mira cada una.',
  toolsFailed: 'Una de las que tienes está fuera de uso. Devuélvela.',
  toolsNotClean: 'Una de las que tienes no está limpia. Límpiala y dilo.',
  toolsDone: (tools) => `En tu mano: ${tools}`,
  toolsButton: 'Tomar herramientas',
  shiftNotOpen: 'El turno aún no está abierto',
  shiftOpensAt: (name, time) =>
    `Lo abre ${name ?? 'tu jefe de cuadrilla'}, programado para las ${time}. Tú no tienes que hacer nada.`,
  noShift: 'No hay ningún turno programado',
  noShiftNote: 'Lo programa tu jefe de cuadrilla. Vuelve a mirar entonces.',
  adult: (name) => (name === null ? 'Un adulto que responde por ti' : `${name} responde por ti`),
  adultNote: 'Ese adulto tiene que haber llegado. Tu jefe de cuadrilla anota quién es.',
  adultConsents:
    'Acepta tu madre, tu padre o tu tutor, en este dispositivo o con tu jefe de cuadrilla.',
  notNow: 'Ahora no trabaja nadie',
  stopped: 'El trabajo está parado',
  stoppedNote: 'Solo un jefe de cuadrilla reanuda el trabajo. Espera en el punto de encuentro.',
  stopAnswer: 'Responder a la parada',
  stopAnswerNote: 'Di que sabes que el trabajo sigue.',
  meet: (time) => (time === null ? 'Punto de encuentro' : `Encuentro a las ${time}`),
}
