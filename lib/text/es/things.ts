import type { things as en } from '../en/things'

export const things: typeof en = {
  skill: {
    hand_saw: 'serrucho',
    ladder: 'escalera',
    prunes_alone: 'poda sin ayuda',
  },
  tool: {
    pruner: 'Tijera de mano',
    lopper: 'Tijera de dos manos',
    saw: 'Serrucho de poda',
    pole_pruner: 'Tijera de pértiga (garrocha)',
    ladder: 'Escalera',
    other: 'Otra herramienta',
  },
  role: {
    manager: 'Responsable',
    lead: 'Jefe de cuadrilla',
    volunteer: 'Voluntario',
    visitor: 'Visita',
  },
  offReason: {
    season: 'no es su temporada',
    rain: 'la lluvia está demasiado cerca',
    wet_wood: 'la madera está mojada',
    wind: 'hay viento',
    thunder: 'hay tormenta',
    heat: 'hace demasiado calor',
    light: 'se va la luz',
    lead: 'lo dijo tu jefe de cuadrilla',
  },
  signal: {
    horn: 'Tres toques largos de bocina son la orden de parar.',
    whistle: 'Tres pitidos largos son la orden de parar.',
    voice: 'Un grito de «paren todo» vale para todos.',
  },
  source: {
    published: (name) => `Fuente: ${name}. Donde las normas locales piden más, valen ellas.`,
    common_practice: 'Práctica común. Donde las normas locales piden más, valen ellas.',
    house_rule: 'Regla de este huerto. Donde las normas locales piden más, valen ellas.',
  },
  severity: {
    low: 'Leve',
    high: 'Grave',
    danger_now: 'Peligro ahora',
  },
}
