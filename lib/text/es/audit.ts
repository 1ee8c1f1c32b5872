import type { audit as en } from '../en/audit'

const at = (tree: string | undefined) => (tree === undefined ? '' : ` en ${tree}`)
const some = (words: string | undefined) => words ?? '…'
const after = (words: string | undefined, before = ', ') =>
  words === undefined ? '' : `${before}${words}`

export const audit: typeof en = {
  title: 'Qué pasó y quién lo hizo',
  lead: 'Lo más nuevo primero. Nadie puede cambiarlo, tampoco un responsable.',
  ofPerson: 'Qué hizo esta persona',
  byPerson: 'Persona',
  byTree: 'Árbol, por su placa',
  byTreeHint: 'Como en su placa: S 7·14.',
  noSuchTree: 'Ningún árbol tiene esta placa. Escribe bloque, fila y árbol, como S 7·14.',
  byDay: 'Día',
  byKind: 'Sobre qué',
  anybody: 'Cualquiera',
  anything: 'Todo',
  clear: 'Mostrar todo otra vez',
  none: 'Nada así ha pasado.',
  older: 'Mostrar lo anterior',
  newest: 'Volver a lo más nuevo',
  number: (n) => `n.º ${n}`,
  tapped: (by) => `Lo anotó ${by}`,
  forgotten: 'alguien de nombre olvidado',
  groups: {
    work: 'Trabajo en los árboles',
    flags: 'Marcas y fotos',
    alarms: 'Paradas, llamadas, incidentes',
    day: 'Charla, llegadas, pausas',
    tools: 'Herramientas',
    people: 'Personas y enlaces',
    rounds: 'Rondas y turnos',
    orchard: 'El huerto y sus árboles',
  },
  things: {
    name: 'nombre',
    language: 'idioma',
    units: 'unidades',
    houseRules: 'reglas de la casa',
    emergencyVersion: 'tarjeta de emergencia',
    aerialVersion: 'imagen desde arriba',
  },
  inTheDark: 'trabajar a oscuras',
  inviteKinds: {
    join: 'para la cuadrilla',
    role: 'para un jefe o responsable',
    device: 'para otro dispositivo',
    recovery: 'para volver a entrar',
  },
  newer: (by, kind) => `${by}: ${kind} (esta página es anterior a eso)`,

  sentence: {
    orchard_created: ({ by }) => `${by} creó este huerto`,
    orchard_changed: ({ by, changed }) => `${by} cambió los ajustes${after(changed, ': ')}`,
    trees_brought_in: ({ by, count }) => `${by} trajo ${count ?? 'unos cuantos'} árboles`,
    block_changed: ({ by, block }) => `${by} cambió el bloque ${some(block)}`,
    block_removed: ({ by, block }) => `${by} quitó el bloque ${some(block)}`,
    cultivar_written: ({ by }) => `${by} anotó una variedad`,
    cultivar_removed: ({ by }) => `${by} quitó una variedad de la lista`,
    tree_added: ({ by, tree }) => `${by} añadió el árbol ${some(tree)}`,
    tree_moved: ({ by, tree }) => `${by} movió el árbol ${some(tree)}`,
    trees_changed: ({ by, count }) =>
      `${by} cambió lo que se sabe de ${count ?? 'unos cuantos'} árboles`,
    trees_numbered: ({ by, block }) => `${by} numeró las filas y los árboles de ${some(block)}`,
    trees_left_out: ({ by, trees }) =>
      `${by} dijo qué árboles no entran en esta ronda${after(trees, ': ')}`,

    person_added: ({ by, person, role }) => `${by} añadió a ${some(person)}${after(role)}`,
    person_joined: ({ who, role, waits }) =>
      `${who} vino por un enlace${after(role)}${waits ? ', y espera a entrar' : ''}`,
    person_changed: ({ by, person, role }) =>
      `${by} cambió lo escrito sobre ${some(person)}${after(role)}`,
    person_admitted: ({ by, person }) =>
      by === person ? `${some(person)} entró` : `${by} dejó entrar a ${some(person)}`,
    person_removed: ({ by, person }) => `${by} quitó a ${some(person)} del huerto`,
    person_forgotten: ({ by }) => `${by} olvidó un nombre`,
    login_ended: ({ who }) => `Se cerró la sesión de un dispositivo de ${who}`,
    login_linked: ({ who }) => `${who} entró con un dispositivo más`,
    invite_made: ({ by, what }) => `${by} hizo un enlace${after(what, ' ')}`,
    invite_ended: ({ by }) => `${by} terminó un enlace`,
    handed_in: ({ person }) =>
      `${some(person)} entregó trabajo sin enviar después de salir del huerto`,
    hand_in_accepted: ({ by }) => `${by} aceptó trabajo entregado`,
    consent_given: ({ who, day }) =>
      `${who} dio su consentimiento${after(day, ' para la temporada ')}`,
    skill_granted: ({ by, person, skill, until }) =>
      `${by} concedió a ${some(person)}: ${some(skill)}${after(until, ' hasta el ')}`,
    skill_ended: ({ by, person, skill }) => `${by} retiró a ${some(person)}: ${some(skill)}`,

    round_opened: ({ by, round }) => `${by} abrió la ronda ${some(round)}`,
    round_closed: ({ by, round }) => `${by} cerró la ronda ${some(round)}`,
    round_reopened: ({ by, round }) => `${by} volvió a abrir la ronda ${some(round)}`,
    shift_scheduled: ({ by, day }) => `${by} programó un turno${after(day, ' el ')}`,
    shift_changed: ({ by, day }) => `${by} cambió el turno programado${after(day, ' el ')}`,
    shift_cancelled: ({ by, day }) => `${by} canceló el turno${after(day, ' del ')}`,
    shift_opened: ({ by, day }) => `${by} abrió el turno${after(day, ' del ')}`,
    shift_closed: ({ by, day, people }) =>
      `${by} cerró el turno${after(day, ' del ')}${after(people, '; sin encontrar: ')}`,
    off_changed: ({ by, what, reason, isOff }) =>
      isOff
        ? `${by} dijo: hoy no hay ${some(what)}${after(reason, ', porque ')}`
        : `${by} dijo: ${some(what)} otra vez`,

    weather_written: ({ by }) => `${by} anotó qué tiempo hace`,
    weather_answered: ({ person }) => `${some(person)} ha salido por el tiempo`,
    forecast_brought_in: ({ by }) => `${by} trajo el tiempo de las próximas horas`,
    exception_made: ({ by, what }) => `${by} hizo una excepción para ${some(what)}`,
    exception_ended: ({ by, what }) => `${by} terminó la excepción para ${some(what)}`,

    briefing_written: ({ by, count }) => `${by} escribió la charla, versión ${some(count)}`,
    briefing_given: ({ by, people }) => `${by} dio la charla a ${some(people)}`,
    briefing_signed: ({ who, count }) => `${who} firmó la charla, versión ${some(count)}`,
    person_arrived: ({ who }) => `Consta la llegada de ${who}`,
    person_left: ({ who }) => `${who} se fue a casa`,
    person_found: ({ by, person }) => `${by} dijo que ${some(person)} ha aparecido`,
    break_started: ({ who }) => `${who} hizo una pausa`,
    break_ended: ({ who }) => `${who} volvió de la pausa`,
    attendance_entered: ({ who }) => `Las horas de ${who} se pasaron del papel`,
    equipment_checked: ({ who, isOff }) =>
      isOff ? `A ${who} le falta algo de la protección` : `${who} tiene la protección en orden`,

    tool_added: ({ by, tool }) => `${by} puso en la lista: ${some(tool)}`,
    tool_taken: ({ who, tool }) => `${who} tomó ${some(tool)}`,
    tool_returned: ({ who, tool }) => `${who} devolvió ${some(tool)}`,
    tool_failed: ({ who, tool }) => `${who} retiró del uso ${some(tool)}`,
    tool_mended: ({ by, tool }) => `${by} puso otra vez en uso ${some(tool)}`,
    tools_cleaned: ({ who, tools }) => `${who} limpió ${some(tools)}`,

    trees_dealt: ({ by, trees, people }) => `${by} asignó ${some(trees)} a ${some(people)}`,
    trees_taken_back: ({ by, trees }) => `${by} retiró la asignación de ${trees ?? 'unos árboles'}`,
    big_cuts_marked: ({ who, tree }) => `${who} marcó los cortes grandes${at(tree)}`,
    big_cuts_unmarked: ({ by, tree }) => `${by} quitó la marca de cortes grandes${at(tree)}`,
    tree_claimed: ({ who, tree, people }) => `${who} tomó ${some(tree)}${after(people, ' con ')}`,
    tree_joined: ({ person, tree }) => `${some(person)} se unió${at(tree)}`,
    tree_left: ({ who }) => `${who} dejó el árbol a los demás`,
    tree_handed_over: ({ tree, people, person }) =>
      `${tree ?? 'Un árbol'} pasó de ${some(person)} a ${some(people)}`,
    tree_released: ({ who, tree, share, took }) =>
      `${who} dejó ${some(tree)} ${share === undefined ? 'como estaba' : `al ${share}`}${after(took)}`,
    tree_released_late: ({ who, tree, share }) =>
      `${who} dejó ${some(tree)} ${share === undefined ? 'a medias' : `al ${share}`}; llegó después del turno`,
    tree_finished: ({ who, tree, took }) => `${who} terminó ${some(tree)}${after(took)}`,
    tree_finished_late: ({ who, tree }) => `${who} terminó ${some(tree)}; llegó después del turno`,
    also_worked: ({ who, tree, took }) => `${who} también trabajó en ${some(tree)}${after(took)}`,
    claim_ended: ({ by, tree }) => `${by} quitó el árbol a quien lo tenía${at(tree)}`,
    tree_undone: ({ who, tree }) => `${who} retiró que ${some(tree)} esté hecho`,
    tree_looked_over: ({ by, tree, reason, isResult }) =>
      isResult
        ? `${by} revisó y aprobó ${some(tree)}`
        : `${by} reabrió ${some(tree)}${after(reason, ': ')}`,
    brush_taken: ({ who, row }) => `${who} empezó a recoger las ramas de ${some(row)}`,
    brush_finished: ({ who, trees }) => `${who} recogió las ramas de ${trees ?? 'ningún árbol'}`,
    brush_marked: ({ by, trees }) => `${by} dijo cuántas ramas están recogidas en ${some(trees)}`,
    brush_directed: ({ by, block }) => `${by} dijo adónde van las ramas de ${some(block)}`,

    flag_raised: ({ who, tree, sign }) => `${who} marcó ${some(tree)}${after(sign, ': ')}`,
    flag_withdrawn: ({ who, tree }) => `${who} retiró la marca${at(tree)}`,
    flag_confirmed: ({ by, tree, sign }) =>
      `${by} confirmó la marca${at(tree)}${after(sign, ': ')}`,
    flag_followed_up: ({ by, tree }) => `${by} escribió en la marca${at(tree)}`,
    flag_cleared: ({ by, tree }) => `${by} resolvió el peligro${at(tree)}`,
    keep_out_changed: ({ by, tree, what }) =>
      `${by} fijó la zona cerrada${at(tree)}${after(what, ' a ')}`,
    keep_out_answered: ({ person, tree }) =>
      `${some(person)} está fuera de la zona cerrada${at(tree)}`,
    photo_added: ({ who, tree }) => `${who} hizo una foto${at(tree)}`,

    stop_called: ({ who, block }) => `${who} paró el trabajo${after(block, ' en ')}`,
    stop_answered: ({ person, isResult }) =>
      isResult ? `${some(person)} sabe que el trabajo sigue` : `${some(person)} ha parado`,
    work_resumed: ({ by }) => `${by} reanudó el trabajo`,
    call_made: ({ who, what, tree }) => `${who} pidió ayuda${at(tree)}${after(what, ': ')}`,
    call_answered: ({ by }) => `${by} respondió a una llamada`,
    call_ended: ({ by }) => `${by} cerró una llamada`,
    incident_written: ({ by }) => `${by} anotó un incidente`,
  },
}
