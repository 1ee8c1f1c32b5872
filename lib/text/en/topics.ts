/** The proposed topics of a briefing: a title that says what to do, and what to know. */

export const topics = {
  stop_signal: {
    title: 'Know the signal that stops all work',
    says: [
      'Anyone may stop the work. Call it loudly; the phone is never the alarm.',
      'On the signal: tools down, out from under the trees, walk to the meeting point and be counted.',
      'Work goes on only when a lead says so to each of you.',
    ],
  },
  tools: {
    title: 'Look at your tool before you trust it',
    says: [
      'Gloves and eye protection on before the first cut.',
      'Carry blades closed or in the sheath. Never cut towards your other hand.',
      'A tool that is loose, blunt or cracked is set aside, out of use.',
    ],
  },
  off_today: {
    title: 'Leave the trees that are off today',
    says: [
      'They cannot be claimed here, and are not pruned on the way either.',
      'A wound at the wrong time lets disease in, or the weather makes the work dangerous.',
      'Only a lead allows them again.',
    ],
  },
  ladders: {
    title: 'Stand the ladder firm, and come down to move it',
    says: [
      'Only people with the skill, two together. Third leg uphill, all feet on firm ground.',
      'Keep your belt buckle between the rails. Never stand on the top two steps.',
      'A ladder that tipped over is not used again until a lead has looked at it. Phone away on the ladder.',
    ],
  },
  saws: {
    title: 'Saw only what you can hold and see fall',
    says: [
      'Only people with the skill. Nobody stands below or beside the limb.',
      'A heavy limb comes off in three cuts: from below, from above further out, then the stub at the collar.',
      'Too thick or too high is not yours: refer it.',
    ],
  },
  minors: {
    title: 'Young people: feet on the ground',
    says: [
      'Under age means no ladder, no saw, and the adult who answers for them is here.',
      'Nobody hands them a saw or holds a ladder for them, not even for a moment.',
      'Show them, and stay where you see each other.',
    ],
  },
  keep_out: {
    title: 'Keep out of the closed trees',
    says: [
      'A tree flagged for the licensed arborist, and all within its reach, is closed.',
      'Do not walk, rest or leave tools under it.',
      'Only a manager opens it again.',
    ],
  },
  lines: {
    title: 'Keep far from the power line',
    says: [
      'No pruning, no climbing and nothing leaned in the rows that are closed for it.',
      'Carry ladders and poles lying flat.',
      'Wood touching the line? Go back, keep others away, call your lead.',
    ],
  },
  slope: {
    title: 'Mind the slope',
    says: [
      'Stand above the limb you cut, never below it.',
      'On wet grass go slowly and along the slope, not straight down.',
      'Set a ladder with its third leg uphill. Too steep to stand firm? Leave the tree and say so.',
    ],
  },
  wet: {
    title: 'Wet wood is slippery, and open to disease',
    says: [
      'Test each step. Wet bark, rungs and handles slip.',
      'Wipe your hands and the handle before you cut.',
      'When it rains on the trees, your lead says what is still pruned.',
    ],
  },
  heat: {
    title: 'Drink before you are thirsty',
    says: [
      'Water and shade are at the meeting point. Rest there whenever you like.',
      'Headache, dizzy or no longer sweating? Stop, sit in the shade, call your lead.',
      'Look out for the person next to you.',
    ],
  },
  cold: {
    title: 'Warm your hands before you cut',
    says: [
      'Cold hands are slow. Take breaks to warm them.',
      'Bark and steps may be icy. Test before you stand.',
      'Wet and cold? Go and warm up. Nobody asks why.',
    ],
  },
  wind: {
    title: 'In gusts, stay on the ground',
    says: [
      'Your lead calls ladders off when gusts come. Come down at once.',
      'Look up before you go under a tree: cracked wood falls in wind.',
      'A limb that hangs or creaks is not yours: keep away and flag it.',
    ],
  },
  thunder: {
    title: 'Thunder: down at once, and away from the trees',
    says: [
      'Hear thunder? Call it out, come down, leave ladders and poles lying.',
      'Go into a building or a car with a hard roof. A tree, a tent or an open shed is no shelter.',
      'Wait 30 minutes after the last thunder; your lead says when it goes on.',
    ],
  },
  disease: {
    title: 'Do not carry disease from tree to tree',
    says: [
      'Flagged trees only when a lead deals them to you, and after the healthy ones.',
      'Wipe the blade after each flagged tree, and say so here.',
      'Keep their wood apart from the rest.',
    ],
  },
  nests: {
    title: 'Bees or wasps: walk away slowly',
    says: [
      'Do not wave, do not run. Flag the tree.',
      'Tell your lead before you start if a sting is dangerous for you.',
      'Stung and short of breath, or the face swells? Call for an ambulance at once.',
    ],
  },
}
