import type { whatToCut as en } from '../en/what-to-cut'
import { shoots } from './shoots'

export const whatToCut: typeof en = {
  lookFor: 'Busca',
  never: 'Nunca',
  why: 'Por qué, y de dónde viene',
  steps: {
    dead_broken_diseased: {
      title: 'Quita lo muerto, roto y enfermo',
      look: 'Ramillas quebradizas sin yemas, puntas rotas, corteza hundida o que supura.',
      do: 'Corta hasta madera sana, en una rama lateral o junto al collar.',
      never: 'Dejar un tocón o cortar a ras del tronco.',
      why: 'La madera muerta deja entrar pudrición y enfermedad, y tapa lo demás que hay que quitar.',
      done: 'Lo muerto está fuera',
      picture:
        'Ramas muertas en el árbol, cada una cortada donde empieza. De cerca: una mancha hundida y el corte por debajo, en la siguiente rama lateral.',
    },
    crossing_rubbing: {
      title: 'Quita las ramas que se cruzan o rozan',
      look: 'Dos ramas que se tocan, o se tocarán con fruta. Corteza pelada por el roce.',
      do: 'Deja la que crece hacia fuera. Quita la otra en una rama lateral o junto al collar.',
      never: 'Quitar una rama principal sin tu jefe de cuadrilla.',
      why: 'La corteza que roza es una herida que no cierra.',
      done: 'Ya nada roza',
      picture: 'Dos ramas se rozan en el árbol. La que crece hacia dentro se corta en su collar.',
    },
    open_the_centre: {
      title: 'Abre el centro',
      look: 'Lo que sube o cruza dentro del vaso.',
      do: 'Córtalo en la rama de la que sale, junto al collar.',
      never:
        'Quitar una rama principal sin tu jefe de cuadrilla, o pelar el interior: el sol quema la corteza.',
      why: 'Con luz y aire dentro, la madera baja sigue dando fruto y las hojas se secan antes.',
      done: 'El centro está abierto',
      picture:
        'De lado: un vaso, y se corta lo que sube en el medio. Desde arriba: ramas principales como radios de una rueda, y se corta lo que crece hacia dentro.',
    },
    free_the_leader: {
      title: 'Libera la guía',
      look: 'Lo que se levanta junto a la guía, la mitad de gruesa que ella o más.',
      do: 'Quita las rivales junto al collar, o vuelve a una rama lateral más tendida.',
      never: 'Cortar la guía.',
      why: 'Dos guías forman una horqueta que se raja.',
      done: 'La guía está libre',
      picture: 'Una guía sigue hacia arriba. Se cortan dos que se levantan a su lado.',
    },
    let_light_in: {
      title: 'Deja entrar la luz',
      look: 'Madera fina que llena el centro.',
      do: 'Aclárala. Pregunta a tu jefe de cuadrilla qué forma tiene este árbol.',
      never: 'Cortar algo más grueso que un pulgar hasta saber la forma.',
      why: 'Un vaso y un árbol con guía piden cortes distintos.',
      done: 'Entra la luz',
      picture: 'Un vaso de lado y desde arriba: se corta lo que llena el centro.',
    },
    ground_up_inside_out: {
      title: 'De abajo arriba, de dentro afuera',
      look: 'Chupones al pie, brotes que cuelgan hasta el suelo, madera débil a la sombra.',
      do: 'Empieza abajo y cerca del tronco, sigue hacia arriba y afuera. Aléjate a mirar cada pocos cortes.',
      never: 'Pelar una rama dejando un penacho en la punta.',
      why: 'Desde abajo se ve lo que cada corte le hace al árbol.',
      done: 'El interior está limpio',
      picture:
        'Una flecha va del pie del árbol hacia arriba y afuera. Se cortan brotes del interior.',
    },
    renew_spurs: {
      title: 'Renueva los dardos viejos',
      look: {
        pome: 'Dardos (espolones) viejos: nudosos, muy ramificados, colgantes, con yemas pequeñas.',
        stone:
          'Dardos (espolones) viejos: cortos, grises y pelados, con pocas yemas o pequeñas, casi siempre a la sombra.',
      },
      do: {
        pome: 'Quita los más viejos, o recórtalos hasta una yema joven.',
        stone: 'Recorta la ramita que lleva los más viejos hasta un brote lateral joven.',
      },
      never: 'Quitar todos en una rama, o un dardo joven con yemas gordas.',
      why: 'Los dardos se agotan. Una parte cada año los mantiene jóvenes a todos.',
      done: 'Los dardos están renovados',
      picture: 'Una rama con dardos: se corta uno viejo y ramificado, los jóvenes quedan.',
    },
    renew_shoots: {
      title: 'Haz sitio a brotes nuevos',
      look: 'Brotes del año pasado: lisos y rojizos, sin brotes laterales.',
      do: 'Quita desde su base los débiles, los sombreados y los que estorban.',
      never: 'Dejar una rama sin brotes: llevan la cosecha.',
      why: 'Solo da fruto en los brotes del año pasado, y en cada uno una sola vez.',
      done: 'Los brotes están aclarados',
      picture: 'Una rama con brotes del año pasado: uno de cada dos se corta en su base.',
    },
    last_years_wood: {
      look: 'Los brotes finos de la última temporada, lisos y sin brotes laterales.',
      done: 'Los brotes están listos',
    },
    in_training: {
      title: 'Lo demás es de tu jefe de cuadrilla',
      look: 'Un árbol joven: sus ramas aún se están eligiendo.',
      do: 'Para aquí y llama a tu jefe de cuadrilla.',
      never: 'Elegir una rama o acortar un brote.',
      why: 'Lo que se corta en los primeros años da forma al árbol para toda su vida.',
      done: 'Mi jefe lo ha visto',
      picture: 'Un árbol joven con pocas ramas. No se corta nada.',
    },
  },
  shoots,
  longTip: (length) =>
    `Uno de más de ${length} se puede cortar a una yema (una fuente, de segunda mano). En la duda, déjalo.`,
  share: {
    renew_spurs: (share) => `Este año, más o menos ${share} de ellos, por todo el árbol.`,
    renew_shoots: (share, shortest, longest) =>
      `Se va ${share} de ellos. Deja los de ${shortest} a ${longest}.`,
    shoots: (share) =>
      `No todos: en un año normal se quita ${share} del crecimiento del año pasado.`,
    fewShoots: 'Solo unos pocos: en un año normal se quita poco.',
    one: (share) => `el ${share}`,
    range: (least, most) => `entre el ${least} y el ${most}`,
  },
  limit: {
    crown: (share) => `Todos los pasos juntos: no más del ${share} de la copa este año.`,
    last_years_wood: (share) =>
      `Todos los pasos juntos: no más del ${share} de la madera del año pasado.`,
  },
  gone: {
    title: '¿Cuánto se ha quitado?',
    of: { crown: 'De la copa, a ojo', last_years_wood: 'De la madera del año pasado, a ojo' },
    tooMuch: 'Más de lo que toca en un año. Para aquí y llama a tu jefe de cuadrilla.',
  },
  neglected: {
    yes: 'Años sin podar',
    winters: (least, most) =>
      `Se recupera en ${least} o ${most} inviernos. Primero lo muerto y lo que se cruza; deja lo demás para el próximo.`,
    asEver: 'Los pasos no cambian: de todos modos, cada año se va la mitad de la madera nueva.',
  },
  outOfSeason: {
    lead: 'No es su época habitual.',
    says: 'Se poda en semanas secas después de la cosecha, o entra la enfermedad. Pregunta a tu jefe de cuadrilla si hoy toca.',
  },
  form: {
    open_centre: 'copa en vaso',
    leader: 'con guía central',
    unknown: 'forma: pregunta a tu jefe de cuadrilla',
  },
  fruitsOn: {
    spur: 'da fruto en dardos',
    shoot: 'da fruto en brotes del año pasado',
    both: 'da fruto en dardos y brotes',
    unknown: 'no está anotado dónde da fruto',
  },
  budsAt: {
    base: 'yemas cerca de la base del brote',
    middle: 'yemas en el medio del brote',
    tip: 'yemas en la punta del brote',
  },
  bornOn: {
    spurs: 'dardos',
    last_years_shoots: 'brotes del año pasado',
    base_of_last_years_shoots: 'la base de los brotes del año pasado',
    tips_of_last_years_shoots: 'la punta de algunos brotes',
    current_shoots: 'brotes de este año, que salen de la madera del año pasado',
    shoots_from_last_years_tips:
      'brotes de este año, que salen de las puntas de los del año pasado: una punta cortada no da nada',
  },
  about: 'Sobre este árbol',
  speciesBears: (species, wood) => `${species}: suelen dar fruto en ${wood}.`,
  season: {
    dormant: 'Se suele podar sin hojas.',
    dormant_or_summer: 'Se suele podar sin hojas o en verano.',
    dry_after_harvest: 'Se suele podar en las semanas secas después de la cosecha.',
    dry: 'Se suele podar en la época seca.',
    not_late_winter: 'No se suele podar a fines de invierno, cuando llora.',
    unknown: 'Cuándo se poda lo dice tu jefe de cuadrilla.',
  },
  caution: {
    milky_sap: {
      lead: 'Su savia lechosa quema la piel al sol.',
      says: 'Guantes y manga larga. Lávate con jabón y que no te entre en los ojos.',
    },
    thorns: {
      lead: 'Tiene espinas.',
      says: 'Guantes que cubran la muñeca y los ojos protegidos.',
    },
  },
  take: {
    light: 'En un año normal se quita poco.',
    varies: 'Cuánto se quita en un año varía mucho.',
    bearing_wood: (share) => `En un año normal se quita ${share} de la madera que da fruto.`,
    last_years_wood: (share) =>
      `En un año normal se quita ${share} del crecimiento del año pasado.`,
  },
  from: {
    second_hand: (source) => `De segunda mano: ${source}`,
    from_memory: 'De memoria, sin consultar.',
    practice: 'Práctica común, sin fuente.',
    not_confirmed: 'Las fuentes no coinciden.',
  },
  ways: {
    cut: 'Qué herramienta, cómo cortar',
    shorten: 'Cuánto acortar',
    limbs: 'Qué ramas quedan',
    openness: 'Qué tan abierto está',
    weight: 'Cuánto pesa',
    notSure: '¿Dudas? Llama a tu jefe',
  },
}
