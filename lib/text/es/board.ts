import type { board as en } from '../en/board'

export const board: typeof en = {
  title: 'El día hasta ahora',
  doneOf: (done, all) => `${done} de ${all} árboles`,
  doneTotal: (share) => `${share} hecho`,
  perBlock: 'Bloque por bloque',
  people: (people) => `${people} aquí`,
  bar: (parts) => `Árboles: ${parts}`,
  part: (count, status) => `${count} ${status}`,
  nothingYet: 'Aún no hay ningún árbol hecho. Los números llegan según trabaja la cuadrilla.',
  noShift: 'No hay turno abierto. Estos son los números de la ronda.',
  hazards: 'Para el arborista con licencia',
  diseases: 'Enfermedad',
  noHazards: 'Nada marcado.',
  seenAt: (time, name) => `${time}, ${name}`,
  openMap: 'Abrir el mapa',
}
