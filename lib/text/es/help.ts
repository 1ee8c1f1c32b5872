import type { help as en } from '../en/help'

export const help: typeof en = {
  emergencyTitle: 'Emergencia',
  callFirst: (number) => `Llamar al ${number}`,
  numberProposed: (zone, source) =>
    `Propuesto según la zona horaria del huerto (${zone}); el responsable no lo ha confirmado. De: ${source}.`,
  number: 'Número de emergencias',
  call: 'A quién llamar',
  where: 'Dónde estamos',
  access: 'Entrada para una ambulancia',
  hospital: 'Hospital más cercano',
  first_aid: 'Botiquín',
  first_aider: 'Quién da primeros auxilios',
  meeting_point: 'Punto de encuentro',
  coordinates: 'Coordenadas',
  compass: { north: 'norte', south: 'sur', east: 'este', west: 'oeste' },
  ofYourTree: (tag) => `De tu árbol ${tag}`,
  ofBlock: (block) => `De ${block}`,
  noCoordinates: 'Nadie ha medido dónde está este huerto. Di la dirección de arriba.',
  noCard:
    'El responsable aún no ha escrito la tarjeta de emergencia. Pregunta a tu jefe de cuadrilla: a quién llamar, dónde están, dónde está el botiquín.',
  cardNotHere:
    'La tarjeta de emergencia aún no ha llegado a este teléfono. Pregunta a tu jefe de cuadrilla.',
  noNumber: 'En la tarjeta no hay número. Llama al número de emergencias de tu país.',
  keptHere: 'Esta tarjeta queda en este teléfono y no necesita señal. Una llamada sí.',
  sayFirst: 'Di primero: dónde estás, qué pasó, cuántos heridos hay.',
  callLeadToo: 'Llamar también a un jefe',

  voice: 'De viva voz',
  voiceNote: 'Grita o ve a pie. Si es urgente, que lo pase la persona más cercana.',
  radio: 'Por radio',
  radioNote: 'Si tu grupo lleva una: di tu nombre y tu árbol, y después qué necesitas.',
  phone: 'Por teléfono',
  phoneNote: 'El número de la tarjeta de emergencia.',
  whoLeads: 'Jefes de cuadrilla hoy',
  atTree: (tag) => `En ${tag}`,
  onBreak: 'En pausa',
  atMeetingPoint: 'No está en un árbol',
  nobodyHere: 'Aún no se ha contado a ningún jefe de cuadrilla.',
}
