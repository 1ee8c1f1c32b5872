/** What went wrong outside the rules: the network, the machine, the input. */

export const errors = {
  offline: 'No answer from the orchard. Kept here and sent again by itself.',
  busy: 'The orchard’s machine is busy. It is asked again by itself.',
  signed_out: 'This device is signed out. Open the join link again; what you did is kept.',
  not_allowed: 'Not yours to do. Ask your lead.',
  malformed: 'Something written here cannot be read. Look at it once more.',
  too_large: 'This is too large to send. Make it shorter or smaller.',
  too_many: 'Too many tries from this device. Wait an hour, or ask your lead.',
  not_admitted: 'Your lead has to let you in first.',
  other_login:
    'Somebody else uses this device now. Open your own join link again; what you did is kept.',
  not_kept: 'This device has no room to keep it, so it is not done. Free some room and try again.',
  not_understood: 'The orchard’s answer is not for this page. Load the page again and retry.',
  command_id_used: 'Something else was sent in its place. Look at what is there, then do it again.',
  gone: 'This is not there any more. Go back to your tree.',
  noAnswer: 'No answer came. Nothing was changed; try again where there is signal.',
  newVersion: 'A newer Rowcall is ready. Load it once everything is sent.',
  loadNewVersion: 'Load it',
  unknown: (code: string) => `Something went wrong (${code}). Try again, or ask your lead.`,
  refusedUnknown: (code: string) => `This was not accepted (${code}). Ask your lead.`,
}
