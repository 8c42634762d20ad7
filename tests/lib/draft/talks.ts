import { draftMarks } from '@/lib/draft/draft'
import type { Kind } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import type { Transcript } from '@/lib/procedure/recording'

/** A talk of these sentences, each a cue, half a second apart, 2.7 words a second. */
export const talkOf = (...sentences: readonly string[]): Transcript => {
  let at = 0
  const cues = sentences.map(text => {
    const start = at
    const end = start + text.split(' ').length / 2.7
    at = end + 0.5
    return { start, end, text }
  })
  return { name: 'talk', form: 'webvtt', cues }
}

/** Drafted marks of a kind. */
export const draftOf = (kind: Kind, ...sentences: readonly string[]): readonly Mark[] =>
  draftMarks(talkOf(...sentences)).filter(mark => mark.kind === kind)

/** A talk about a lawn mower's blade, ours. */
export const MOWER = [
  'Morning all, Hugo here, and today the old mower gets a sharp blade.',
  'I paid forty for it in 2003 and it has never let me down.',
  'If the grass looks torn and goes brown at the tips, the blade is blunt.',
  'So first, pull the cap off the spark plug and tuck it well out of the way.',
  'If that engine kicks while your hand is on the blade, it will take your fingers off.',
  "What you're gonna do is go ahead and tip the mower back with the air filter facing up.",
  'Otherwise the oil runs into the filter and it smokes for an hour.',
  'Wedge a block of wood against the blade so it can not turn.',
  'Undo the blade bolt with a seventeen mil socket, anticlockwise.',
  'My neighbour uses his teeth, I think.',
  'Lift the blade off and clean the deck with a scraper.',
  'Put the blade in the vice and file the edge, ten strokes each side.',
  "Don't grind it until it goes blue, because that takes the temper out and it chips.",
  'Hang it on a nail, and it should sit level.',
  'Then the blade goes back on with the wings facing up.',
  'Tighten the bolt to 40 newton metres with a torque wrench.',
  'Push this guy back on the plug.',
  'Oh, and before you tip the mower, close the fuel tap.',
  'Spin it by hand and listen for any scraping.',
  'Cheers for watching, see you next week.',
] as const
