import type { dayAhead as english } from '../en/day-ahead'
import { capitalised } from '../species'
import { plural } from './plural'

const moreTrees = (count: number) => plural(count, '1 árbol', `${count} árboles`)
const about = (from: number, to: number, unit: (count: number) => string) =>
  from === to ? `más o menos ${unit(to)}` : `de ${from} a ${unit(to)}`
const days = (count: number) => plural(count, '1 día', `${count} días`)
const hours = (count: number) => plural(count, '1 hora', `${count} horas`)

export const dayAhead: typeof english = {
  title: 'Lo que queda del día',
  more: (from, to, clock) =>
    to === 0
      ? `No es probable que se termine ningún árbol más hasta las ${clock}.`
      : `${capitalised(about(from, to, moreTrees))} más hasta las ${clock} al ritmo de hoy.`,
  allToday: (left, from, to) =>
    plural(
      left,
      `El árbol que queda se terminaría entre las ${from} y las ${to}.`,
      `Los ${left} árboles que quedan se terminarían entre las ${from} y las ${to}.`
    ),
  maybeToday: (left, days) =>
    plural(
      left,
      `El árbol que queda quizá se termine hoy, o pida ${plural(days, 'un día más', `hasta ${days} días más`)} como este.`,
      `Los ${left} árboles que quedan quizá se terminen hoy, o pidan ${plural(days, 'un día más', `hasta ${days} días más`)} como este.`
    ),
  moreDays: (left, from, to) =>
    plural(
      left,
      `El árbol que queda pide ${about(from, to, days)} más como este.`,
      `Los ${left} árboles que quedan piden ${about(from, to, days)} más como este.`
    ),
  often: 'Ocho de cada diez veces se cumple.',
  notEnough: (done, needed) =>
    `Aún es pronto para decir hasta dónde se llega: ${done} de los ${needed} árboles terminados que hacen falta.`,
  nobody: 'Nadie poda ahora, así que no hay ritmo del que partir.',
  noneLeft: 'No queda nada que alguien de aquí pueda podar.',
  stopped: 'El trabajo está parado. Hasta dónde se llega se dirá cuando siga.',
  over: 'El tiempo de este turno ha terminado.',

  behind: 'En qué se basa',
  people: (count) =>
    plural(count, '1 persona poda o está lista', `${count} personas podan o están listas`),
  endsByShift: (clock) =>
    `Hasta que termine el turno a las ${clock}, menos descansos como hasta ahora`,
  endsByLight: (clock) => `Hasta que se ponga el sol a las ${clock}, antes de que termine el turno`,
  share: (share) =>
    `${share} del tiempo es junto a los árboles; el resto es caminar, herramientas y charla`,
  trees: (count) =>
    plural(
      count,
      '1 árbol terminado, sin descansos, paradas ni lecciones',
      `${count} árboles terminados, sin descansos, paradas ni lecciones`
    ),
  strays:
    'Un tiempo muy fuera de lo normal, como un teléfono en el bolsillo toda la noche, se recorta.',
  usual:
    'Donde aún se ha visto poco: 34 minutos para un manzano adulto de porte alto (New Hampshire, boletín 257, 1931), y 1,75 veces eso para quien empieza (práctica común).',
  closed: (count) =>
    plural(count, '1 árbol cerrado no se cuenta', `${count} árboles cerrados no se cuentan`),
  off: (count) =>
    plural(
      count,
      '1 árbol hoy no se poda y no se cuenta',
      `${count} árboles hoy no se podan y no se cuentan`
    ),
  beyond: (count) =>
    plural(
      count,
      '1 árbol pide un serrucho o escalera que nadie de aquí puede usar',
      `${count} árboles piden un serrucho o escalera que nadie de aquí puede usar`
    ),
  table: 'Minutos de una persona por árbol',
  kind: 'Árboles',
  minutes: 'Minutos',
  finished: 'Terminados',
  minutesWords: (middle, from, to) => `${middle} (${from} a ${to})`,

  hoursLeft: (from, to) => `Trabajo que queda: ${about(from, to, hours)} de una persona.`,
  blockToday: (from, to) => `Con quienes están ahora: se termina entre las ${from} y las ${to}.`,
  blockDays: (from, to) => `Con quienes están ahora: ${about(from, to, days)} más como este.`,
  blockMaybe: (from) => `Con quienes están ahora: a las ${from} como pronto, quizá hoy no.`,
}
