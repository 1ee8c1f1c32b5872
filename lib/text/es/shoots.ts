import type { shoots as en } from '../en/shoots'

export const shoots: typeof en = {
  outer_third: {
    title: 'Brotes del año pasado: el tercio exterior',
    do: 'Se puede quitar el tercio exterior, en una yema que mira hacia fuera.',
    never: 'Quitar más de un tercio.',
    why: 'La mayoría de las yemas de fruto está más adentro: se pierde poca cosecha y la rama la lleva más cerca del tronco.',
    picture:
      'Brotes con yemas de fruto en sus dos tercios de abajo. Se corta el tercio exterior de cada uno.',
  },
  outer_half: {
    title: 'Brotes del año pasado: hasta la mitad',
    do: 'Se puede quitar hasta la mitad, en una yema que mira hacia fuera.',
    never: 'Quitar más de la mitad, salvo que lo diga tu jefe de cuadrilla.',
    why: 'Las yemas de fruto están cerca de la base: se pierde poca cosecha.',
    picture: 'Brotes con yemas de fruto cerca de la base. Se corta la mitad exterior de cada uno.',
  },
  never: {
    title: 'Brotes del año pasado: nunca acortar',
    do: 'Deja todas las puntas. Donde se amontonan, quita brotes enteros desde su base.',
    never: 'Acortar uno de estos.',
    why: 'Las yemas de fruto están en la punta: la cosecha se iría con ella.',
    picture:
      'Brotes con yemas de fruto hasta la punta. Ninguno se acorta; se quitan dos que estorban.',
  },
  leave_short: {
    title: 'Brotes del año pasado: deja las puntas',
    do: 'Déjalos enteros. Donde se amontonan, quita brotes enteros desde su base.',
    never: 'Quitarles un tercio, como en otros árboles.',
    why: 'Las yemas de fruto están en la punta: la cosecha se iría con ella.',
    picture:
      'Brotes con yemas de fruto hasta la punta. Ninguno se acorta; se quitan dos que estorban.',
  },
  do_not_shorten: {
    title: 'Brotes del año pasado: no acortar',
    do: 'Deja las puntas. Donde se amontonan, quita brotes enteros desde su base.',
    never: 'Acortar uno de estos.',
    why: 'La cosecha está en estos brotes, y nadie anotó en qué parte.',
    picture: 'Brotes con yemas de fruto. Ninguno se acorta; se quitan dos que estorban.',
  },
  leave_and_ask: {
    title: 'Brotes del año pasado: pregunta',
    do: 'Déjalos y pregunta a tu jefe de cuadrilla.',
    never: 'Acortar uno de estos.',
    why: 'Nadie ha anotado dónde da fruto este.',
    picture: 'Brotes del año pasado en una rama. No se corta ninguno.',
  },
  another_winter: {
    title: 'Brotes del año pasado: este año no',
    do: 'Déjalos este año.',
    never: 'Acortar uno de estos.',
    why: 'Los primeros pasos ya quitan bastante a un árbol abandonado. Demasiado de una vez, y responde con una maraña.',
    picture: 'Brotes del año pasado en una rama. No se corta ninguno.',
  },
}
