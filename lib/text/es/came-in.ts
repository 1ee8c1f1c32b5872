import type { cameIn as en } from '../en/came-in'

export const cameIn: typeof en = {
  title: 'Llegó tarde',
  link: 'Llegó tarde',
  note: 'No se pierde nada. Mira estos árboles cuando pases.',
  work: 'Los últimos 14 días',
  noWork: 'Todo el trabajo llegó como debía.',
  late: 'después del turno',
  withoutClaim: 'empezado sin señal, sin toma',
  alsoWorked: 'también trabajó en él',
  lacked: (things) => `No tenía: ${things}`,
  handedIn: (name) => `${name} entregó esto`,
  somebody: 'Alguien',
  things: {
    finish_tree: 'Terminado',
    release_tree: 'A medias',
    flag_tree: 'Marcado',
    fail_tool: 'Una herramienta falló',
    return_tool: 'Una herramienta devuelta',
    answer_stop: 'Respondió a una parada',
    stop_work: 'Paró el trabajo',
  },
  other: 'Otra cosa del día',
  acceptNote:
    'Los árboles libres cuentan como hechos o a medias, los demás como «también trabajó en él». Las marcas las pones tú, en el árbol.',
  accept: 'Aceptar el trabajo',
}
