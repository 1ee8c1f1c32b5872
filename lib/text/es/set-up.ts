import type { setUp as en } from '../en/set-up'

export const setUp: typeof en = {
  title: 'Crear el huerto',
  why: 'Eres su primer responsable. Árboles, bloques y personas vienen después.',
  orchardName: 'Nombre del huerto',
  orchardNameHint: 'Como lo llama la cuadrilla.',
  writeOrchardName: 'Escribe un nombre, de 80 letras como mucho.',
  yourName: 'Tu nombre',
  yourNameHint: 'Lo ve la cuadrilla. Sin correo ni contraseña.',
  writeYourName: 'Escribe tu nombre, de 60 letras como mucho.',
  timeZone: 'Zona horaria del huerto',
  timeZoneHint: 'Decide qué es «hoy» y cuándo anochece.',
  language: 'Idioma del huerto',
  units: 'Medidas',
  metric: 'Metros, kilos',
  us: 'Pies, libras',
  make: 'Crear el huerto',
  making: 'Creándolo…',
  writeCard: 'Escribir la tarjeta de emergencia',
  cardNote:
    'Toda la cuadrilla la ve en su teléfono, también sin señal. Nombra solo a quien esté de acuerdo.',
  cardHints: {
    number: (proposed) =>
      proposed === null
        ? 'El de tu país, tal como se marca.'
        : `El de tu país, tal como se marca. Por tu zona horaria: ${proposed}.`,
    call: 'Quien conoce el lugar, con su número.',
    where: 'Como lo dirías por teléfono: carretera, pueblo, portón.',
    access: 'Qué portón, qué ancho, quién lo abre, dónde dar la vuelta.',
    hospital: 'Su nombre y carretera, y cuánto se tarda.',
    first_aid: 'Dónde está el botiquín.',
    first_aider: 'Quién sabe darlos y cómo se le encuentra.',
    meeting_point: 'Donde se cuenta a todos después de una parada.',
  },
  saveCard: 'Ponerla en todos los teléfonos',
  noCardYet: 'La tarjeta de emergencia aún no está escrita.',
  noCardNote: 'Nadie puede leer en ella dónde está ni a quién llamar.',
  toCard: 'A la tarjeta',
  noCode:
    'Un enlace de alta crea un huerto. Lo escribe la máquina donde corre Rowcall cuando arranca vacía.',
  codeLabel: 'Código de alta',
  useCode: 'Usar este código',
  code_wrong: 'No se conoce este código de alta. Abre otra vez el enlace tal como se escribió.',
  code_expired:
    'Este código de alta tiene más de 24 horas. Arranca Rowcall otra vez: escribe uno nuevo.',
  code_used: 'Este código de alta ya creó su huerto. Pide un enlace a su responsable.',
}
