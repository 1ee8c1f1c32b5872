import type { lookedOver as en } from '../en/looked-over'

export const lookedOver: typeof en = {
  reasons: {
    stubs_left: {
      found: 'Quedan tocones',
      better: 'Corta hasta una rama lateral o hasta el collar: ni tocón ni corte a ras.',
    },
    centre_closed: {
      found: 'El centro sigue cerrado',
      better:
        'Ponte junto al tronco y mira hacia fuera y arriba: quita lo que crece hacia el centro.',
    },
    crossing_left: {
      found: 'Queda madera cruzada',
      better: 'De dos que se cruzan o rozan, deja la que va hacia fuera. Quita la otra en su base.',
    },
    dead_left: {
      found: 'Queda madera seca, rota o enferma',
      better: 'Empieza por ella en cada árbol y corta hasta madera sana.',
    },
    too_much_shortened: {
      found: 'Demasiado cortado de los brotes del año pasado',
      better:
        'Mira en la ficha dónde están las yemas de fruto antes de acortar: como mucho el tercio de fuera, o nada.',
    },
    torn_bark: {
      found: 'Corteza desgarrada',
      better:
        'Una rama pesada lleva tres cortes: por abajo, más afuera por arriba y luego el tocón.',
    },
    wood_hanging: {
      found: 'Madera cortada colgando',
      better: 'Mira hacia arriba antes de irte y bájala. Lo que no alcances, díselo a tu jefe.',
    },
    not_tidy: {
      found: 'Árbol sin recoger',
      better: 'Saca la madera cortada del árbol y déjala donde se recogen las ramas.',
    },
  },
  by: (tag, name) => `${name} revisó ${tag}.`,
  toTree: (tag) => `A ${tag}`,
  withOther: (name) => `Ahora lo tiene ${name}.`,
  passed: 'Revisados y aprobados',
}
