import type { cuts as en } from '../en/cuts'

export const cuts: typeof en = {
  backTo: (tag) => `Volver a ${tag}`,
  notSure: '¿Dudas? Llama a tu jefe',
  less: 'Menos',
  more: 'Más',
  sources: 'De dónde vienen los números',
  cut: {
    title: '¿Qué herramienta, y cómo?',
    thickness: 'Grosor donde cortarías',
    thinner: 'Más delgada',
    thicker: 'Más gruesa',
    wood: 'La madera está',
    live: 'Viva',
    dead: 'Muerta',
    where: 'Se cortaría',
    reaches: { within: 'A tu alcance', above: 'Más arriba' },
    how: {
      pole_pruner:
        'Los dos pies en el suelo, nunca en una escalera. Ponte a un lado, engancha junto a una rama lateral o en el collar, y deja que caiga libre.',
      pruner:
        'Un corte limpio junto al collar o en una rama lateral, con la cuchilla hacia lo que queda.',
      lopper:
        'Con las dos manos, un corte junto al collar o en una rama lateral. Si no cierra con facilidad, usa el serrucho.',
      saw: 'Junto al collar o en una rama lateral, con la otra mano bien lejos del filo.',
    },
    pole: {
      below: 'Casco y ojos protegidos. Nadie debajo: cae a lo largo de la pértiga.',
      line: (distance) =>
        `Nunca cerca de una línea eléctrica: pértiga, rama y tú, a ${distance} o más, contando todo su largo. ¿Hay una línea junto al árbol? No es tuyo: avisa.`,
    },
    notFromGround: 'Desde el suelo no.',
    notFromGroundSays: (limit) =>
      `Una tijera de pértiga corta madera viva de hasta ${limit}. Esto solo se corta desde una escalera, entre dos personas y una con permiso de usarla; si no, déjalo a tu jefe de cuadrilla.`,
    deadWood: 'La madera muerta salta y mella la tijera: usa el serrucho y ponte a un lado.',
    threeTitle: 'En tres cortes, para que no se desgarre la corteza',
    three: {
      first: (depth, out) => `Desde abajo, ${depth} de hondo, a ${out} del collar.`,
      second: (out) => `Desde arriba, a ${out}, hasta que caiga.`,
      third: 'Quita el tocón, justo por fuera del collar. Ni a ras ni dejando tocón.',
    },
    standClear:
      'Nadie debajo, ni más cerca que una vez y media su largo. En la escalera nadie sujeta una rama.',
    oneHand: 'Una rama que sujetas sin esfuerzo con una mano puede ir en un corte.',
    refer: (limit) => `Más de ${limit}: no es tuya.`,
    referSays: 'Déjala como está. Márcala, y se llama a un arborista con licencia.',
    referStep: 'Marcar y derivar',
    pictureOne: (thickness) =>
      `Una rama de ${thickness} de grosor, con un corte justo por fuera de su collar.`,
    pictureThree: (thickness) =>
      `Una rama de ${thickness} de grosor. Corte 1 desde abajo, corte 2 desde arriba algo más afuera, corte 3 justo por fuera del collar. Dibujado a escala.`,
    pictureRefer: (thickness) => `Una rama de ${thickness} de grosor. No se corta nada.`,
    lateralTitle: '¿Es lo bastante gruesa la rama que queda?',
    lateral: 'Rama lateral que queda',
    lateralOk: 'Un tercio de lo que se va, o más: puede seguir ella.',
    lateralBad: (least) =>
      `Demasiado delgada para seguir: pide ${least} o más. Corta en otra, o junto al collar.`,
    leader: 'La guía a su lado',
    rival: 'Más gruesa que la mitad de la guía: una rival. Quítala, o pregunta.',
    noRival: 'La mitad de la guía o menos: puede quedarse.',
    houseLimits: (pruner, lopper, limb) =>
      `Tijera hasta ${pruner}, dos manos hasta ${lopper}, serrucho hasta ${limb}: reglas de este huerto. Práctica común; sin número publicado.`,
    poleLimit: (limit) => `Tijera de pértiga hasta ${limit}, madera viva: igual.`,
    lineFrom: (distance) =>
      `${distance} de una línea: 29 CFR 1910.269(x), hasta 50 kV; por encima, más lejos. Valen las normas locales.`,
    rule: (undercut, out, further) =>
      `Desde abajo ${undercut} del grosor, a ${out}; desde arriba ${further} más afuera.`,
    house: 'Lo que se usa aquí (práctica común)',
    lateralFrom: 'Un tercio: referencias generales, de segunda mano.',
    leaderFrom: (source) => `La mitad de la guía: ${source}.`,
    oneHandFrom: 'Una mano, un corte: ANSI A300-1995, según una reimpresión.',
    range: (least, most) => `${least} a ${most}`,
  },
  shorten: {
    taken: 'Cuánto se quita',
    length: 'Largo del brote',
    shorter: 'Más corto',
    longer: 'Más largo',
    lengths: (left, taken) => `Quedan ${left}, se van ${taken}.`,
    budsLost: (share) => `Se va el ${share} de sus yemas de fruto.`,
    pull: (least, most) => `La cosecha tira del ${least} al ${most} menos donde empieza la rama.`,
    onSpurs: 'Su fruta está en dardos sobre madera más vieja: los brotes llevan poca.',
    may_go: 'Se puede quitar.',
    lead_says: 'Más de la mitad: solo donde lo diga tu jefe de cuadrilla.',
    too_much: (share) => `Demasiado. No más del ${share}.`,
    refused: 'No lo acortes.',
    wouldCost: (share) => `Costaría el ${share} de las yemas de fruto.`,
    tipShoot: {
      leave: (length) => `Hasta ${length}: déjalo.`,
      may_cut: (length) => `De más de ${length}: se puede cortar a una yema.`,
    },
    tipShootFrom: (length) =>
      `Una fuente, de segunda mano, sobre manzanos que dan fruto en la punta: los brotes de hasta ${length} se quedan; uno más largo se puede cortar a una yema. En la duda, déjalo.`,
    ask: 'Llama a tu jefe de cuadrilla',
    profile: 'Dónde están las yemas de fruto',
    profiles: {
      base: 'Cerca de la base',
      middle: 'En el medio',
      tip: 'En la punta',
      counted: 'Contadas',
    },
    keep: (cultivar) => `Anotarlo para cada ‘${cultivar}’`,
    counts: 'Yemas en cada décimo, de la base a la punta',
    countsHint: 'Diez números: divide un brote en diez y cuenta.',
    countsWrong: 'Escribe diez números enteros de 0 a 20, no todos 0.',
    picture: (share) =>
      `Un brote al final de una rama, con sus yemas de fruto. Se corta el ${share} exterior. Una flecha muestra dónde tira la cosecha, y una punteada dónde tiraría sin cortar.`,
    before: 'sin cortar',
    reckoned: (shoot, limb) =>
      `Para un brote de ${shoot} al final de una rama horizontal de ${limb}. Lo menor: igual de fruta, más adentro. Lo mayor: falta también la fruta de las yemas que se van. Las ramas reales están entre los dos.`,
    budsFrom:
      'Cuántas yemas hay en cada parte está dibujado según la palabra, a nuestro criterio. Un jefe de cuadrilla puede contarlas.',
  },
}
