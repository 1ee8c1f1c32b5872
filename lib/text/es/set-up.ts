import type { setUp as en } from '../en/set-up'

export const setUp: typeof en = {
  title: 'Crear el huerto',
  why: 'Eres su primer responsable. Árboles, bloques y personas vienen después.',
  orchardName: 'Nombre del huerto',
  orchardNameHint: 'Como lo dice la cuadrilla.',
  writeOrchardName: 'Escribe un nombre, de 100 letras como mucho.',
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
  noCode:
    'Un enlace de alta crea un huerto. Lo escribe la máquina donde corre Rowcall cuando arranca vacía.',
  codeLabel: 'Código de alta',
  useCode: 'Usar este código',
  code_wrong: 'No se conoce este código de alta. Abre otra vez el enlace tal como se escribió.',
  code_expired:
    'Este código de alta tiene más de 24 horas. Arranca Rowcall otra vez: escribe uno nuevo.',
  code_used: 'Este código de alta ya creó su huerto. Pide un enlace a su responsable.',
}
