import type {
  forget as enForget,
  hours as enHours,
  invites as enInvites,
  left as enLeft,
  rooms as enRooms,
  rounds as enRounds,
  settings as enSettings,
  shifts as enShifts,
} from '../en/rooms'
import { plural } from './plural'

export const rooms: typeof enRooms = {
  title: 'Oficina',
  tab: 'Oficina',
  lead: 'Qué está preparado, qué se guarda y quién hizo qué.',
  forManagers: 'Esto es para los responsables',
  forManagersNote: 'Pregunta a un responsable de este huerto.',
  back: 'A la oficina',

  crewGroup: 'La cuadrilla',
  workGroup: 'El trabajo',
  groundGroup: 'El huerto',
  peopleNote: (count) => plural(count, '1 persona', `${count} personas`),
  waiting: (count) => plural(count, '1 espera a entrar', `${count} esperan a entrar`),
  invitesNote: 'Quién puede entrar aún por un enlace, y los que ya no valen',
  leftTitle: 'Personas que se fueron',
  leftNote: 'Su trabajo queda; sus nombres se pueden olvidar',
  hoursNote: 'Por persona, turno y temporada, para imprimir o en CSV',
  roundsNote: (open) =>
    plural(open, '1 está abierta', `${open} están abiertas`).replace(
      /^0 están abiertas$/,
      'Ninguna está abierta'
    ),
  shiftsNote: (planned) => plural(planned, '1 está programado', `${planned} están programados`),
  settingsNote: 'Nombre, idioma, unidades, tarjeta de emergencia',
  labelsNote: 'La placa de cada árbol, con un código para escanear',
  houseRulesNote: 'Límites, cada uno con su fuente',
  auditTitle: 'Qué pasó y quién lo hizo',
  auditNote: 'Cada cambio, para leerlo y nunca alterarlo',
}

export const invites: typeof enInvites = {
  title: 'Enlaces',
  lead: 'Quien tenga uno de los enlaces abiertos puede entrar por él.',
  open: 'Abiertos',
  over: 'Ya no valen',
  noneOpen: 'Ningún enlace está abierto.',
  kinds: {
    join: 'Para la cuadrilla',
    role: (role) => `Para una persona: ${role}`,
    device: (name) => `Otro dispositivo de ${name}`,
    recovery: (name) => `Para que ${name} vuelva a entrar`,
  },
  onDay: (day) => `turno del ${day}`,
  madeBy: (name, day) => `lo hizo ${name}, ${day}`,
  byHost: (day) => `se hizo al arrancar el servidor, ${day}`,
  until: (day) => `hasta el ${day}`,
  used: (times) => plural(times, 'usado una vez', `usado ${times} veces`),
  notUsed: 'sin usar',
  ended: (day) => `terminado el ${day}`,
  ranOut: 'caducado',
  usedUp: 'ya usado',
  end: 'Terminar este enlace',
  endOf: (link) => `Terminar: ${link}`,
  endTitle: '¿Terminar este enlace?',
  endNote: 'Nadie entra ya por él. Quien está dentro se queda.',
  crewLinkNote: 'El enlace para toda la cuadrilla está en la pantalla del turno.',
  toShift: 'Al enlace de la cuadrilla',
  waits: 'Vinieron por un enlace de jefe o de responsable, y te esperan',
  waitsNote: 'Deja entrar solo a quien le diste el enlace.',
  notThem: (name) => `No es esa persona: quitar a ${name}`,
}

