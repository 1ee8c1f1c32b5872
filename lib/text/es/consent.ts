import type { consent as en } from '../en/consent'

export const consent: typeof en = {
  title: 'Lee esto una vez por temporada',
  parts: [
    {
      title: 'Qué es podar',
      says: 'Cortas madera de árboles frutales con herramientas de mano, desde el suelo y, si lo has aprendido, desde una escalera. Motosierras, trepar y trabajar cerca de líneas eléctricas no forman parte.',
    },
    {
      title: 'Qué puede pasar',
      says: 'Las cuchillas cortan, la madera cae y rebota, las escaleras vuelcan, el suelo es desigual, el tiempo cambia, los insectos pican. Hay gente que se hace daño. Vienes porque quieres y respondes de lo que haces, como tu jefe de cuadrilla responde de dirigir.',
    },
    {
      title: 'Qué haces tú',
      says: 'Sigues la charla y a tu jefe de cuadrilla, llevas protección, usas solo herramientas que te enseñaron y no entras en los árboles cerrados. Una parada vale para todos, la dé quien la dé.',
    },
    {
      title: 'Puedes dejarlo cuando quieras',
      says: 'Di que no a un árbol, haz una pausa, vete a casa: nadie pregunta por qué. Dile a tu jefe de cuadrilla antes de empezar si algo te hace hoy más difícil el trabajo. Aquí no se anota.',
    },
    {
      title: 'Fotos',
      says: 'Puedes hacer fotos de árboles. No hagas fotos de personas. Lugar y cámara se quitan de cada foto antes de que salga de tu teléfono.',
    },
    {
      title: 'Qué se guarda y cuánto tiempo',
      says: 'Tu nombre, cuándo viniste y te fuiste, qué firmaste, en qué árboles trabajaste y tus fotos de árboles. Lo ven los jefes de cuadrilla y el responsable de este huerto; la cuadrilla ve tu nombre y tu árbol. El huerto lo guarda como historia de los árboles. Pídelo al responsable, y tu nombre se borra.',
    },
  ],
  version: (version) => `Texto, versión ${version}`,
  iAgree: 'Lo he leído y estoy de acuerdo',
  agree: 'Aceptar',
  agreedNote: 'Puedes retirarlo: díselo a tu jefe de cuadrilla.',
  readFirst: 'Marca que lo has leído y acepta.',
  minorTitle: 'Un adulto acepta por ti',
  minorWhy:
    'Si eres menor trabajas sin escalera ni serrucho, y con el adulto que responde por ti presente.',
  guardianAgrees: (name) => `Soy ${name}, madre, padre o tutor, y estoy de acuerdo`,
  withLead:
    'Ve a tu jefe de cuadrilla con tu madre, tu padre o tu tutor. Lo leen, y tu jefe de cuadrilla anota que están de acuerdo.',
  onThisDevice:
    'O tu madre, tu padre o tu tutor entra también en este dispositivo; así puede aceptar aquí mismo.',
  goOn: 'Seguir',
}
