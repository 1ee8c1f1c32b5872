/** The first manager makes the orchard. */

export const setUp = {
  title: 'Make the orchard',
  why: 'You are its first manager. Trees, blocks and people come after.',
  orchardName: 'Name of the orchard',
  orchardNameHint: 'As the crew says it.',
  writeOrchardName: 'Write a name, 80 letters at most.',
  yourName: 'Your name',
  yourNameHint: 'The crew sees it. No e-mail, no password.',
  writeYourName: 'Write your name, 60 letters at most.',
  timeZone: 'Time zone of the orchard',
  timeZoneHint: 'It decides what “today” is, and when dusk falls.',
  language: 'Language of the orchard',
  units: 'Measures',
  metric: 'Metres, kilograms',
  us: 'Feet, pounds',
  make: 'Make the orchard',
  making: 'Making it…',
  writeCard: 'Write the emergency card',
  cardNote:
    'Everybody in the crew sees it on their phone, also without signal. Name only people who agree.',
  cardHints: {
    number: (proposed: string | null) =>
      proposed === null
        ? 'Of your country, as it is dialled.'
        : `Of your country, as it is dialled. By your time zone: ${proposed}.`,
    call: 'Who knows the place, with their number.',
    where: 'As you would say it on the telephone: road, village, gate.',
    access: 'Which gate, how wide, who opens it, where to turn round.',
    hospital: 'Its name and road, and how long one drives.',
    first_aid: 'Where the kit is.',
    first_aider: 'Who is trained, and how to reach them.',
    meeting_point: 'Where everybody is counted after a stop.',
  },
  saveCard: 'Put it on all phones',
  noCardYet: 'The emergency card is not written yet.',
  noCardNote: 'Nobody can read there where they are or whom to call.',
  toCard: 'To the card',
  noCode:
    'A set-up link makes one orchard. The machine that runs Rowcall prints it when it starts empty.',
  codeLabel: 'Set-up code',
  useCode: 'Use this code',
  code_wrong: 'This set-up code is not known. Open the link again just as it was printed.',
  code_expired:
    'This set-up code is older than 24 hours. Start Rowcall again: it prints a new one.',
  code_used: 'This set-up code has made its orchard. Ask its manager for a link.',
}
