import type { groundRefusals as english } from '../en/ground-refusals'

export const groundRefusals: typeof english = {
  trees_in_progress: ({ trees }) =>
    `Alguien está en ${trees ?? 'uno de estos árboles'}. No se cambió nada. Espera a que termine.`,
  rows_held: ({ trees }) =>
    `Alguien recoge ramas en la fila de ${trees ?? 'estos árboles'}. No se cambió nada. Espera a que termine.`,
  trees_dealt: ({ trees }) =>
    `${trees ?? 'Algunos de estos árboles'}: asignados a alguien que puede ir de camino. No se cambió nada. Quita antes la asignación.`,
  trees_flagged: ({ trees }) =>
    `${trees ?? 'Algunos de estos árboles'}: tienen una marca abierta. No se cambió nada. Ciérrala primero.`,
  trees_done: ({ trees }) =>
    `${trees ?? 'Algunos de estos árboles'}: ya hechos en esta ronda. No se cambió nada. Quítalos de la selección.`,
  other_species: ({ trees, species }) =>
    `Esta variedad es de ${species ?? 'otra especie'}, y ${trees ?? 'algunos de estos árboles'} no lo son. No se cambió nada. Elige también la especie.`,
  places_taken: ({ trees }) =>
    `Dos árboles estarían en un mismo lugar: ${trees ?? 'mira los números'}. No se cambió nada. Da otra fila u otro lugar.`,
  code_taken: () => 'Otro bloque tiene estas letras. Elige otras.',
  block_has_history: () =>
    'En este bloque hay algo registrado, así que se queda. Pon sus árboles como arrancados.',
  cultivar_known: () => 'Esta especie ya tiene una variedad con ese nombre. Cambia esa.',
  cultivar_in_use: ({ trees }) =>
    `${trees ?? 'Algunos árboles'}: de esta variedad. Dales otra primero.`,
}
