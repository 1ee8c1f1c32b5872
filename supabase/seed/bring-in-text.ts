/** What `npm run bring-in` says, besides what is wrong in a row (lib/text). */

import { inventory as englishProblems } from '@/lib/text/en/inventory'
import { inventory as spanishProblems } from '@/lib/text/es/inventory'
import type { Language } from '@/lib/text/language'

type Counts = { trees: number; blocks: number; cultivars: number; notStanding: number }

const english = {
  language: 'en' as Language,
  usage: `Brings an orchard's trees in from a table, all of it or nothing.

  npm run bring-in -- trees.csv --link <link>

  --link       a manager's link, or the set-up link of a new Rowcall
  --name       with a set-up link: the orchard's name
  --manager    with a set-up link or a link for a new manager: that person's name
  --time-zone  with a set-up link: such as America/Chicago
  --units      with a set-up link: metric (default) or us
  --server     where Rowcall runs, if not where the link points
  --language   en or es

The columns are those of supabase/seed/orchard.csv, in any order.
Ends with 0 when all is in, 1 when rows are wrong, 2 when something is missing here, 3 when the link does
not let anybody in, 4 when Rowcall does not answer.`,
  missing: (options: string) => `Also needed: ${options}. See --help.`,
  unknownOption: (told: string) => `${told} See --help.`,
  noTimeZone: (name: string) => `There is no time zone ${name}. Write one like America/Chicago.`,
  noFile: (file: string) => `${file} cannot be read.`,
  notALink: 'This is not a link of Rowcall: it has no code after a #. Copy it whole.',
  linkOver: 'This link is wrong, used up or over. Ask for a new one.',
  notManager: (role: string) => `This is a link for a ${role}. Trees are brought in by managers.`,
  waitsFirst:
    'Whoever opens this link is let in by a manager first. Make a link for another device of a manager, and use that.',
  noAnswer: (server: string) => `Rowcall at ${server} does not answer. Is it running?`,
  notHeard:
    'No answer came, so it is not known whether the trees are in. Send the same file again: what is in is not added twice.',
  refused: (code: string) => `Rowcall refused (${code}). Nothing was brought in.`,
  tooLarge:
    'This is more than Rowcall takes at once. Split the file by block. Nothing was brought in.',
  broughtIn: ({ trees, blocks, cultivars, notStanding }: Counts) =>
    `Brought in: ${trees} trees in ${blocks} blocks, ${cultivars} cultivars. ${notStanding} of the places have no standing tree.`,
  inBefore: 'This file was brought in before. Nothing was added.',
  managersLink: 'The way in for the manager, for one device, within 24 hours:',
  placeInOrchard:
    'The orchard has a tree at this place already. Change the place, or take the line out.',
  otherwiseWrong: (code: string) => `Rowcall does not take this (${code}). Look at the line.`,
}

export type BringInText = typeof english

const spanish: BringInText = {
  language: 'es',
  usage: `Trae los árboles de un huerto desde una tabla, todos o ninguno.

  npm run bring-in -- arboles.csv --link <enlace>

  --link       un enlace de responsable, o el enlace inicial de un Rowcall nuevo
  --name       con un enlace inicial: el nombre del huerto
  --manager    con un enlace inicial o para un responsable nuevo: el nombre de esa persona
  --time-zone  con un enlace inicial: por ejemplo Europe/Madrid
  --units      con un enlace inicial: metric (si no se dice) o us
  --server     dónde funciona Rowcall, si no es donde apunta el enlace
  --language   en o es

Las columnas son las de supabase/seed/orchard.csv, en cualquier orden.
Termina con 0 si todo ha entrado, 1 si hay filas mal, 2 si aquí falta algo, 3 si el enlace no deja entrar
y 4 si Rowcall no contesta.`,
  missing: (options) => `Falta también: ${options}. Mira --help.`,
  unknownOption: (told) => `${told} Mira --help.`,
  noTimeZone: (name) => `No hay ninguna zona horaria ${name}. Escribe una como Europe/Madrid.`,
  noFile: (file) => `No se puede leer ${file}.`,
  notALink: 'Esto no es un enlace de Rowcall: no lleva un código tras un #. Cópialo entero.',
  linkOver: 'Este enlace está mal, usado o caducado. Pide uno nuevo.',
  notManager: (role) =>
    `Este enlace es de otro papel (${role}). Los árboles los trae un responsable.`,
  waitsFirst:
    'Quien abre este enlace espera a que un responsable lo deje entrar. Haz un enlace para otro dispositivo de un responsable y usa ese.',
  noAnswer: (server) => `Rowcall no contesta en ${server}. ¿Está en marcha?`,
  notHeard:
    'No llegó respuesta y no se sabe si los árboles han entrado. Envía otra vez el mismo archivo: lo que ya está no se añade dos veces.',
  refused: (code) => `Rowcall lo ha rechazado (${code}). No ha entrado nada.`,
  tooLarge:
    'Es más de lo que Rowcall admite de una vez. Divide el archivo por bloques. No ha entrado nada.',
  broughtIn: ({ trees, blocks, cultivars, notStanding }) =>
    `Han entrado ${trees} árboles en ${blocks} bloques, de ${cultivars} variedades. En ${notStanding} de los lugares no hay ningún árbol en pie.`,
  inBefore: 'Este archivo ya había entrado. No se ha añadido nada.',
  managersLink: 'La entrada para el responsable, en un dispositivo y durante 24 horas:',
  placeInOrchard:
    'El huerto ya tiene un árbol en este lugar. Dale a este otro lugar o quita la línea.',
  otherwiseWrong: (code) => `Rowcall no lo admite (${code}). Revisa la línea.`,
}

export function bringInText(language: Language): BringInText {
  return language === 'es' ? spanish : english
}

export function problemText({ language }: BringInText): typeof englishProblems {
  return language === 'es' ? spanishProblems : englishProblems
}
