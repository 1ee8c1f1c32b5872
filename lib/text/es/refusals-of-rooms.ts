import type { refusalsOfRooms as en } from '../en/refusals-of-rooms'

export const refusalsOfRooms: typeof en = {
  shifts_planned: () =>
    'Hay turnos programados en esta ronda. Di que se cancelan y después ciérrala.',

  // olvidar
  forgotten_before: () => 'Este nombre ya está olvidado. No queda nada por hacer.',
  not_yourself: () => 'Nadie se olvida a sí mismo. Pídeselo a otro responsable.',
  still_here: ({ whose }) =>
    `${whose ?? 'Esta persona'} sigue en el recuento. Anota antes su salida.`,
  not_found_yet: ({ whose }) =>
    `Nadie ha dicho que ${whose ?? 'esta persona'} haya aparecido. Búscala primero.`,
  still_at_tree: ({ tree, row, whose }) =>
    `${whose ?? 'Esta persona'} sigue en ${tree ?? row ?? 'un árbol'}. Termina eso primero.`,
  still_has_tools: ({ tool, whose }) =>
    `${whose ?? 'Esta persona'} aún tiene ${tool ?? 'una herramienta'}. Recógela primero.`,
  call_open: ({ whose }) =>
    `Hay una llamada abierta de ${whose ?? 'esta persona'} o sobre ella. Ciérrala primero.`,
  work_handed_in: ({ whose }) =>
    `${whose ?? 'Esta persona'} entregó trabajo que nadie ha aceptado. Acéptalo primero.`,
  answers_for: ({ person, whose }) =>
    `${whose ?? 'Esta persona'} responde por ${person ?? 'alguien menor de edad'}. Nombra antes a otra persona adulta.`,
}
