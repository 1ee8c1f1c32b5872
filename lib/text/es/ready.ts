import type { ready as en } from '../en/ready'
import { plural } from './plural'

const words = ['Ninguna', 'Una', 'Dos', 'Tres', 'Cuatro', 'Cinco', 'Seis']

export const ready: typeof en = {
  title: 'Antes de empezar',
  toDo: (count) =>
    plural(
      count,
      'Falta una cosa antes de tu primer árbol',
      `${words[count] ?? count} cosas antes de tu primer árbol`
    ),
  waitTitle: 'Lo tuyo está hecho. Espera a tu jefe de cuadrilla.',
  readyTitle: 'Todo listo',
  readyNote: 'Toma el próximo árbol cuando quieras.',
  whyLocked: 'No se puede tomar ningún árbol hasta que todo esto esté hecho.',
  goToTree: 'Buscar el próximo árbol',

  inCrew: 'Estás en la cuadrilla',
  joinedAs: (time, name) => `Entraste a las ${time} como ${name}`,
  arrive: 'Llegada',
  arriveNote: 'Que te cuenten, para que nadie te busque.',
  arriveButton: 'Aquí estoy',
  arrived: (time) => `Contado a las ${time}`,
  consent: 'Consentimiento de la temporada',
  consentNote: 'Se lee una vez. Por un menor acepta un adulto.',
  consentButton: 'Leer y aceptar',
  briefing: 'Charla de seguridad',
  briefingNote: (topics) =>
    plural(
      topics,
      '1 tema. La da tu jefe de cuadrilla y tú firmas.',
      `${topics} temas. La da tu jefe de cuadrilla y tú firmas.`
    ),
  briefingWait: 'Tu jefe de cuadrilla la da a todos. Después firmas.',
  briefingChanged: 'Algo cambió. Escucha lo nuevo y firma otra vez.',
  briefingButton: 'Abrir la charla',
  equipment: 'Protección',
  equipmentNote: 'Guantes, ojos, cabeza, calzado: mira cada cosa una vez.',
  equipmentButton: 'Revisar la protección',
  tools: 'Herramientas',
  toolsNote: 'Recoge las tuyas del banco y revisa cada una.',
  toolsButton: 'Tomar herramientas',
  shiftNotOpen: 'El turno aún no está abierto',
  shiftOpensAt: (name, time) =>
    `Lo abre ${name}, previsto a las ${time}. Tú no tienes que hacer nada.`,
  shiftOpens: 'Lo abre tu jefe de cuadrilla. Tú no tienes que hacer nada.',
  noShift: 'Hoy no hay ningún turno previsto',
  noShiftNote: 'Lo prevé tu jefe de cuadrilla. Vuelve a mirar entonces.',
  adult: 'Un adulto que responde por ti',
  adultNote: 'Ese adulto tiene que haber llegado. Lo apunta tu jefe de cuadrilla.',
  stopped: 'El trabajo está parado',
  stoppedNote: 'Responde primero a la parada. Solo un jefe de cuadrilla deja seguir.',
  meetAt: (place, time) => `Punto de encuentro: ${place}, a las ${time}`,
}
