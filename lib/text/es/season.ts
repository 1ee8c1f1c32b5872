import type { season as english } from '../en/season'
import { plural } from './plural'

const between = (from: number, to: number) => (from === to ? `${from}` : `${from} a ${to}`)

export const season: typeof english = {
  title: 'La temporada que viene',
  roomNote: 'Horas, días secos y cuánta gente hace falta',
  lead: 'Cuánto hay que podar, en qué meses y cuánta gente hace falta.',
  hours: (trees, from, to) =>
    `${plural(trees, 'Queda 1 árbol', `Quedan ${trees} árboles`)}, unas ${between(from, to)} horas de una persona.`,
  people: (from, to, days) =>
    `En ${plural(days, 'un día seco', `${days} días secos`)} son ${plural(to, 'más o menos 1 persona', `unas ${between(from, to)} personas`)} cada vez.`,
  noDay:
    'Para algunos árboles no queda ningún día seco en sus meses: supón más días, u otros meses.',
  noTrees: 'No queda ningún árbol por podar.',
  often: 'Ocho veces de cada diez queda dentro de esto, si se cumple lo que se supone abajo.',
  bySpecies: 'Por especie',
  species: 'Árboles',
  left: 'Quedan',
  hoursHead: 'Horas',
  months: 'Meses',
  days: 'Días secos',
  hoursWords: between,
  monthsWords: (from, to) => (from === to ? from : `${from} a ${to}`),
  supposed: 'Lo que se supone',
  fromMonth: 'Desde',
  toMonth: 'Hasta el final de',
  daysAMonth: 'Días de trabajo al mes',
  hoursADay: 'Horas de cada persona en un día así',
  dryTenths: 'De diez días son secos',
  fewer: (what) => `Menos: ${what}`,
  more: (what) => `Más: ${what}`,
  counted: (days, dry) =>
    `Contado por horas: ${dry} de ${plural(days, '1 día', `${days} días`)} secos. Los meses sin cinco días se quedan con lo supuesto.`,
  paste: 'Contar días secos con tiempo por horas',
  pasteHint:
    'Pega horas de temporadas pasadas con su lluvia. Un día es seco con menos de 0,25 mm (0,01 in) de 6 a 18 horas.',
  ownMonths:
    'Albaricoqueros y cerezos guardan los meses de las reglas de la casa (Universidad de California), se ponga aquí lo que se ponga.',
  rests: (trees) =>
    plural(
      trees,
      'Minutos por árbol: de 1 árbol terminado y cifras publicadas.',
      `Minutos por árbol: de ${trees} árboles terminados y cifras publicadas.`
    ),
  share: (share) => `${share} del tiempo es junto a los árboles, sin contar descansos.`,
  brush: (from, to) =>
    `Recoger las ramas cortadas no está incluido: más o menos un tercio más, ${between(from, to)} horas (New Hampshire, boletín 257, 1931).`,
}
