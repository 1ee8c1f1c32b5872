/** Consent, once a season; for a minor by a guardian, with a responsible adult present. */

export const consent = {
  title: 'Read this once a season',
  /** Version 1 of the text. A change of meaning is a new version. */
  parts: [
    {
      title: 'What pruning is',
      says: 'You cut wood out of fruit trees with hand tools, on the ground and, if you have learned it, from a ladder. Chain saws, climbing and work near power lines are not part of it.',
    },
    {
      title: 'What can happen',
      says: 'Blades cut, wood falls and springs back, ladders tip, ground is uneven, weather turns, insects sting. People do get hurt. You come of your own will and answer for what you do, as your lead answers for leading.',
    },
    {
      title: 'What you do',
      says: 'You follow the briefing and your lead, wear protection, use only tools you were shown, and keep out of closed trees. A stop counts for everybody, whoever calls it.',
    },
    {
      title: 'You may stop at any time',
      says: 'Say no to a tree, take a break, go home: nobody asks why. Tell your lead before you start if something makes the work harder for you today. It is not written down here.',
    },
    {
      title: 'Photos',
      says: 'You may photograph trees. Do not photograph people. Place and camera are taken off each photo before it leaves your phone.',
    },
    {
      title: 'What is kept, and how long',
      says: 'Your name, when you came and went, what you signed, which trees you worked on, and your photos of trees. Leads and the manager of this orchard see it; the crew sees your name and your tree. The orchard keeps it as the trees’ record. Ask the manager, and your name is blanked.',
    },
  ],
  version: (version: number) => `Text version ${version}`,
  iAgree: 'I have read this and agree',
  agree: 'Agree',
  agreedNote: 'You may take it back: tell your lead.',
  readFirst: 'Tick that you have read it, then agree.',
  minorTitle: 'An adult agrees for you',
  minorWhy:
    'If you are under age, you work without ladder and saw, and with an adult who answers for you on the spot.',
  guardianAgrees: (name: string) => `I am ${name}, parent or guardian, and agree`,
  withLead:
    'Go to your lead together with your parent or guardian. They read this, and your lead puts down that they agree.',
  onThisDevice:
    'Or your parent or guardian joins on this device too; then they can agree right here.',
  goOn: 'Go on',
}
