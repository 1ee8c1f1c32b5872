import type { consent as en } from '../en/consent'

export const consent: typeof en = {
  title: 'Lee esto una vez por temporada',
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
