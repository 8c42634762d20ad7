import type { Act } from '@/lib/trade/pairs'
import { actionsOf } from '../action'
import { quote } from '../late'
import { cutsPower } from '../power'
import { linesOf } from '../proof'
import { addStep } from '../remedy'
import { atMark, type Found, type Rule } from '../rule'
import { sample } from '../sample'
import type { Subject } from '../subject'
import { isCut, undoneBy } from '../undone'

const SUPPLY = /\b(?:isolator|breaker|disconnect|main switch|mains|supply|power(?! (?:switch|button|key)))\b/i
/** A plug in one's own hand is as good. */
const PULLED =
  /\b(?:withdraw|pull|yank|take|draw|remove|unplug|whip)\w*\b[^.;]*\b(?:plug|cord|flex|power lead)\b|\bunplug\w*\b(?! (?:the |both |all |each )?(?:[\w-]+ )*(?:connector|cable|sensor|lead|wire|hose|harness|coupling|plug-in)s?\b)/i
const LOCKS =
  /\b(?:padlock\w*|lock(?:ed|s)?[- ]?(?:out|off)|lock(?:ed)? (?:it|and tag|the (?:isolator|breaker|switch|disconnect|supply|plug))|(?:your|a|the|own|danger)(?: (?:red|yellow|personal|own|name|safety|warning|danger|brass|spare))? (?:lock|tag)s?\b(?!\s*(?:nut|washer|ring|plate|screw|wire|tab|pin))|lock and (?:\w+ )?tag|tag(?:ged)? (?:out|it|the)|keep the (?:key|plug)|key (?:in|on) (?:your|his|her|my)|plug in sight|unplug\w*(?! (?:the |both |all )?(?:[\w-]+ )*(?:connector|cable|sensor|lead|wire|hose)s?\b)|(?:pull|take|draw|remove)\w* (?:out )?(?:the |its )?(?:[\w-]+ )?(?:plug|fuse)\b(?! (?:lead|cap|boot|wire))|permit)\b/i
const TO_ZERO = /\bto (?:0|zero|nought)\b/i
const OPENS = /\b(?:remove|take off|lift off|open|unscrew|undo|disconnect|pull|reach|replace|adjust|clean|clear)\b/i

const APART: ReadonlySet<Act> = new Set<Act>(['remove', 'disconnect', 'loosen', 'open'])
/** What a step lays bare or takes apart once the power is cut. */
const isOpening = (text: string): boolean =>
  OPENS.test(text) ||
  actionsOf(text).some(
    ({ acts, things }) =>
      [...acts].some(act => APART.has(act)) && things.some(thing => thing.head !== '' && !isCut(thing)),
  )

const check = ({ sheet }: Subject): readonly Found[] => {
  const cut = sheet.steps.find(
    ({ mark }) =>
      SUPPLY.test(mark.text) &&
      (TO_ZERO.test(mark.text)
        ? cutsPower(mark.text)
        : actionsOf(mark.text).some(action => action.things.some(thing => undoneBy(action, thing) === 'switched-off'))),
  )
  if (cut === undefined || !sheet.steps.some(({ mark }) => mark !== cut.mark && isOpening(mark.text))) return []
  if (linesOf(sheet).some(({ text }) => LOCKS.test(text) || PULLED.test(text))) return []
  const message = `Step ${cut.number}, ${quote(cut.mark)}, cuts the power but nothing keeps it off. Add a lock and a tag of the person at work.`
  return [
    {
      place: atMark(cut.mark),
      message,
      remedy: addStep('lockout', 'Lock and tag it, and keep the key', cut.number, cut.mark),
    },
  ]
}

/** Off is not locked off. */
export const noLockout: Rule = {
  id: 'no-lockout',
  level: 'stop',
  about: 'Power is switched off for the work, but neither locked nor tagged.',
  why: 'Someone comes by, finds it off and switches it on.',
  source: 'OSHA 29 CFR 1910.147 on lockout and tagout (from memory)',
  trips: sample([
    ['step', 'Switch off the breaker'],
    ['step', 'Remove the cover'],
    ['step', 'Replace the contactor'],
  ]),
  passes: sample([
    ['step', 'Switch off the breaker'],
    ['step', 'Lock and tag the breaker'],
    ['step', 'Remove the cover'],
    ['step', 'Replace the contactor'],
  ]),
  check,
}
