import type { plan as english } from '../en/plan'
import { plural } from './plural'

export const plan: typeof english = {
  link: 'Planear quién toma qué árboles',
  title: (trees, teams) =>
    trees === 0
      ? 'No hay nada que asignar'
      : `${plural(trees, '1 árbol', `${trees} árboles`)} para ${plural(teams, 'un equipo', `${teams} equipos`)}`,
  lead: 'Una propuesta: mírala, cambia lo que sepas mejor y luego asígnala. Antes no se asigna nada.',
  noShift: 'El plan se hace para un turno abierto. Ábrelo primero.',
  toShift: 'Al turno',
  choices: 'Para quién, dónde y hasta cuándo',
  until: 'Hasta',
  earlier: 'Media hora antes',
  later: 'Media hora después',
  people: 'Quién participa',
  blocks: 'Dónde',
  teams: 'Los equipos',
  noTeams: 'No hay nadie que pueda podar.',
  hours: (each) => `unas ${each} de trabajo`,
  teamTrees: (count) => plural(count, '1 árbol', `${count} árboles`),
  noTrees: 'No queda ningún árbol para ellos.',
  fromTo: (from, to) => `${from} a ${to}`,
  pictureOf: (block) => `${block}, visto desde arriba, con el camino de cada equipo por número`,
  left: 'Lo que queda',
  leftWhy: {
    hours: (count) =>
      plural(count, '1 árbol: las horas no alcanzan', `${count} árboles: las horas no alcanzan`),
    skills: (count) =>
      plural(
        count,
        '1 árbol: pide serrucho, escalera o cortes marcados, y ningún equipo tiene la habilidad, la herramienta en mano y dos personas',
        `${count} árboles: piden serrucho, escalera o cortes marcados, y ningún equipo tiene la habilidad, la herramienta en mano y dos personas`
      ),
    beside_overhead: (count) =>
      plural(
        count,
        '1 árbol: junto al serrucho o escalera de otros. Asígnalo cuando terminen',
        `${count} árboles: junto al serrucho o escalera de otros. Asígnalos cuando terminen`
      ),
    closed: (count) => plural(count, '1 árbol: cerrado', `${count} árboles: cerrados`),
    off: (count) => plural(count, '1 árbol: hoy no se poda', `${count} árboles: hoy no se podan`),
    dealt: (count) =>
      plural(
        count,
        '1 árbol: ya guardado para alguien',
        `${count} árboles: ya guardados para alguien`
      ),
  },
  withoutAdult: (names) => `Su propio adulto no está libre para ir con: ${names}.`,
  rules: 'Cómo se hace',
  rule: {
    skills:
      'Los árboles de serrucho y escalera van a dos personas, una con la habilidad y la herramienta, y nunca con un menor.',
    beside: 'Lo que está junto a un árbol de serrucho o escalera va al mismo equipo, o se queda.',
    newcomers:
      'Quien empieza va con alguien que poda sin ayuda; los menores, con su propio adulto.',
    order:
      'Los árboles sanos van antes que los enfermos, en el orden del camino: una fila de subida y la siguiente de bajada.',
  },
  minutes: (finished) =>
    plural(
      finished,
      'Minutos por árbol: de 1 árbol terminado y cifras publicadas.',
      `Minutos por árbol: de ${finished} árboles terminados y cifras publicadas.`
    ),
  deal: (trees) => plural(trees, 'Asignar este árbol', `Asignar estos ${trees} árboles`),
  dealNone: 'Asignar árboles',
  chooseTeam: 'Marca un equipo que reciba sus árboles.',
  dealing: (at, all) => `Asignando al equipo ${at} de ${all}…`,
  dealt: (trees, teams) =>
    `${plural(trees, '1 árbol queda asignado', `${trees} árboles quedan asignados`)} a ${plural(teams, 'un equipo', `${teams} equipos`)}.`,
  notDealt: (names) =>
    `Sin asignar, porque algo cambió entretanto: ${names}. El plan se hace de nuevo.`,
  noAnswer: (names) => `Sin respuesta para ${names}: inténtalo donde haya señal.`,
  openMap: 'Míralo en el mapa',
}