export const rounds: typeof enRounds = {
  title: 'Rondas',
  lead: 'Una ronda es una visita a los árboles: lo hecho en ella queda, y la siguiente empieza con todos sin podar.',
  open: 'Abiertas ahora',
  past: 'Pasadas',
  noneOpen: 'Ninguna ronda está abierta.',
  days: (from, to) => `del ${from} al ${to}`,
  ofTrees: (done, all) => `${done} de ${plural(all, '1 árbol', `${all} árboles`)} hechos`,
  doneTrees: (done) => plural(done, '1 árbol hecho', `${done} árboles hechos`),
  begun: (count) => `${count} a medias`,
  leftOut: (count) => `${count} fuera de la ronda`,
  held: (count) => plural(count, '1 turno', `${count} turnos`),
  planned: (count) => plural(count, '1 programado', `${count} programados`),
  closedOn: (day) => `cerrada el ${day}`,
  worksHere: 'El trabajo cuenta aquí',
  anotherTitle: 'Otra ronda',
  another: 'Empezar otra ronda',
  anotherNote:
    'Ya hay una ronda abierta. Desde ahora el trabajo cuenta en la nueva, salvo en los turnos programados en la anterior. Cierra antes la anterior si ha terminado.',
  reopen: 'Volver a abrirla',
  reopenOf: (round) => `Volver a abrir: ${round}`,
  reopenTitle: '¿Volver a abrir esta ronda?',
  reopenNote:
    'Sus árboles siguen como estaban. Las asignaciones y los turnos cancelados no vuelven.',
  closePlanned: (count) =>
    plural(
      count,
      'Hay 1 turno programado en esta ronda. Se cancela:',
      `Hay ${count} turnos programados en esta ronda. Se cancelan:`
    ),
  closePlannedNote: 'Avisa tú a la cuadrilla: no se manda ningún mensaje.',
  closeBegun: (count) =>
    plural(
      count,
      'Hay 1 árbol a medias. Así queda en el registro, y en la ronda siguiente empieza de nuevo.',
      `Hay ${count} árboles a medias. Así quedan en el registro, y en la ronda siguiente empiezan de nuevo.`
    ),
  closeAndCallOff: (count) =>
    plural(count, 'Cancelar 1 turno y cerrar', `Cancelar ${count} turnos y cerrar`),
  keepOpen: 'Dejarla abierta',
}

export const shifts: typeof enShifts = {
  title: 'Turnos',
  past: 'Turnos pasados',
  none: 'Aún no se ha abierto ningún turno.',
  toShift: 'A la pantalla del turno',
  isOpen: 'abierto ahora',
  calledOff: 'cancelado',
  people: (count) => plural(count, '1 persona', `${count} personas`),
  done: (count) => plural(count, '1 árbol hecho', `${count} árboles hechos`),
  back: 'Todos los turnos',
  recordOf: (day) => `El turno del ${day}`,
}

export const hours: typeof enHours = {
  title: 'Horas',
  lead: 'Desde la llegada hasta la salida, sin las pausas.',
  season: 'Temporada',
  none: 'En esta temporada no consta la llegada de nadie.',
  total: (hours, people, shifts) => `${hours}: ${people} en ${shifts}.`,
  shiftCount: (count) => plural(count, '1 turno', `${count} turnos`),
  byPerson: 'Por persona',
  byShift: 'Por turno',
  name: 'Nombre',
  shifts: 'Turnos',
  worked: 'Trabajo',
  onBreak: 'Pausas',
  day: 'Día',
  people: 'Personas',
  print: 'Imprimir',
  asCsv: 'Esta temporada en CSV',
  asCsvNote: 'Una línea por persona y turno. Todas las temporadas están en «Sacar datos».',
  isOpen: 'aún abierto',
}

export const settings: typeof enSettings = {
  title: 'Ajustes',
  name: 'El nombre del huerto',
  writeName: 'Escribe un nombre de hasta 80 caracteres.',
  language: 'Primer idioma en los teléfonos nuevos',
  languageNote: 'Cada cual puede elegir otro en su teléfono.',
  units: 'Unidades',
  unitsNote: 'Solo cómo se muestran y se escriben los números. Lo guardado no cambia.',
  zone: (zone) => `Zona horaria: ${zone}`,
  zoneNote: 'Decide cuándo empieza un día y cuándo oscurece. Se elige una vez, al crear el huerto.',
  save: 'Guardar estos ajustes',
  saved: 'Guardado.',
  nothing: 'Aún no hay nada cambiado.',
  cardTitle: 'Tarjeta de emergencia',
  cardNote: 'Dónde estamos, a quién llamar, dónde reunirse.',
  toCard: 'A la tarjeta de emergencia',
  toRules: 'A las reglas de la casa',
}

