import type { houseRules as en } from '../en/house-rules'
import { weatherRules } from './weather-rules'

export const houseRules: typeof en = {
  title: 'Reglas de la casa',
  lead: 'Números de este huerto. Donde la ley o tu seguro pidan más, eso manda.',
  onlyManager: 'Las cambia un responsable. Estas son las que valen.',
  link: 'Reglas de la casa',
  back: 'Volver al turno',
  unit: {
    cm: 'cm',
    m: 'm',
    min: 'minutos',
    in: 'in',
    ft: 'ft',
    'km/h': 'km/h',
    mph: 'mph',
    '°C': '°C',
    '°F': '°F',
    '°': 'grados',
    h: 'horas',
    d: 'días',
    month: 'mes, de 1 a 12',
  },
  usual: (usual, least, most) => `Lo usual es ${usual}, de ${least} a ${most}.`,
  wrong: (least, most) => `Escribe un número de ${least} a ${most}.`,
  save: 'Guardar las reglas de la casa',
  nothing: 'No hay nada cambiado.',
  fault: 'Algún número no puede ser. Está señalado arriba.',
  saved: 'Guardado. Ya las tienen todos los teléfonos.',
  cleaning: {
    each_cut: 'Después de cada corte en madera enferma',
    when_growing: 'Después de cada corte cuando crece, después del árbol en reposo',
    each_tree: 'Después del árbol',
  },
  rules: {
    ladder_from_cm: {
      name: 'Un árbol pide escalera por encima de',
      says: 'Los más altos piden la habilidad de escalera y dos personas.',
      from: 'Práctica común, sin número publicado. Mide hasta dónde llegan los más bajos.',
    },
    limb_cm: {
      name: 'Una rama es del arborista por encima de',
      says: 'Se ve en cada paso del trabajo. Puede ser más fina que lo usual, nunca más gruesa.',
      from: 'Práctica común, de 3 a 4 pulgadas; sin número publicado.',
    },
    pruner_cm: {
      name: 'La tijera corta madera viva de hasta',
      says: 'Lo más grueso es para la tijera de dos manos.',
      from: 'Práctica común, de 1/2 a 3/4 de pulgada; sin número publicado.',
    },
    lopper_cm: {
      name: 'La tijera de dos manos corta madera de hasta',
      says: 'Lo más grueso se corta con serrucho, en tres cortes.',
      from: 'Práctica común, de 1 1/2 a 2 pulgadas; sin número publicado.',
    },
    pole_cm: {
      name: 'La tijera de pértiga corta madera viva de hasta',
      says: 'Solo desde el suelo, y nunca cerca de una línea eléctrica. Lo más grueso o lo muerto no se corta desde abajo.',
      from: 'Práctica común, hasta 1 pulgada; sin número publicado.',
    },
    three_cut_out_cm: {
      name: 'De los tres cortes, el primero va a esta distancia del collar',
      says: 'Desde abajo, un tercio del grosor: más hondo atrapa el serrucho, menos hondo deja que se desgarre la corteza.',
      from: 'Las fuentes difieren: UC IPM, 1 a 2 pies; la ciudad de Scottsdale y el programa forestal de Wisconsin, 6 a 12 pulgadas.',
    },
    three_cut_further_cm: {
      name: 'El segundo va más afuera por',
      says: 'Desde arriba, hasta que caiga.',
      from: 'Las fuentes difieren: UC IPM, 2 pulgadas; el programa forestal de Wisconsin, 1 pulgada.',
    },
    feet_cm: {
      name: 'En una escalera los pies están como mucho a',
      says: 'Una rama que pide más es del arborista. 0: nada se corta desde una escalera. Puede ser menos de lo habitual, nunca más.',
      from: 'Práctica común, sin número publicado; hay grupos que no permiten escaleras.',
    },
    lean_deg: {
      name: 'Un tronco es del arborista si se inclina más de',
      says: 'Uno que se inclina desde hace poco y levanta la tierra es del arborista de todos modos. Puede ser menos de lo habitual, nunca más.',
      from: 'Práctica común; ninguna guía pública imprime un número.',
    },
    clean_tools: {
      name: 'En un árbol enfermo se limpia la cuchilla',
      says: 'Después del árbol en todo caso: una herramienta sin limpiar no empieza otro.',
      from: 'Las fuentes no coinciden. UC IPM: al cortar madera infectada. Universidad de Illinois: solo en la época de crecimiento. Universidad Estatal de Washington: importa más la rapidez.',
    },
    keep_out_m: {
      name: 'Zona cerrada alrededor de un peligro',
      says: 'Los árboles de dentro se dejan y se avisa a quien está allí de que baje. Un jefe de cuadrilla la agranda para un árbol.',
      from: 'Práctica común, sin número publicado. Un árbol alto pide más.',
    },
    overhead_apart_m: {
      name: 'Separación de trabajos con escalera o serrucho',
      says: 'Nadie toma un árbol más cerca que esto, salvo que lo asigne un jefe de cuadrilla.',
      from: 'Práctica común, sin número publicado.',
    },
    quiet_minutes: {
      name: 'Se avisa de un teléfono callado después de',
      says: 'Quien lleva tanto tiempo sin dar señal aparece primero en la cuadrilla.',
      from: 'Práctica común, sin número publicado.',
    },
    withdraw_minutes: {
      name: 'Una marca se puede retirar durante',
      says: 'Por quien la puso. Después la mira un jefe de cuadrilla.',
      from: 'Elección nuestra.',
    },
    undo_minutes: {
      name: 'Un árbol terminado se puede deshacer durante',
      says: 'Por quien lo terminó. Después lo reabre un jefe de cuadrilla.',
      from: 'Elección nuestra.',
    },
    ...weatherRules,
  },
}
