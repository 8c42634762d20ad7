/** The two who speak: espeak-ng voice, words a minute, pitch. */
export const VOICES = {
  Hedda: { voice: 'en-gb+f3', speed: 158, pitch: 42 },
  Ivo: { voice: 'en-us+m3', speed: 160, pitch: 48 },
}

/**
 * What is said, sentence by sentence: scene it belongs to, speaker, words, and silence before it in seconds.
 * Machine, people and values are invented. The talk has what real talk has: a slip put right in passing, a warning that
 * comes late, "this guy" for a part, a torque without tolerance, and no test at the end.
 */
export const TALK = [
  ['strings', 'Hedda', 'Right, this chipper has started spitting out long strings instead of clean chips.', 0.8],
  [
    'strings',
    'Hedda',
    "Strings mean the knives are dull or the anvil gap has opened up, so we're going to turn the knives and reset the gap.",
    0.35,
  ],
  ['meter', 'Ivo', 'How often do you do that?', 0.7],
  ['meter', 'Hedda', 'Every 50 hours or every 6 months, whichever comes first.', 0.6],
  ['plug', 'Hedda', 'First thing, pull the plug and put a lock on it, so nobody plugs it back in.', 0.9],
  ['coast', 'Hedda', "The drum runs on after you switch off, and it'll take fingers off without slowing down.", 0.7],
  ['coast', 'Hedda', "So give it at least 2 minutes, and listen until it's quiet.", 0.35],
  ['hood', 'Hedda', 'Two bolts on the hood, 17 millimetre socket, and swing the hood back.', 0.9],
  ['pin', 'Hedda', "Now push this guy through the hole in the drum so it can't turn.", 0.8],
  ['pin', 'Ivo', 'The locking pin?', 0.6],
  ['pin', 'Hedda', 'The locking pin, yes.', 0.5],
  ['knife', 'Hedda', 'Three bolts on each knife, 6 millimetre hex key, and lift the knife straight off.', 0.9],
  [
    'gloves',
    'Hedda',
    'Oh, and I should have said this before your hands went in there, put cut-resistant gloves on, because even a dull knife will open your palm.',
    0.7,
  ],
  ['wipe', 'Hedda', 'Wipe the seat with a dry rag, since one bit of grit lifts the whole edge.', 0.8],
  [
    'turn',
    'Hedda',
    'Turn the knife over so the fresh edge points out, and one drop of medium threadlocker on each bolt.',
    0.7,
  ],
  ['torque', 'Hedda', 'Torque those to 45, no, sorry, 35 newton metres, plus or minus 2, middle bolt first.', 0.9],
  ['torque', 'Hedda', "It's on the plate inside the hood.", 0.35],
  ['torque', 'Ivo', 'And if I go tighter?', 0.7],
  ['torque', 'Hedda', 'Then the bolt stretches, and a knife that comes loose in there goes off like a grenade.', 0.6],
  ['anvil', 'Hedda', "Pin out again, and now the anvil, that's this block down here.", 0.9],
  [
    'anvil',
    'Hedda',
    'Loosen its two nuts and slide it up until a 1.5 millimetre feeler just drags against the knife.',
    0.35,
  ],
  [
    'gap',
    'Hedda',
    'Anything from 1 to 2 millimetres is fine, and check it at both knives, turning the drum by hand.',
    0.7,
  ],
  ['nuts', 'Hedda', 'Then nip the nuts up to 60 newton metres.', 0.7],
  ['oil', 'Ivo', 'Do you do the gearbox as well?', 0.8],
  [
    'oil',
    'Hedda',
    "While we're here, yes, take the level plug out and top it up with 80W-90 gear oil until it weeps out of the hole.",
    0.6,
  ],
  ['oil', 'Hedda', 'From dry it takes 80 to 100 millilitres.', 0.35],
  ['rag', 'Hedda', 'Plug back in, wipe up what ran down, and the rag goes in the oily waste bin.', 0.8],
  ['shut', 'Hedda', "Hood shut, both bolts snug, lock off, plug in, and that's you done.", 0.9],
].map(([scene, speaker, text, pause]) => ({ scene, speaker, text, pause }))

/** Silence after the last word, in seconds. */
export const TAIL = 1.6
