import type { call as en } from '../en/call'

export const call: typeof en = {
  title: 'Llama a tu jefe de cuadrilla',
  titleFor: (name) => `Llamar en nombre de ${name}`,
  what: '¿Qué pasa?',
  nothingYet: 'Toca para abrir. Aún no se envía nada.',
  kinds: {
    question: 'Una pregunta',
    tool: 'Una herramienta',
    injury: 'Hay alguien herido',
    lost_person: 'Falta una persona',
  },
  otherWays: 'O sin el teléfono',
  at: (tag) => `Estás en ${tag}. También se envía.`,
  near: (tag) => `Tu último árbol fue ${tag}. También se envía.`,
  nowhere: 'Nadie sabe en qué árbol estás. Escríbelo abajo, o grita.',

  note: 'Unas palabras, si quieres',
  noteHint: 'Solo las leen los jefes de cuadrilla.',
  noteInjury: 'Qué hace falta, si tienes una mano libre',
  noteInjuryHint: 'Solo lo leen los jefes de cuadrilla. Nada sobre la salud de nadie.',
  injuryFirst: 'Primero ayuda, y llama por teléfono. Aún no se envía nada.',
  send: 'Llamar a un jefe',
  sendInjury: 'Llamar también a un jefe',
  goesTo: (names) => `a ${names}`,
  goesToAll: 'a todos los jefes y responsables',

  whoIsMissing: '¿Quién falta?',
  somebodyElse: 'Otra persona',
  sayWho: 'Di quién falta.',
  lastAt: (name, tag, time) => `${name} estaba en ${tag} desde las ${time}.`,
  lastNowhere: (name) => `Nadie sabe en qué árbol estaba ${name}.`,
  crewIsTold: 'Se avisa a toda la cuadrilla de a quién se busca. No salgas a buscar por tu cuenta.',

  sent: 'Tu llamada está enviada',
  asked: (names) => `Avisados: ${names}.`,
  askedAll: 'Se avisa a todos los jefes y responsables, estén donde estén.',
  notYet: (time) => `Llamaste hace ${time}.`,
  nobodyFor: (time) => `Nadie ha respondido en ${time}`,
  nobodyWay: 'No esperes al teléfono: grita, usa la radio, llama.',
  notSent: 'Aún no enviada',
  notSentWay: 'No hay señal. Sale sola. Grita, usa la radio o ve a pie ahora.',
  coming: (name) => `${name} viene`,
  comingNote: 'Quédate donde se te vea.',
  noLonger: 'Ya no hace falta',
  settled: 'Está resuelto',
  another: 'Llamar por otra cosa',

  banner: {
    mine: 'Has llamado a un jefe de cuadrilla.',
    looking: (caller, name) => `${caller} busca a ${name}.`,
    lastAt: (tag) => `La última vez, en ${tag}.`,
    seen: 'Si has visto a esa persona, díselo a un jefe de cuadrilla. No salgas a buscar por tu cuenta.',
    forYou: (caller) => `${caller} te busca. Dile a tu jefe de cuadrilla dónde estás.`,
    somebody: 'alguien',
    see: 'Ver',
  },

  of: {
    question: (name) => `${name} tiene una pregunta`,
    tool: (name) => `${name} necesita una herramienta`,
    injury: (name) => `${name}: hay alguien herido`,
    lost_person: (name, lost) => `${name} busca a ${lost}`,
  },

  sound: {
    title: 'Sonido en este dispositivo',
    on: 'Suena cuando alguien llama a los jefes de cuadrilla, y cuando se para el trabajo.',
    locked: 'Está en silencio: los navegadores esperan a que se toque la pantalla.',
    none: 'Este navegador no deja que suene.',
    turnOn: 'Activar el sonido',
    tryIt: 'Probarlo',
    vibrates: 'También vibra, si puede.',
    still: 'Este navegador no vibra.',
    neverTheAlarm:
      'El teléfono nunca es la alarma: dormido o en un bolsillo puede quedarse en silencio.',
  },
}
