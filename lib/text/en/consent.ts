/** Consent, once a season; for a minor by a guardian, with a responsible adult present. */

export const consent = {
  title: 'Read this once a season',
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
