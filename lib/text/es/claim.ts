import type { claim as en } from '../en/claim'

export const claim: typeof en = {
  somebody: 'Alguien',
  withHelper: 'Alguien que ayuda',
  withBuddy: 'Alguien que te oye',
  withLearner: 'Alguien que aprende',
  who: '¿Quién?',
  nobodyHere: 'No hay nadie más presente. Pregunta a tu jefe de cuadrilla.',
  chooseWho: 'Di quién trabaja contigo y toma el árbol.',
  ground: 'Pies en el suelo',
  ladder: 'Con escalera',
  ladderWhy: (height) => `Este árbol mide ${height} de alto.`,

  noAnswer: 'Sin respuesta en 8 segundos. El árbol aún no es tuyo; nada cambió.',
  refusedTitle: (tag) => `${tag} aún no puede ser tuyo`,
  severalMissing: (count) => `Faltan ${count} cosas: míralas arriba.`,
  everythingMissing: 'Todo lo que falta:',
  takeInstead: (tag) => `Tomar ${tag}`,
  needsSignal:
    'Para tomar un árbol hace falta señal. Los asignados a ti los puedes empezar sin ella.',
  begin: (tag) => `Empezar ${tag}`,
  beginSub: 'Sin confirmar hasta que haya señal',
  beginWhy:
    'Asignado a ti, así que seguramente es tuyo. Si alguien llegó antes, se te dice y tu trabajo cuenta.',
  cannotBegin: 'Este árbol no se puede empezar sin señal. Toma uno asignado a ti.',
  holdsAnother: (tag) => `Tienes ${tag}`,
  holdsAnotherNote: 'Termínalo, déjalo a medias o pásalo a otra persona. Luego toma el próximo.',
  backToIt: 'Volver a tu árbol',
  twoNeedSignal: 'Escalera o serrucho necesitan señal. Sin ella, toma un árbol desde el suelo.',
}
