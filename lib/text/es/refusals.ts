import type { refusals as en } from '../en/refusals'
import { groundRefusals } from './ground-refusals'
import { refusalsOfRooms } from './refusals-of-rooms'

export const refusals: typeof en = {
  shift_not_open: () => 'El turno no está abierto. Lo abre tu jefe de cuadrilla.',
  stopped: () => 'El trabajo está parado. Espera a que un jefe de cuadrilla lo reanude.',
  stop_not_answered: ({ whose }) =>
    whose
      ? `${whose} no ha respondido a la parada. Que responda primero.`
      : 'No has respondido a la parada. Responde primero.',
  thunder: ({ until }) =>
    `Se ha oído un trueno. Nadie trabaja${until ? ` antes de las ${until}` : ' hasta 30 minutos después del último'}. Entra en un edificio o en un vehículo cerrado.`,
  too_windy: () =>
    'Las ráfagas superan el límite de este huerto para trabajar. Espera a que un jefe de cuadrilla vuelva a medir.',
  too_hot: () =>
    'La sensación de calor supera el límite de este huerto para trabajar. Descansa a la sombra y bebe; un jefe de cuadrilla vuelve a medir.',
  dark: () =>
    'El sol no ha salido en el huerto, y se trabaja con luz del día. Un jefe de cuadrilla que tenga lámparas allí puede hacer una excepción.',
  not_off: ({ species }) =>
    `Nada aplaza ${species ?? 'estos árboles'} ahora. No hace falta una excepción.`,
  exception_needed: ({ species }) =>
    `No es temporada de ${species ?? 'estos árboles'}. Haz una excepción y di por qué.`,

  not_arrived: ({ whose }) =>
    whose
      ? `La llegada de ${whose} no consta. Márcala primero.`
      : 'Tu llegada no consta. Di primero «Aquí estoy».',
  already_here: ({ whose }) =>
    whose ? `La llegada de ${whose} ya consta. Sigue.` : 'Tu llegada ya consta. Sigue.',
  on_break: ({ whose }) =>
    whose ? `${whose} está en pausa. Termínala primero.` : 'Estás en pausa. Termínala primero.',
  not_on_break: ({ whose }) =>
    whose ? `${whose} no está en pausa. Sigue.` : 'No estás en pausa. Sigue.',
  already_left: ({ whose }) =>
    whose
      ? `${whose} se fue a casa. Marca primero su vuelta.`
      : 'Consta que te fuiste. Di primero «He vuelto».',
  consent_missing: ({ whose }) =>
    whose
      ? `Falta el consentimiento de ${whose}. Que lo lea y acepte.`
      : 'Falta tu consentimiento de la temporada. Léelo y acepta.',
  consent_changed: () => 'El consentimiento tiene un texto nuevo. Léelo otra vez y acepta.',
  guardian_must_consent: ({ whose }) =>
    whose
      ? `${whose} es menor de edad. Acepta su madre, padre o tutor.`
      : 'Eres menor de edad. Acepta tu madre, padre o tutor.',
  adult_missing: ({ whose, person }) =>
    `No está ${person ?? 'el adulto'}, que responde por ${whose ?? 'ti'}. Espera o pregunta a tu jefe de cuadrilla.`,
  briefing_missing: () =>
    'No hay charla escrita para este turno. Primero la escribe un jefe de cuadrilla.',
  briefing_not_given: ({ whose }) =>
    whose
      ? `${whose} aún no ha tenido la charla. La da un jefe de cuadrilla.`
      : 'Aún no te han dado la charla. Escucha a tu jefe de cuadrilla.',
  briefing_not_signed: ({ whose }) =>
    whose
      ? `${whose} no ha firmado la charla. Que firme primero.`
      : 'La charla no está firmada. Fírmala primero.',
  briefing_changed: () => 'La charla cambió entretanto. Escucha lo nuevo y firma.',
  equipment_not_checked: ({ whose }) =>
    whose
      ? `La protección de ${whose} no está revisada. Revísala primero.`
      : 'Tu protección no está revisada. Revísala primero.',
  no_tool_in_hand: ({ whose }) =>
    whose
      ? `${whose} no tiene herramienta en la mano. Toma una del banco.`
      : 'No tienes herramienta en la mano. Toma una del banco.',
  no_ladder_in_hand: () => 'Nadie de ustedes tiene escalera. Toma una, o un árbol más bajo.',
  no_saw_in_hand: () => 'Nadie de ustedes tiene serrucho. Toma uno, o un árbol que no lo pida.',
  tool_failed: ({ tool }) =>
    `${tool ?? 'Una herramienta de tu mano'}: fuera de uso. Devuélvela y toma otra.`,
  tool_not_clean: ({ tool }) =>
    `${tool ?? 'Una herramienta de tu mano'}: sin limpiar. Límpiala y dilo.`,
  visitors_do_not_prune: ({ whose }) =>
    `${whose ? `${whose} está` : 'Estás'} aquí de visita. Pide a un jefe de cuadrilla que lo cambie.`,

  tree_not_standing: ({ tree }) => `${tree ?? 'Este árbol'} ya no está en pie. Toma otro.`,
  tree_not_in_round: ({ tree }) => `${tree ?? 'Este árbol'} no se poda en esta ronda. Toma otro.`,
  tree_done: ({ tree }) => `${tree ?? 'Este árbol'} ya está hecho. Toma otro.`,
  tree_left_out: ({ tree }) => `${tree ?? 'Este árbol'} queda fuera de esta ronda. Toma otro.`,
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
  skill_missing: ({ skill, whose }) =>
    `${whose ? `A ${whose} le falta` : 'Te falta'} ${skill ? `la habilidad «${skill}»` : 'la habilidad que pide este árbol'}. Toma otro o pregunta a tu jefe de cuadrilla.`,
  minor_ladder_saw: ({ whose }) =>
    `${whose ? `${whose} es` : 'Eres'} menor de edad: sin escalera ni serrucho. Toma un árbol para tijeras.`,
  not_marked: ({ tree }) =>
    `Nadie ha marcado los cortes grandes de ${tree ?? 'este árbol'}. Pide a un jefe de cuadrilla que los marque, o ayuda a alguien.`,
  works_next_to_it: ({ tree, person }) =>
    `${person ?? 'Alguien'} trabaja con escalera o serrucho junto a ${tree ?? 'este árbol'}. Toma uno más lejos.`,
  disease_not_dealt: ({ tree }) =>
    `${tree ?? 'Este árbol'} está marcado por enfermedad. Solo lo asigna un jefe de cuadrilla; toma otro.`,
  height_unknown: ({ tree }) =>
    `Nadie ha medido ${tree ?? 'este árbol'}: sin escalera. Poda lo que alcances desde el suelo.`,
  holds_another: ({ tree, row, whose }) =>
    `${whose ? `${whose} ya tiene` : 'Ya tienes'} ${tree ?? row ?? 'otro árbol'}. Primero termina o deja ese.`,
  two_people_needed: () => 'Con escalera o serrucho van dos personas. Di quién trabaja contigo.',
  helper_not_ready: ({ person }) =>
    `${person ?? 'Quien te ayuda'} aún no puede empezar. Elige a otra persona o espera.`,
  buddy_not_here: ({ person }) =>
    `${person ?? 'Quien te acompaña'} no está aquí. Nombra a alguien que esté.`,
  buddy_not_fit: ({ person }) =>
    `${person ?? 'Esta persona'} no puede acompañarte. Nombra a una persona adulta de la cuadrilla.`,
  tree_in_progress: ({ tree }) => `${tree ?? 'Este árbol'} está en curso. Asigna otro.`,
  row_held: ({ row, person }) =>
    `${person ?? 'Alguien'} ya recoge ${row ?? 'esta fila'}. Únete o toma otra fila.`,
  nothing_to_haul: () => 'En esta fila no hay ramas cortadas. Toma otra.',
  tree_not_done: ({ tree }) =>
    `${tree ?? 'Este árbol'} no está hecho, o ya no. Míralo otra vez cuando lo esté.`,
  worked_on_it: ({ tree }) =>
    `Trabajaste en ${tree ?? 'este árbol'}. Lo revisa otro jefe de cuadrilla.`,
  claim_over: () => 'Esta toma ya terminó. Mira el árbol otra vez.',
  not_in_claim: ({ whose }) =>
    `${whose ? `${whose} no está` : 'No estás'} en este árbol. No hay nada que dejar.`,
  holder_hands_over: () => 'Este árbol lo tienes tú. Pásalo, termínalo o déjalo a medias.',
  nothing_to_undo: ({ tree }) =>
    `No hay nada que deshacer en ${tree ?? 'este árbol'}. Míralo otra vez.`,
  not_holder: ({ tree }) => `Ya no tienes ${tree ?? 'este árbol'}. Lo que hiciste queda guardado.`,

  not_admitted: ({ whose }) =>
    whose
      ? `A ${whose} aún no le dejaron entrar. Lo hace un jefe de cuadrilla.`
      : 'Aún no te dejaron entrar. Dile tu nombre a tu jefe de cuadrilla.',
  person_removed: ({ whose }) =>
    whose
      ? `${whose} ya no está en este huerto.`
      : 'Ya no estás en este huerto. Habla con tu jefe de cuadrilla.',
  too_late_to_undo: ({ until }) =>
    `Tarde para deshacer${until ? `, se podía hasta las ${until}` : ''}. Pide a un jefe de cuadrilla que lo reabra.`,
  too_late_to_withdraw: ({ until }) =>
    `Tarde para retirarla${until ? `, se podía hasta las ${until}` : ''}. La mira un jefe de cuadrilla.`,

  flag_over: () => 'Esta marca ya no está. Alguien la retiró o la cerró.',
  only_manager_clears: () =>
    'Un peligro se queda hasta que venga el arborista. Después lo cierra un responsable.',
  only_manager_narrows: () =>
    'Una zona cerrada solo se agranda. Pide a un responsable que la reduzca.',
  not_yours: () => 'Esta marca la puso otra persona. Solo ella o un jefe de cuadrilla la retira.',
  not_yours_to_give: () => 'Para esa persona solo puede un responsable. Pregunta a un responsable.',
  not_to_oneself: () => 'Nadie se concede una habilidad a sí mismo. Pide a otro jefe de cuadrilla.',
  last_manager: () => 'El último responsable se queda. Nombra antes a otra persona.',
  handed_in_before: () => 'Este trabajo ya está entregado. No se pierde nada.',
  accepted_before: () => 'Otro jefe ya lo aceptó.',
  no_picture: () => 'Aún no hay imagen desde arriba. Elige una antes.',
  photo_too_large: () => 'La foto es demasiado grande. Haz otra.',
  photo_not_plain: () => 'La foto todavía dice dónde o cuándo se hizo. Haz otra.',

  orchard_here: () => 'Este huerto ya está aquí. No ha entrado nada.',
  archive_incomplete: () => 'No llegó todo el archivo. Tráelo otra vez.',
  archive_newer: () =>
    'Este archivo lo escribió un Rowcall más nuevo. Actualiza este primero y tráelo otra vez.',
  archive_damaged: () => 'El archivo está dañado. No ha entrado nada; saca otro.',

  no_round: () => 'No hay ronda abierta. Primero la abre un responsable.',
  round_closed: () => 'Esta ronda está cerrada. Elige otra o abre una nueva.',
  shift_open: () => 'Ya hay un turno abierto. Ciérralo primero.',
  shift_closed: () => 'Este turno está cerrado. Programa uno nuevo.',
  shift_cancelled: () => 'Este turno se canceló. Programa uno nuevo.',
  rows_wrong: () => 'Hay filas mal. No se trajo nada; corrígelas e intenta otra vez.',

  ...groundRefusals,

  not_in_shift: () => 'A esa hora no había turno. Mira otra vez el día y la hora.',
  already_entered: ({ tree, whose }) =>
    `${tree ?? 'Esto'} ya está anotado${whose ? ` para ${whose}` : ''}. Nada se cuenta dos veces.`,
  left_before: ({ whose }) => `${whose ?? 'Esta persona'} se fue antes. Mira otra vez las horas.`,
  leaving_missing: ({ whose }) =>
    `Ese turno está cerrado. Escribe también cuándo se fue ${whose ?? 'la persona'}.`,

  still_signed_in: ({ person }) =>
    `La salida de ${person ?? 'alguien'} no consta. Cuéntalo o di por qué.`,
  trees_held: ({ trees, tree, person }) =>
    `${person ?? 'Alguien'} todavía tiene ${trees ?? tree ?? 'un árbol'}. Termínalo o di por qué.`,
  tools_out: ({ tool, person }) =>
    `${tool ?? 'Una herramienta'}: todavía la tiene ${person ?? 'alguien'}. Recógela o di por qué.`,

  ...refusalsOfRooms,

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
