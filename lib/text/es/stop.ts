import type { stop as en } from '../en/stop'
import { plural } from './plural'

export const stop: typeof en = {
  title: 'Paren todo',
  goesOnTitle: 'El trabajo sigue',
  goesOnWhy: 'Un jefe de cuadrilla deja seguir. Mira a tu alrededor antes de empezar.',
  goesOnAnswer: 'Lo he oído',
  calledBy: (name) => `${name ?? 'Alguien'} paró todo el trabajo.`,
  calledByYou: 'Paraste todo el trabajo.',
  calledInBlock: (name, block) => `${name ?? 'Alguien'} paró el trabajo en ${block}.`,
  since: (time) => `Desde las ${time}.`,
  orders: {
    signal: 'Da la señal, ya',
    shout: 'Y grita: ¡paren todo! El teléfono nunca es la alarma.',
    tools: 'Herramientas abajo, cuchillas cerradas',
    toolsNote: 'Deja el árbol como está. Sigue siendo tuyo.',
    out: 'Sal de debajo de los árboles',
    outNote: 'Ve por la calle, entre las filas.',
    walk: 'Ve al punto de encuentro',
    walkNote: 'Allí se cuenta a todos.',
  },
  comeOut: {
    title: 'Baja y déjalo',
    hazard: (name, tag) => `${name ?? 'Alguien'} avisó de un peligro: ${tag}.`,
    leaveIt: (tag) =>
      tag === null ? 'Deja las ramas donde están.' : `Deja ${tag} como está. Cuenta como empezado.`,
    outOf: (distance, tag) => `Quédate a ${distance} o más de ${tag}`,
    outFrom: (tag) => `Sal de debajo de ${tag}`,
    passItOn: 'Díselo a quien tengas al lado: su teléfono quizá no suene.',
    stayOut: 'No vuelvas a entrar',
    leadDecides: 'Tu jefe de cuadrilla dice dónde sigues.',
    iAmOut: 'Estoy fuera',
  },
  leaveTree: {
    title: {
      thunder: 'Truenos: baja y sal',
      too_windy: 'Vendaval: baja y sal',
      too_hot: 'Demasiado calor: ven a la sombra',
      dark: 'Ya oscurece: baja y ven',
      ladders_off: 'Baja de la escalera',
      species_off: 'Para aquí y sal',
    },
    why: {
      thunder: 'Se ha oído un trueno.',
      too_windy: 'Las ráfagas superan el límite para trabajar.',
      too_hot: 'La sensación de calor supera el límite para trabajar.',
      dark: 'El sol se ha puesto, y tu jefe de cuadrilla ha terminado el trabajo con lámparas.',
      ladders_off:
        'Las ráfagas superan el límite para escaleras, se va la luz, o tu jefe de cuadrilla las ha quitado.',
      species_off:
        'Estos árboles no se podan ahora: madera mojada, lluvia, o lo dijo tu jefe de cuadrilla.',
    },
    go: {
      thunder: 'A un edificio o un vehículo cerrado',
      too_windy: 'Sal de debajo de los árboles',
      too_hot: 'Descansa y bebe, ya',
      dark: 'Sal de las filas',
      ladders_off: 'Deja la escalera en el suelo',
      species_off: 'Ni un corte más',
    },
    goNote: {
      thunder: 'Nunca bajo un árbol, ni junto a una escalera o una valla.',
      too_windy: 'Se rompen ramas. Quédate en medio de la calle, entre las filas.',
      too_hot: '¿Mareo, náuseas, confusión? Dilo enseguida.',
      dark: 'Cuchillas cerradas, escalera en el suelo. Mira dónde pisas.',
      ladders_off: 'Lo que alcanzas desde el suelo puede seguir.',
      species_off: 'Anota el árbol a medias.',
    },
    staysYours: (tag) =>
      tag === null ? 'Deja las ramas donde están.' : `Deja ${tag} como está. Sigue siendo tuyo.`,
    stay: 'No vuelvas a subir',
    iAmDown: 'Estoy abajo',
  },
  answered: (some, all) => `Han respondido ${some} de ${all} personas.`,
  iStopped: 'He parado',
  emergency: 'Emergencia',
  callLead: 'Llamar al jefe',
  keptNotSent: 'Aún sin enviar: no hay señal. Da la señal, grítalo, que lo pasen.',

  signals: {
    horn: 'Tres toques largos de bocina',
    whistle: 'Tres pitidos largos',
    voice: 'Grita: ¡paren todo!',
  },
  first: 'Primero, y fuerte:',
  shoutToo: 'Grítalo también, una y otra vez, y que otros lo pasen.',
  phoneNote: 'El teléfono solo cuenta quién ha parado. No despierta a nadie.',
  send: 'Parar todo el trabajo',
  where: '¿Dónde?',
  everywhere: 'Todo el huerto',
  sendBlock: (block) => `Parar el trabajo en ${block}`,
  sendNote: 'y contar quién ha respondido',
  noShift: 'No hay turno abierto, así que no hay a quién contar. Da la señal igualmente.',
  inForce: 'El trabajo está parado',
  waitForLead: 'Solo un jefe de cuadrilla reanuda el trabajo. Espera en el punto de encuentro.',
  notAnswered: (names) => `Sin responder: ${names}.`,
  bannerStopped: 'El trabajo está parado.',
  bannerSee: 'Ver',
  bannerOther: (name) =>
    `El trabajo está parado. ${name} usa también este teléfono y no ha respondido.`,
  bannerAnswer: 'Responder',
  outOfTouch: (minutes) =>
    plural(
      minutes,
      '1 minuto sin contacto. Una parada no llega a este teléfono: quédate donde oigas.',
      `${minutes} minutos sin contacto. Una parada no llega a este teléfono: quédate donde oigas.`
    ),
}
