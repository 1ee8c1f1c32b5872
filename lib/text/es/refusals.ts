import type { refusals as en } from '../en/refusals'

export const refusals: typeof en = {
  shift_not_open: () => 'El turno no está abierto. Lo abre tu jefe de cuadrilla.',
  stopped: () => 'El trabajo está parado. Espera a que un jefe de cuadrilla deje seguir.',
  stop_not_answered: ({ person }) =>
    person
      ? `${person} no ha respondido a la parada. Respondan primero.`
      : 'No has respondido a la parada. Responde primero.',

  not_arrived: ({ person }) =>
    person
      ? `${person} no consta como llegado. Marca primero su llegada.`
      : 'Tu llegada no consta. Di primero «Aquí estoy».',
  on_break: ({ person }) =>
    person ? `${person} está en pausa. Termínala primero.` : 'Estás en pausa. Termínala primero.',
  already_left: ({ person }) =>
    person
      ? `${person} se fue a casa. Marca primero su vuelta.`
      : 'Consta que te fuiste. Di primero «He vuelto».',
  consent_missing: ({ person }) =>
    person
      ? `Falta el consentimiento de ${person}. Que lo lea y acepte.`
      : 'Falta tu consentimiento de la temporada. Léelo y acepta.',
  adult_missing: ({ person }) =>
    person
      ? `No está el adulto que responde por ${person}. Pregunta a tu jefe de cuadrilla.`
      : 'No está el adulto que responde por ti. Pregunta a tu jefe de cuadrilla.',
  briefing_not_given: ({ person }) =>
    person
      ? `${person} aún no ha tenido la charla. La da un jefe de cuadrilla.`
      : 'Aún no te han dado la charla. Escucha a tu jefe de cuadrilla.',
  briefing_not_signed: ({ person }) =>
    person
      ? `${person} no ha firmado la charla. Que firme primero.`
      : 'La charla no está firmada. Fírmala primero.',
  equipment_not_checked: ({ person }) =>
    person
      ? `La protección de ${person} no está revisada. Revísala primero.`
      : 'Tu protección no está revisada. Revísala primero.',
  no_tool_in_hand: () => 'No tienes herramienta en la mano. Toma una del banco.',
  tool_failed: ({ tool }) =>
    `${tool ?? 'Una herramienta de tu mano'}: fuera de uso. Devuélvela y toma otra.`,
  tool_not_clean: ({ tool }) =>
    `${tool ?? 'Una herramienta de tu mano'}: sin limpiar. Límpiala y dilo.`,

  tree_not_standing: ({ tree }) => `${tree ?? 'Este árbol'} ya no está en pie. Toma otro.`,
  tree_not_in_round: ({ tree }) => `${tree ?? 'Este árbol'} no se poda en esta ronda. Toma otro.`,
  tree_done: ({ tree }) => `${tree ?? 'Este árbol'} ya está hecho. Toma otro.`,
  tree_held: ({ tree, person, take }) =>
    `${person ?? 'Alguien'} tiene ${tree ?? 'este árbol'}. ${takeOr(take)}`,
  dealt_to_another: ({ tree, person, take }) =>
    `${tree ?? 'Este árbol'} está asignado a ${person ?? 'otra persona'}. ${takeOr(take)}`,
  arborist_flag: ({ tree }) =>
    `${tree ?? 'Este árbol'} está marcado para un arborista con licencia. Aléjate y toma otro.`,
  inside_keep_out: ({ tree }) =>
    `${tree ?? 'Este árbol'} está demasiado cerca de uno marcado. Aléjate y toma otro.`,
  species_off: ({ species, reason }) =>
    `Hoy no se podan ${species ?? 'árboles de esta clase'}${reason ? `, porque ${reason}` : ''}. Toma otra clase.`,
  ladders_off: ({ reason }) =>
    `Hoy no se usan escaleras${reason ? `, porque ${reason}` : ''}. Toma un árbol que alcances desde el suelo.`,
  skill_missing: ({ skill, person }) =>
    `${person ? `A ${person} le falta` : 'Te falta'} ${skill ? `la destreza «${skill}»` : 'la destreza que pide este árbol'}. Toma otro o pregunta a tu jefe de cuadrilla.`,
  minor_ladder_saw: ({ person }) =>
    `${person ? `${person} es` : 'Eres'} menor de edad: sin escalera ni serrucho. Toma un árbol para tijeras.`,
  not_marked: ({ tree }) =>
    `Nadie ha marcado los cortes grandes de ${tree ?? 'este árbol'}. Pide que lo marquen o ayuda a alguien.`,
  works_next_to_it: ({ tree, person }) =>
    `${person ?? 'Alguien'} trabaja con escalera o serrucho junto a ${tree ?? 'este árbol'}. Toma uno más lejos.`,
  disease_not_dealt: ({ tree }) =>
    `${tree ?? 'Este árbol'} está marcado por enfermedad. Solo lo asigna un jefe de cuadrilla; toma otro.`,
  holds_another: ({ tree, person }) =>
    `${person ? `${person} ya tiene` : 'Ya tienes'} ${tree ?? 'otro árbol'}. Primero termina o deja ese.`,
  two_people_needed: () => 'Con escalera o serrucho van dos personas. Di quién trabaja contigo.',
  helper_not_ready: ({ person }) =>
    `${person ?? 'Quien te ayuda'} aún no puede empezar. Elige a otra persona o espera.`,
  tree_in_progress: ({ tree }) => `${tree ?? 'Este árbol'} está en curso. Asigna otro.`,
  not_holder: ({ tree }) => `Ya no tienes ${tree ?? 'este árbol'}. Lo que hiciste queda guardado.`,

  not_admitted: ({ person }) =>
    person
      ? `${person} aún no tiene paso. Lo da un jefe de cuadrilla.`
      : 'Aún no tienes paso. Di tu nombre a tu jefe de cuadrilla.',
  person_removed: ({ person }) =>
    person
      ? `${person} ya no está en este huerto.`
      : 'Ya no estás en este huerto. Habla con tu jefe de cuadrilla.',
  too_late_to_undo: ({ until }) =>
    `Tarde para deshacer${until ? `, se podía hasta las ${until}` : ''}. Pide a un jefe de cuadrilla que lo reabra.`,
  too_late_to_withdraw: ({ until }) =>
    `Tarde para retirarla${until ? `, se podía hasta las ${until}` : ''}. La mira un jefe de cuadrilla.`,

  still_signed_in: ({ person }) =>
    `La salida de ${person ?? 'alguien'} no consta. Cuéntalo o di por qué.`,
  trees_held: ({ trees, tree, person }) =>
    `${person ?? 'Alguien'} todavía tiene ${trees ?? tree ?? 'un árbol'}. Termínalo o di por qué.`,
  tools_out: ({ tool, person }) =>
    `${tool ?? 'Una herramienta'}: todavía la tiene ${person ?? 'alguien'}. Recógela o di por qué.`,

  code_wrong: () =>
    'Este código no se conoce. Escanéalo otra vez o pregunta a tu jefe de cuadrilla.',
  code_expired: () => 'Este código ha caducado. Pide otro a tu jefe de cuadrilla.',
  code_used: () => 'Este código ya se usó. Pide otro a tu jefe de cuadrilla.',

  no_such_tool: ({ tool }) =>
    `${tool ?? 'Esta herramienta'}: no está en la lista. Mira otra vez su etiqueta.`,
  tool_held: ({ tool, person }) =>
    `${person ?? 'Alguien'} tiene ${tool ?? 'esta herramienta'}. Toma otra o pídesela.`,
  not_in_hand: ({ tool }) => `${tool ?? 'Esta herramienta'}: no está en tu mano. Tómala primero.`,
}

function takeOr(take: string | undefined): string {
  return take ? `Toma ${take}.` : 'Toma otro.'
}
