import type { weatherRules as en } from '../en/weather-rules'

const months =
  'UC IPM, albaricoquero y cerezo: julio y agosto en California. En otros sitios, los meses más secos tras la cosecha. De 11 a 2 pasa por fin de año.'

export const weatherRules: typeof en = {
  weather_minutes: {
    name: 'El tiempo anotado caduca a los',
    says: 'Uno más viejo no aplaza nada, y las pantallas dicen que no se conoce.',
    from: 'Práctica común, sin número publicado.',
  },
  thunder_minutes: {
    name: 'Tras el último trueno se espera',
    says: 'Hasta entonces nadie toma un árbol ni recoge ramas. No hay excepción.',
    from: 'Servicio Meteorológico Nacional de EE. UU.: 30 minutos. Puede ser más, nunca menos.',
  },
  ladder_gust_kmh: {
    name: 'Sin escaleras desde ráfagas de',
    says: 'A quien está en una se le dice que baje. No hay excepción: se vuelve a medir.',
    from: 'Beaufort 5, se mueven árboles pequeños (Servicio Meteorológico Nacional de EE. UU.). Que sea un límite es práctica común.',
  },
  work_gust_kmh: {
    name: 'Sin trabajo desde ráfagas de',
    says: 'A quien está en un árbol se le dice que salga. No hay excepción.',
    from: 'Beaufort 6, se mueven ramas grandes (Servicio Meteorológico Nacional de EE. UU.). Que sea un límite es práctica común.',
  },
  heat_stop_c: {
    name: 'Sin trabajo con sensación de',
    says: 'Por índice de calor, a la sombra; a pleno sol se siente aún más. No hay excepción.',
    from: 'Servicio Meteorológico Nacional de EE. UU.: peligro desde 103 °F (39,4 °C). Que sea un límite es práctica común.',
  },
  light_minutes: {
    name: 'Las escaleras acaban antes de la puesta de sol',
    says: 'El trabajo en el suelo acaba con la puesta. Cerros y copas oscurecen antes.',
    from: 'Práctica común, sin número publicado.',
  },
  dry_hours: {
    name: 'Albaricoqueros y cerezos esperan tras mojarse',
    says: 'Contado desde la última vez que se supo que estaban mojados.',
    from: 'Práctica común. OSU Extension: podar solo con tiempo seco.',
  },
  rain_hours: {
    name: 'Sin poda si se espera lluvia antes de',
    says: 'Para todas las especies. Un jefe de cuadrilla hace una excepción.',
    from: 'UC Master Gardeners, Napa: 24 horas en un texto, dos días en otro.',
  },
  rain_free_days: {
    name: 'Días sin lluvia para albaricoqueros y cerezos',
    says: 'Con menos días hasta la primera lluvia, el veredicto lo dice. No rechaza nada.',
    from: 'UC IPM: seis semanas. Las heridas de otoño siguen abiertas al menos 42 días (Ramos, Moller y English 1975).',
  },
  first_rain_month: {
    name: 'Las lluvias empiezan en el mes',
    says: 'Contado desde su primer día.',
    from: 'Octubre en California. Pon el tuyo.',
  },
  apricot_from_month: {
    name: 'Albaricoqueros: primer mes',
    says: 'En otros meses no se podan.',
    from: months,
  },
  apricot_to_month: {
    name: 'Albaricoqueros: último mes',
    says: 'En otros meses no se podan.',
    from: months,
  },
  cherry_from_month: {
    name: 'Cerezos: primer mes',
    says: 'En otros meses no se podan.',
    from: months,
  },
  cherry_to_month: {
    name: 'Cerezos: último mes',
    says: 'En otros meses no se podan.',
    from: months,
  },
}
