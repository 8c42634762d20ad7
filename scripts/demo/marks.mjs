/** The heading a careful writer would put over the procedure. */
export const HEADING = {
  title: 'Turn the knives and set the anvil gap of a drum chipper',
  equipment: 'Electric drum chipper, two knives, belt-driven, with oil-filled gearbox (invented)',
  scope:
    'For crew members who know the machine. Covers turning both knives to their fresh edge, setting the gap at the anvil, and topping up the gearbox. Sharpening and bearings are not covered.',
  interval: { hours: 50, months: 6 },
  revision: '',
  author: 'Demo workshop',
  references: [
    {
      title: 'Operator manual of the chipper (invented)',
      part: 'section 2, safety; section 6, knives, anvil and gearbox',
    },
  ],
}

const S = {
  plug: 'step-plug',
  wait: 'step-wait',
  gloves: 'step-gloves',
  hood: 'step-hood',
  pin: 'step-pin',
  knife: 'step-knife',
  wipe: 'step-wipe',
  turn: 'step-turn',
  lock: 'step-threadlocker',
  torque: 'step-torque',
  unpin: 'step-unpin',
  loosen: 'step-loosen',
  gap: 'step-gap',
  nuts: 'step-nuts',
  level: 'step-level',
  oil: 'step-oil',
  refit: 'step-refit',
  rag: 'step-rag',
  shut: 'step-shut',
  unlock: 'step-unlock',
  power: 'step-power',
}

/** Steps in the order of doing, each with the words it was taken from. The gloves were only spoken of half-way. */
const STEPS = [
  [S.plug, 'Pull the plug and put a lock on it.', 'pull the plug and put a lock on it,'],
  [S.wait, 'Wait until the drum stands still.', 'So give it at least 2 minutes,'],
  [S.gloves, 'Put on cut-resistant gloves.', 'put cut-resistant gloves on,'],
  [
    S.hood,
    'Undo the two hood bolts and swing the hood back.',
    'Two bolts on the hood, 17 millimetre socket, and swing the hood back.',
  ],
  [
    S.pin,
    'Push the locking pin through the hole in the drum.',
    "Now push this guy through the hole in the drum so it can't turn. The locking pin? The locking pin, yes.",
  ],
  [
    S.knife,
    'Undo the three bolts of each knife and lift the knife straight off.',
    'Three bolts on each knife, 6 millimetre hex key, and lift the knife straight off.',
  ],
  [S.wipe, 'Wipe the knife seats with a dry rag.', 'Wipe the seat with a dry rag,'],
  [
    S.turn,
    'Turn each knife over, fresh edge outwards, and refit it on its seat.',
    'Turn the knife over so the fresh edge points out,',
  ],
  [
    S.lock,
    'Put one drop of medium threadlocker on each knife bolt.',
    'and one drop of medium threadlocker on each bolt.',
  ],
  [
    S.torque,
    'Torque the knife bolts, the middle bolt first.',
    'Torque those to 45, no, sorry, 35 newton metres, plus or minus 2, middle bolt first.',
  ],
  [S.unpin, 'Pull the locking pin out.', 'Pin out again,'],
  [S.loosen, 'Loosen the two anvil nuts.', 'Loosen its two nuts'],
  [
    S.gap,
    'Slide the anvil up until a 1.5 mm feeler gauge just drags against the knife.',
    'and slide it up until a 1.5 millimetre feeler just drags against the knife.',
  ],
  [S.nuts, 'Torque the anvil nuts.', 'Then nip the nuts up to 60 newton metres.'],
  [S.level, 'Take the level plug out of the gearbox.', 'take the level plug out'],
  [
    S.oil,
    'Top the gearbox up with gear oil until oil weeps out of the level hole.',
    'and top it up with 80W-90 gear oil until it weeps out of the hole.',
  ],
  [S.refit, 'Refit the level plug.', 'Plug back in,'],
  [
    S.rag,
    'Wipe up spilt oil and put the rag in the oily waste bin.',
    'wipe up what ran down, and the rag goes in the oily waste bin.',
  ],
  [S.shut, 'Close the hood and tighten both hood bolts snug.', 'Hood shut, both bolts snug,'],
  [S.unlock, 'Remove the lock from the plug.', 'lock off,'],
  [S.power, 'Plug the chipper in.', 'plug in,'],
]

