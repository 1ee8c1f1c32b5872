import type { wentWrong as en } from '../en/went-wrong'

export const wentWrong: typeof en = {
  appName: 'Rowcall',
  title: 'Algo se rompió en esta pantalla',
  kept: 'Lo que hiciste queda en este dispositivo. Carga la pantalla otra vez.',
  again: 'Cargarla otra vez',
  notFoundTitle: 'En esta dirección no hay nada',
  notFoundWhy: 'El enlace puede ser viejo o estar cortado. Sigue desde la primera pantalla.',
  toStart: 'A la primera pantalla',
  ifItStays: 'Si pasa otra vez, díselo a tu jefe de cuadrilla y sigue trabajando.',
}
