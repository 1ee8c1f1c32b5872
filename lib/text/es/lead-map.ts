import type { leadMap as en } from '../en/lead-map'
import { plural } from './plural'

export const leadMap: typeof en = {
  title: 'Mapa',
  tabs: { map: 'Mapa', shift: 'Turno', people: 'Personas', board: 'El día hasta ahora' },
  openSince: (time, people) => `abierto desde las ${time}, ${people}`,
  notOpen: 'aún sin abrir',
  crew: 'Cuadrilla',
  crewCounts: (atTree, free, onBreak) =>
    `${atTree} en un árbol, ${free} libres, ${onBreak} en pausa`,
  free: 'Libre',
  onBreak: 'Pausa',
  notReady: 'sin preparar',
  minutesAt: (duration) => `lleva ${duration}`,
  lastHeard: (duration) => `última señal hace ${duration}`,
  callsForHelp: 'Piden ayuda',
  coming: 'Voy',
  treesByRow: 'Árboles por fila',
  asMap: 'Como mapa',
  asList: 'Como lista',
  blockAndRow: (block, row) => `${block}, fila ${row}`,

  pick: 'Elegir árboles para asignar',
  pickRow: (row) => `Elegir toda la fila ${row}`,
  picked: (count) => plural(count, '1 árbol elegido', `${count} árboles elegidos`),
  drop: 'Soltar la selección',
  toWhom: '¿A quién se asignan?',
  deal: (count, name) => `Asignar ${count} a ${name}`,
  dealing: 'Preguntando…',
  dealt: (count, name) =>
    plural(
      count,
      `1 árbol está asignado a ${name}.`,
      `${count} árboles están asignados a ${name}.`
    ),
  choosePerson: 'Elige para quién son.',
  chooseTrees: 'Elige árboles en el mapa o en la lista.',
  takeBack: 'Retirar',
  dealtTo: (name) => `asignado a ${name}`,
  heldBy: (name) => `lo tiene ${name}`,
  endClaim: 'Terminar esta toma',
  howReached: (name) => `¿Cómo hablaste con ${name}?`,
  spoke: 'En persona',
  phoned: 'Por teléfono o radio',
  notReached: 'Sin respuesta',
  handOn: 'Pasarlo a',
  powerLine: 'línea eléctrica',
  stop: 'Parar todo',
}
