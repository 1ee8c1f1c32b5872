/** Consent, once a season; for a minor by a guardian, with a responsible adult present. */

export const consent = {
  title: 'Read this once a season',
  paragraphs: [
    'Pruning has risks: blades, falling wood, ladders, weather. You work on your own decision and may stop at any time.',
    'You follow the briefing and your lead, use only tools you were shown, and keep out of closed trees. A stop counts for everybody, whoever calls it.',
    'Tell your lead before you start if something makes this work harder for you today. You need not say why, and it is not written down here.',
    'Rowcall keeps your name, when you came and went, which trees you worked on, and the photos you take of trees. Do not photograph people.',
    'Only the leads and the manager of this orchard see all of it. Ask them, and your name is blanked.',
  ],
  version: (version: number) => `Version ${version}`,
  ageQuestion: 'How old are you?',
  adult: 'Adult',
  minor: 'Under age',
  iAgree: 'I have read this and agree',
  agree: 'Agree',
  agreedOn: (date: string) => `Agreed on ${date}`,
  readFirst: 'Tick that you have read it, then agree.',
  minorTitle: 'An adult agrees for you',
  minorWhy: 'Under age you work without ladder and saw, and with an adult who answers for you.',
  guardianName: 'Name of the parent or guardian',
  writeGuardian: 'Write the name of the adult who agrees.',
  guardianAgrees: 'I am the parent or guardian and agree',
  adultHere: 'The adult who answers for them today',
  chooseAdult: 'Choose an adult who has arrived.',
  whatIsKept: 'Kept: your name, the version and the time. Nothing about your health.',
}
