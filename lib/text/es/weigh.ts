import type { weigh as en } from '../en/weigh'

export const weigh: typeof en = {
  title: '¿Cuánto pesa esta rama?',
  lead: 'Mide con los pies en el suelo. Cuenta el número mayor.',
  thick: 'Grosor donde se cortaría',
  thin: 'Grosor en su punta',
  length: 'Largo',
  branches: 'Ramas laterales',
  branchesOf: { bare: 'Pocas, sin hojas', leafy: 'Muchas, o con hojas' },
  hold: '¿Cómo se sujeta?',
  holds: { close: 'Pegada al cuerpo', at_arms_length: 'Con los brazos estirados' },
  take: '¿Dónde la toman las manos?',
  takes: { off_the_tree: 'Al salir del árbol', from_the_ground: 'Desde el suelo' },
  fillAll: 'Primero el grosor y el largo.',

  weight: (least, most) => `de ${least} a ${most}`,
  by: {
    one_hand: 'Una persona, con las dos manos libres para ella.',
    one_person: 'Una persona, con las dos manos.',
    two_people: 'Dos personas, una en cada extremo.',
    in_pieces: 'Bájala en trozos.',
    refer: 'Es del arborista.',
  },
  pieces: (lengths) => `De la punta hacia dentro: ${lengths}.`,
  whyRefer: {
    thick: (limit) => `Más de ${limit}, regla de este huerto.`,
    too_many_pieces: 'Más de cuatro trozos, o trozos demasiado cortos para sujetarlos.',
  },
  limit: (limit) => `Una persona, sujeta así: hasta ${limit}.`,
  flag: '¿Nuestra o del arborista?',

  cautions: {
    ladder: 'En una escalera nadie sujeta nada.',
    falls: 'Una rama que cae tira más que su peso.',
    below: 'Nadie está debajo ni al lado, y la salida está libre.',
    decides: 'Decide el jefe de cuadrilla en el lugar. Valen las normas locales.',
  },
  how: 'Cómo se calcula',
  wood: (least, most) => `Madera verde de esta clase: de ${least} a ${most}.`,
  woodSource:
    'Pesos de troncos verdes citados del US National Park Service y de otra lista pública; vale el mayor.',
  woodUnknown: (usual) =>
    `De esta clase no hay nada impreso. Se suele contar ${usual}; aquí, de la madera frutal más ligera a la más pesada. Práctica común.`,
  more: (least, most) =>
    `La rama como un tronco que adelgaza, por ${least} a ${most} por las ramas laterales. Sin fuente.`,
  niosh:
    'Límite: la ecuación revisada de NIOSH para levantar (DHHS (NIOSH) 94-110), una vez por minuto y una hora como mucho. Vale para dos manos y pies en suelo firme. No vale ni para una mano ni para escaleras.',
  factors: (kg, factors) => `${kg} × ${factors}.`,
  two: 'Dos personas: dos tercios de lo que cada una levanta sola. De memoria.',
  oneHand: (weight) =>
    `Hasta ${weight} una persona no tiene que pensarlo más: regla de este huerto, sin fuente.`,

  leads: 'Cuánto pesa una rama lo juzga un jefe de cuadrilla.',
  helper:
    'Puedes ayudar al jefe de cuadrilla: ponte donde te diga y no sujetes nada en una escalera.',
  call: 'Llama a tu jefe de cuadrilla',
}
