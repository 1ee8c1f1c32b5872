import type { board as en } from '../en/board'
import { plural } from './plural'

export const board: typeof en = {
  title: 'El día hasta ahora',
  headline: (done, all, inProgress) => `${done} de ${all} árboles hechos, ${inProgress} en curso`,
  noRound: 'No hay ninguna ronda abierta',
  noRoundNote: 'Abre una en la pantalla del turno. Entonces aquí se cuentan árboles.',
  doneOf: (done, trees) => `${done} de ${trees}`,
  peopleAt: (people) => `${people} en sus árboles`,
  bar: (parts) => `Árboles: ${parts}`,
  part: (count, status) => `${count} ${status}`,
  counted: {
    done: (trees) => plural(trees, 'hecho', 'hechos'),
    inProgress: (_) => 'en curso',
    begun: (_) => 'a medias',
    left: (_) => 'por hacer',
    disease: (trees) => plural(trees, 'marcado por enfermedad', 'marcados por enfermedad'),
    arborist: (trees) =>
      plural(
        trees,
        'marcado para un arborista con licencia',
        'marcados para un arborista con licencia'
      ),
  },
  nothingYet: 'Aún no hay ningún árbol hecho. Los números llegan según trabaja la cuadrilla.',
  noShift: 'No hay turno abierto. Estos son los números de la ronda.',
  pictureOf: (block) => `${block}, visto desde arriba, cada árbol con su estado`,
  hazards: 'Para el arborista con licencia',
  diseases: 'Enfermedad',
  nothingFlagged: 'No hay nada marcado.',
  seenAt: (when, name) => `${when}, ${name}`,
  here: 'En el huerto',
  nobodyHere: 'No se contó a nadie.',
  openMap: 'Abrir el mapa',
  toShift: 'Abrir una ronda',
  others: (count) => plural(count, 'y 1 más', `y ${count} más`),
}
