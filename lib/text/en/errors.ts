/** What went wrong outside the rules: the network, the machine, the input. */

export const errors = {
  network: 'No answer from the orchard. Kept here and sent again by itself.',
  busy: 'The orchard’s machine is busy. It is asked again by itself.',
  signedOut: 'This device is signed out. Open the join link again; what you did is kept.',
  tooLarge: 'This is too large to send. Make it shorter or smaller.',
  notAllowed: 'Not yours to do. Ask your lead.',
  notFound: 'This is not there any more. Go back to your tree.',
  badInput: 'Something written here cannot be read. Look at it once more.',
  newVersion: 'A newer Rowcall is ready. Load it once everything is sent.',
  loadNewVersion: 'Load it',
  unknown: (code: string) => `Something went wrong (${code}). Try again, or ask your lead.`,
  refusedUnknown: (code: string) => `This was not accepted (${code}). Ask your lead.`,
}
