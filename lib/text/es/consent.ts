import type { consent as en } from '../en/consent'

export const consent: typeof en = {
  title: 'Lee esto una vez por temporada',
  paragraphs: [
    'Podar tiene riesgos: filos, madera que cae, escaleras, el tiempo. Trabajas por decisión propia y puedes dejarlo cuando quieras.',
    'Sigues la charla y a tu jefe de cuadrilla, usas solo herramientas que te enseñaron y no entras en los árboles cerrados. Una parada vale para todos, la dé quien la dé.',
    'Di a tu jefe de cuadrilla antes de empezar si algo te hace hoy más difícil este trabajo. No tienes que decir por qué, y aquí no se anota.',
    'Rowcall guarda tu nombre, cuándo viniste y te fuiste, en qué árboles trabajaste y las fotos que hagas de árboles. No hagas fotos de personas.',
    'Solo los jefes de cuadrilla y el responsable de este huerto lo ven todo. Pídelo, y tu nombre se borra.',
  ],
  version: (version) => `Versión ${version}`,
  ageQuestion: '¿Qué edad tienes?',
  adult: 'Mayor de edad',
  minor: 'Menor de edad',
  iAgree: 'Lo he leído y estoy de acuerdo',
  agree: 'Aceptar',
  agreedOn: (date) => `Aceptado el ${date}`,
  readFirst: 'Marca que lo has leído y acepta.',
  minorTitle: 'Un adulto acepta por ti',
  minorWhy: 'Si eres menor trabajas sin escalera ni serrucho, y con un adulto que responde por ti.',
  guardianName: 'Nombre de la madre, el padre o el tutor',
  writeGuardian: 'Escribe el nombre del adulto que acepta.',
  guardianAgrees: 'Soy su madre, padre o tutor y estoy de acuerdo',
  adultHere: 'El adulto que hoy responde por el menor',
  chooseAdult: 'Elige a un adulto que haya llegado.',
  whatIsKept: 'Se guarda tu nombre, la versión y la hora. Nada sobre tu salud.',
}
