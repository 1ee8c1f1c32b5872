import type { findTree as en } from '../en/find-tree'
import { plural } from './plural'

export const findTree: typeof en = {
  whereTitle: '¿Dónde estás?',
  fromTree: (tag) => `Contado desde ${tag}, tu último árbol`,
  fromPlace: (tag) => `Contado desde ${tag}, donde dijiste que estás`,
  fromNowhere: (block) =>
    `Contado desde el extremo con placa de su fila. ¿Es tu primera vez? Que tu jefe de cuadrilla te enseñe ${block}.`,
  changeWhere: 'Estoy en otro lugar',
  block: 'Bloque',
  row: 'Fila',
  end: '¿Qué extremo de la fila?',
  taggedEnd: 'Extremo con placa',
  farEnd: 'Extremo lejano',
  iAmHere: 'Estoy aquí',

  otherTitle: '¿Qué árbol tomas?',
  byTag: 'Por su placa',
  treeInRow: 'Árbol',
  writeRow: (first, last) => `Escribe una fila de ${first} a ${last}.`,
  writeTree: (row, first, last) =>
    `La fila ${row} tiene árboles de ${first} a ${last}. Escribe uno.`,
  noTreeThere: (tag) => `En ${tag} no hay árbol. Mira otra vez la placa.`,
  noSuchTree: 'No hay árbol con este número',
  noSuchTreeWhy: 'El enlace puede ser viejo. Mira la placa y búscalo por su fila.',
  goes: 'Es este',

  reasons: {
    done: (trees) => plural(trees, '1 árbol está hecho', `${trees} árboles están hechos`),
    held: (trees) =>
      plural(trees, '1 árbol lo tiene otra persona', `${trees} árboles los tienen otras personas`),
    dealt: (trees) =>
      plural(trees, '1 árbol está asignado a otros', `${trees} árboles están asignados a otros`),
    off: (trees) =>
      plural(
        trees,
        '1 árbol es de una especie que hoy no se poda',
        `${trees} árboles son de especies que hoy no se podan`
      ),
    closed: (trees) =>
      plural(
        trees,
        '1 árbol está cerrado: no te acerques',
        `${trees} árboles están cerrados: no te acerques`
      ),
    disease: (trees) =>
      plural(
        trees,
        '1 árbol marcado por enfermedad lo asigna un jefe',
        `${trees} árboles marcados por enfermedad los asigna un jefe`
      ),
    unmarked: (trees) =>
      plural(
        trees,
        '1 árbol no tiene marcados los cortes grandes',
        `${trees} árboles no tienen marcados los cortes grandes`
      ),
    skill: (trees) =>
      plural(
        trees,
        '1 árbol pide algo que aún no sabes',
        `${trees} árboles piden algo que aún no sabes`
      ),
    tool: (trees) =>
      plural(
        trees,
        '1 árbol pide una herramienta que no tienes',
        `${trees} árboles piden una herramienta que no tienes`
      ),
    two: (trees) =>
      plural(trees, '1 árbol pide dos personas', `${trees} árboles piden dos personas`),
    near: (trees) =>
      plural(
        trees,
        '1 árbol está demasiado cerca de escalera o serrucho',
        `${trees} árboles están demasiado cerca de escalera o serrucho`
      ),
    other: (trees) =>
      plural(trees, '1 árbol no es para ahora', `${trees} árboles no son para ahora`),
  },
  healthyFirst: (trees, row) =>
    plural(
      trees,
      `Sano: antes que el marcado de la fila ${row}`,
      `Sano: antes que los ${trees} marcados de la fila ${row}`
    ),
  mapLabel: (rows, tag) => `Mapa de las filas ${rows}, con ${tag}`,
  lastTree: 'Tu último árbol',
  alongRow: (row) => `Por la fila ${row}`,
  atIt: 'Estás junto a él.',
}
