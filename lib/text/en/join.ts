/** Joining by a link or a code. */

export const join = {
  title: 'Join the crew',
  shift: (day: string, from: string, to: string) => `${day} shift, ${from} to ${to}.`,
  leads: (name: string) => `${name} leads.`,
  yourName: 'Your name',
  whoSeesIt: 'Only this crew sees it. No e-mail, no password.',
  writeName: 'Write a name the crew knows.',
  nameTooLong: 'Write a shorter name, 60 letters at most.',
  joinCrew: 'Join the crew',
  joining: 'Joining…',
  linkUntil: (time: string) => `This link works until ${time} today.`,
  linkUntilClose: 'This link works until the shift closes.',
  noCode:
    'No code in this link. Scan the code at the meeting point, or ask your lead for the link.',
  waitTitle: 'Almost in. A lead lets you in.',
  waitWhy: 'The shift is not open yet, so a lead admits each person. Tell your lead your name.',
  alreadyIn: (name: string) => `This device is already in the crew as ${name}.`,
  goOnAs: (name: string) => `Go on as ${name}`,
  someoneElse: 'Somebody else uses this device too',
  codeLabel: 'Code from the lead',
  writeCode: 'Write the code as it stands on the card.',
}