export const left: typeof enLeft = {
  title: 'Personas que se fueron',
  lead: 'Ya no están en el huerto. Sus nombres siguen junto a lo que hicieron, hasta que los olvides.',
  nobody: 'Nadie se ha ido.',
  since: (from, to) => `aquí desde el ${from} hasta el ${to}`,
  forget: 'Olvidar',
  forgetOf: (name) => `Olvidar a ${name}`,
}

export const forget: typeof enForget = {
  link: 'Olvidar a esta persona',
  title: (name) => `¿Olvidar a ${name}?`,
  who: '¿Es la persona correcta?',
  role: (role, day) => `${role}, desde el ${day}`,
  left: (day) => `se fue el ${day}`,
  stillIn: 'sigue en el huerto: también se le quita',
  worked: (shifts, hours) =>
    plural(shifts, `1 turno, ${hours} de trabajo`, `${shifts} turnos, ${hours} de trabajo`),
  never: 'nunca constó su llegada',
  lastHere: (day) => `aquí por última vez el ${day}`,
  trees: (count) => plural(count, '1 árbol terminado', `${count} árboles terminados`),
  sameName: (count) =>
    plural(
      count,
      'Otra persona aquí tiene el mismo nombre. Compara los días y las horas de arriba.',
      `Otras ${count} personas aquí tienen el mismo nombre. Compara los días y las horas de arriba.`
    ),
  goes: 'Lo que se va, para siempre',
  goesList: [
    'Nombre y teléfono, en todos los dispositivos y en los registros.',
    'Lo que escribió, y lo que se escribió de ella al pasar su árbol, anotar su salida o ayudarla.',
    'Sus dispositivos dejan de tener acceso. Los enlaces abiertos que hizo terminan.',
  ],
  stays: 'Lo que queda',
  staysList: [
    'Árboles, horas, consentimientos y firmas, como de alguien.',
    'Fotos de árboles, y notas sobre árboles aún con marca o con cortes marcados, hasta que eso termine.',
    'Los incidentes, sin el nombre donde está escrito entero.',
  ],
  elsewhere: 'Dónde está el nombre hasta que alguien lo borre',
  elsewhereList: [
    'Archivos, tablas de horas e historiales que se sacaron antes. Bórralos y saca otros nuevos.',
    'Copias de seguridad en la máquina donde funciona Rowcall: la de cada noche durante 14 noches, las demás más tiempo. Si se recupera una, el nombre se olvida otra vez. Quien cuida la máquina las quita ahora con «npm run backup -- --forget».',
    'Lo que se imprimió.',
  ],
  look: 'El nombre también está escrito aquí. Cámbialo tú',
  onCard: 'Tarjeta de emergencia',
  inBriefings: (count) =>
    plural(
      count,
      'la charla de seguridad de 1 turno, que queda como se firmó',
      `las charlas de ${count} turnos, que quedan como se firmaron`
    ),
  incidents: (count) => plural(count, '1 incidente', `${count} incidentes`),
  inTheWay: 'Antes hay que terminar esto',
  type: (name) => `Escribe «${name}» para confirmarlo`,
  typeWrong: (name) => `Escribe el nombre como está arriba: ${name}.`,
  button: (name) => `Olvidar a ${name} para siempre`,
  cannotUndo: 'Esto no lo puede deshacer nadie.',
  done: 'Olvidado.',
  doneNote: 'Los teléfonos sueltan el nombre en cuanto tienen señal.',
  gone: 'Este nombre está olvidado.',
  toPerson: 'Volver a esta persona',
  toLeft: 'A las personas que se fueron',
}