/** Everything else: kind, the step it belongs to, what the sheet says, the words it was taken from, further fields. */
const OTHERS = [
  [
    'symptom',
    S.knife,
    'Long strings instead of chips mean dull knives or an anvil gap that is too wide.',
    'Strings mean the knives are dull or the anvil gap has opened up,',
  ],
  ['tool', S.plug, 'plug lock', 'put a lock on it,'],
  ['reason', S.plug, 'A locked plug cannot be put back by somebody else.', 'so nobody plugs it back in.'],
  [
    'caution',
    S.wait,
    'The drum runs on after the switch is off and can cut off fingers. Keep the hood shut until the drum stands still.',
    "The drum runs on after you switch off, and it'll take fingers off without slowing down.",
    { level: 'warning', hazard: 'entanglement' },
  ],
  [
    'spec',
    S.wait,
    'Wait after switching off',
    'at least 2 minutes,',
    {
      quantity: { low: 2, unit: 'min' },
      reference: 'after switching off',
      basis: 'manual',
      citation: 'Operator manual, section 2',
    },
  ],
  ['check', S.wait, 'The drum is silent.', "listen until it's quiet."],
  ['tool', S.gloves, 'cut-resistant gloves', 'cut-resistant gloves'],
  [
    'caution',
    S.gloves,
    'A knife cuts even when it is dull. Wear cut-resistant gloves whenever the hood is open.',
    'put cut-resistant gloves on, because even a dull knife will open your palm.',
    { level: 'caution', hazard: 'cut' },
  ],
  ['tool', S.hood, '17 mm socket', '17 millimetre socket,'],
  ['tool', S.pin, 'drum locking pin', 'The locking pin, yes.'],
  ['tool', S.knife, '6 mm hex key', '6 millimetre hex key,'],
  ['material', S.wipe, 'dry rag', 'a dry rag,'],
  ['reason', S.wipe, 'Grit under a knife lifts its whole edge.', 'since one bit of grit lifts the whole edge.'],
  ['material', S.lock, 'medium-strength threadlocker', 'medium threadlocker'],
  ['tool', S.torque, 'torque wrench', 'Torque those'],
  [
    'spec',
    S.torque,
    'Knife bolt torque',
    '35 newton metres, plus or minus 2,',
    { quantity: { low: 33, nominal: 35, high: 37, unit: 'N.m' }, basis: 'plate', citation: 'plate inside the hood' },
  ],
  [
    'caution',
    S.torque,
    'An over-tightened bolt stretches, and a knife that comes loose can be thrown out and kill. Never exceed the torque.',
    'Then the bolt stretches, and a knife that comes loose in there goes off like a grenade.',
    { level: 'warning', hazard: 'flying-parts' },
  ],
  ['tool', S.gap, '1.5 mm feeler gauge', '1.5 millimetre feeler'],
  [
    'spec',
    S.gap,
    'Anvil gap',
    'Anything from 1 to 2 millimetres is fine,',
    {
      quantity: { low: 1, high: 2, unit: 'mm' },
      reference: 'at each knife',
      basis: 'manual',
      citation: 'Operator manual, section 6',
    },
  ],
  [
    'check',
    S.gap,
    'The gap is within its limits at both knives; turn the drum by hand.',
    'and check it at both knives, turning the drum by hand.',
  ],
  [
    'spec',
    S.nuts,
    'Anvil nut torque',
    '60 newton metres.',
    { quantity: { nominal: 60, unit: 'N.m' }, basis: 'spoken' },
  ],
  ['material', S.oil, 'SAE 80W-90 gear oil', '80W-90 gear oil'],
  [
    'spec',
    S.oil,
    'Gear oil quantity',
    'From dry it takes 80 to 100 millilitres.',
    {
      quantity: { low: 80, high: 100, unit: 'mL' },
      reference: 'from dry',
      basis: 'manual',
      citation: 'Operator manual, section 6',
    },
  ],
  ['check', S.oil, 'Oil weeps out of the level hole.', 'until it weeps out of the hole.'],
]

/**
 * Finds words in the talk.
 *
 * @param sentences as lib/transcript reads them from the captions
 * @returns start and end in seconds, to the hundredth
 */
const locate = (said, sentences) => {
  const text = sentences.map(sentence => sentence.text).join(' ')
  const at = text.indexOf(said)
  if (at < 0 || text.indexOf(said, at + 1) >= 0) throw new Error(`"${said}" is not in the talk exactly once`)
  let offset = 0
  const words = []
  for (const sentence of sentences) {
    for (const word of sentence.words)
      if (offset + word.at >= at && offset + word.to <= at + said.length) words.push(word)
    offset += sentence.text.length + 1
  }
  const hundredth = n => Math.round(n * 100) / 100
  return { start: hundredth(words[0].start), end: hundredth(words.at(-1).end) }
}

/** The kept marks of the finished project. */
export const toMarks = sentences => [
  ...STEPS.map(([id, text, said], i) => ({ id, kind: 'step', ...locate(said, sentences), text, said, place: i + 1 })),
  ...OTHERS.map(([kind, step, text, said, more], i) => ({
    id: `${kind}-${i + 1}`,
    kind,
    ...locate(said, sentences),
    text,
    said,
    step,
    ...more,
  })),
]

/** What the writer looked at and let stand, and why. */
export const WAIVERS = [
  { rule: 'vague-thing', mark: S.pin, reason: 'The talk names it right after: the locking pin.' },
  { rule: 'told-late', mark: S.gloves, reason: 'Already moved: the gloves go on before the hood is opened.' },
]
