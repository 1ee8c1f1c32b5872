import type { disease as en } from '../en/disease'
import { plural } from './plural'

export const disease: typeof en = {
  title: 'Mapa de enfermedad',
  counting: 'Contando…',
  headline: {
    clustered: (ratio) => `Agrupada: ${moreSick(ratio)}`,
    spread_out: 'Repartida: menos vecinos enfermos de los que daría el azar',
    chance: 'Sin patrón: el azar solo ya haría esto',
    too_few: (sick) =>
      `Muy pocos para saberlo: ${plural(sick, '1 árbol enfermo', `${sick} árboles enfermos`)}`,
    none: 'Aquí no hay nada marcado',
    one_sick: 'Muy pocos para saberlo: 1 árbol enfermo',
    all_sick: 'Todos los árboles de su clase aquí están enfermos',
    no_neighbours: 'Sin patrón: ningún árbol de su clase está junto a otro',
  },
  fewSick: 'Con tan pocos, un árbol más puede cambiarlo.',
  incidence: (sick, trees, kinds) => `Marcados ${sick} de ${trees} (${kinds}).`,
  between: (share, low, high) => `Es el ${share}, probablemente entre ${low} y ${high}.`,
  certain: (confirmed, suspected) => `${confirmed} confirmados, ${suspected} solo sospechados.`,
  fromFlags:
    'Se cuenta por las marcas: un árbol que nadie miró cuenta como no enfermo. Mira antes de decidir.',

  sign: '¿Qué señal?',
  anySign: 'Todas las señales',
  where: '¿Dónde?',
  everywhere: 'Todo el huerto',
  which: '¿Qué marcas cuentan?',
  suspectedToo: 'Todas',
  confirmedOnly: 'Confirmadas',
  howFar: '¿Hasta dónde alrededor de los enfermos?',
  ring1: 'Árboles vecinos',
  ring2: 'Dos árboles',

  legend: 'Señales de este mapa',
  confirmed: 'Confirmada',
  suspected: 'Sospechada',
  toScout: 'Por mirar',
  mapLabel: 'Mapa de los árboles enfermos. Las flechas van de árbol en árbol, Intro abre uno.',
  isConfirmed: 'enfermedad confirmada',
  isSuspected: 'enfermedad sospechada',
  isToScout: 'por mirar',

  scout: (count) => plural(count, 'Mira 1 árbol', `Mira ${count} árboles`),
  scoutNone: 'Ningún árbol por mirar',
  scoutNoneNote: 'La lista llega con el primer árbol enfermo.',
  order: '¿En qué orden?',
  walking: 'Según se camina',
  byRisk: 'Más riesgo primero',
  sickBeside: (count) => `junto a ${plural(count, '1 árbol enfermo', `${count} árboles enfermos`)}`,
  oneFurther: 'un árbol más allá',
  kin: {
    shares_disease: 'una clase que puede compartirla',
    other_kind: 'otra clase, al final',
  },
  pick: (count) =>
    plural(count, 'Elegir 1 árbol para asignar', `Elegir ${count} árboles para asignar`),
  pickSub: 'Quien los reciba primero mira y luego poda.',
  print: 'Imprimir la lista',
  andMore: (count) => `${count} más están en el mapa y en papel.`,
  howListed:
    'Primero su misma clase, luego los más cercanos, luego los que tienen más vecinos enfermos: práctica común. Las clases que comparten enfermedad son las que nombra una fuente.',

  paperTitle: (where) => `Árboles por mirar: ${where}`,
  paperNote:
    'Mira cada rama, del tronco a la punta. Escribe lo que veas; si cortas, limpia la cuchilla antes del árbol siguiente.',
  columns: {
    tree: 'Árbol',
    kind: 'Clase',
    why: 'Por qué',
    healthy: 'Nada visto',
    seen: 'Qué se vio',
  },

  figures: 'Las cifras detrás',
  showFigures: 'Ver las cifras detrás',
  hideFigures: 'Ocultar las cifras',
  figure: {
    pairs: 'Parejas de vecinos, ambos enfermos',
    ofChance: (seen, expected) => `${seen}; por azar ${expected}`,
    mixed: 'Uno enfermo, otro no',
    chanceOf: 'Probabilidad de tantas parejas o más',
    inShuffles: (p, rounds) => `${p}, con ${rounds} sorteos`,
    z: 'Lo mismo por fórmula, z',
    moran: 'I de Moran',
    moranValue: (i, mean, p) => `${i}; por azar ${mean}; p ${p}`,
    rows: 'Filas con enfermos juntos',
    rowsValue: (together, rows, z) => `${together} de ${rows} probadas; z ${z}`,
    quadrats: 'Índice de dispersión',
    quadratsValue: (index, count, p) => `${index} en ${count} grupos de seis árboles; p ${p}`,
    notDefined: 'no definido: muy pocos',
    severalKinds: 'no definido: varias clases de árbol',
  },
  method: [
    'Vecinos son los que están al lado en la fila, al otro lado de la calle o en diagonal; un hueco no deja pasar nada. Solo se cuentan las clases de árbol que la tienen.',
    'En cada sorteo se reparten a ciegas tantos enfermos de cada clase como hay. Una de cada veinte miradas dice agrupada por puro azar.',
    'Parejas e I de Moran: Cliff y Ord 1981. Rachas en filas: Madden y otros 1982, Phytopathology 72:195. Índice de dispersión: Madden y Hughes 1995. Intervalo: Wilson 1927.',
  ],
  hosts: 'Qué clases comparten enfermedad',

  replace: 'Árboles que quizá haya que sustituir',
  replaceNote:
    'Es una propuesta. Decide el responsable, y lo escribe en la marca. Cuánto suele producir bien una clase es práctica común, sin fuente.',
  noneToReplace: 'Ninguno está muerto, ni muy enfermo y viejo o junto a jóvenes.',
  reason: {
    dead: 'muerto',
    badly_sick: (sign) => `muy enfermo: ${sign}, confirmado`,
    old: (years, usual) => `${years} años; lo usual en su clase: ${usual}`,
    beside_young: (trees) =>
      `junto a ${plural(trees, '1 árbol joven', `${trees} árboles jóvenes`)}`,
    sick_neighbours: (trees) =>
      plural(trees, '1 vecino también está enfermo', `${trees} vecinos también están enfermos`),
  },
  decide: 'Anotar qué se decide',
  toMap: 'Mapa de enfermedad',
  onMap: 'Enfermedad',
  offMap: 'Sin enfermedad',
}

/** From two up. */
const times = [
  'el doble de',
  'el triple de',
  'unas cuatro veces',
  'unas cinco veces',
  'unas seis veces',
  'unas siete veces',
  'unas ocho veces',
  'unas nueve veces',
  'unas diez veces',
]

function moreSick(ratio: number): string {
  if (ratio < 1.25) return 'algunos vecinos enfermos más de los que daría el azar'
  const known = ratio < 1.75 ? 'como vez y media' : times[Math.round(ratio) - 2]
  return `${known ?? 'más de diez veces'} los vecinos enfermos que daría el azar`
}
