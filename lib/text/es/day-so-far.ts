import type { daySoFar as en } from '../en/day-so-far'
import { plural } from './plural'

export const daySoFar: typeof en = {
  title: 'Lo que necesita a alguien',
  none: 'Nada espera a nadie.',
  stopped: (where, name) => `El trabajo está parado ${where}, por aviso de ${name}.`,
  everywhere: 'en todo el huerto',
  inBlock: (block) => `en el bloque ${block}`,
  notAnsweredYet: (count) =>
    plural(count, '1 persona no ha respondido.', `${count} personas no han respondido.`),
  allAnswered: 'Todos han respondido. Un jefe de cuadrilla dice cuándo sigue el trabajo.',
  nobodyComes: 'Todavía no va nadie.',
  comes: (name) => `Va ${name}.`,
  still_inside: (count, who) =>
    plural(
      count,
      `No consta que ${who} haya salido de la zona cerrada.`,
      `No consta que ${who} hayan salido de la zona cerrada.`
    ),
  to_look_over: (count, trees) =>
    plural(
      count,
      `${trees} está hecho y espera revisión.`,
      `${count} árboles están hechos y esperan revisión: ${trees}.`
    ),
  hazard: (tag, sign) => `Peligro en ${tag}: ${sign}`,
  since: (time, name) => `Visto a las ${time} por ${name}.`,
  alone_with_ladder: (name, tag) => `${name} está sin compañía con una escalera en ${tag}.`,
  aloneNote: 'Quien le acompaña no está allí.',
  waits_for_lead: (name, tag) => `${name} marcó ${tag} y te espera allí.`,
  not_heard: (name, duration) => `No se sabe de ${name} desde hace ${duration}.`,
  not_heard_today: (name) => `No se ha sabido de ${name} en este turno.`,
  many_not_heard: (count, who) => `Hace rato que no se sabe de ${count} personas: ${who}.`,
  manyNotHeardNote: 'Están en la cuadrilla, junto al mapa. Busca a quien esté en un árbol.',
  lastAt: (tag) => `La última vez en ${tag}.`,
  notAtTree: 'No está en ningún árbol.',
  not_let_in: (count, who) =>
    plural(count, `${who} espera a que le dejes entrar.`, `${who} esperan a que les dejes entrar.`),
  not_answered: (count, who) =>
    plural(
      count,
      `${who} no ha respondido que el trabajo sigue.`,
      `${who} no han respondido que el trabajo sigue.`
    ),
  not_briefed: (count, who) =>
    plural(count, `A ${who} le falta la charla.`, `A ${who} les falta la charla.`),
  without_equipment: (count, who) =>
    plural(count, `A ${who} le falta revisar el equipo.`, `A ${who} les falta revisar el equipo.`),
  without_tool: (count, who) =>
    plural(
      count,
      `${who} no tiene herramienta apta y limpia.`,
      `${who} no tienen herramienta apta y limpia.`
    ),
  lacks_other: (count, who) =>
    plural(count, `A ${who} aún le falta algo.`, `A ${who} aún les falta algo.`),
  long_at_tree: (name, where, duration) => `${name} lleva ${duration} ${where}.`,
  atTree: (tag) => `en ${tag}`,
  atRow: 'en una fila',
  disease_to_judge: (count, trees) =>
    plural(
      count,
      `Se sospecha enfermedad en ${trees}. Decide un jefe de cuadrilla.`,
      `Se sospecha enfermedad en ${count} árboles: ${trees}. Decide un jefe de cuadrilla.`
    ),
  without_tree: (count, who) =>
    plural(
      count,
      `${who} puede empezar y no tiene árbol.`,
      `${who} pueden empezar y no tienen árbol.`
    ),
  for_arborist: (count, trees) =>
    plural(
      count,
      `${trees} espera a un arborista con licencia.`,
      `${count} árboles esperan a un arborista con licencia: ${trees}.`
    ),
  half_done: (count, trees) =>
    plural(
      count,
      `${trees} está a medias y no hay nadie.`,
      `${count} árboles están a medias y no hay nadie: ${trees}.`
    ),
  on_brush: (count, who) => plural(count, `${who} recoge ramas.`, `${who} recogen ramas.`),
  andMore: (count) => `${count} más`,
}
