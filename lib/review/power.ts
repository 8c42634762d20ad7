import { onceForText } from './memo'

const CUTS =
  /\b(?:unplug\w*|isolate\w*|de-?energi[sz]e\w*|lock(?:ed)?[ -]?(?:out|off)|padlock\w*|lock(?:ed)? (?:the |its |each |both )?(?:[\w'-]+ )*(?:isolators?|breakers?|disconnects?|main switch|fuse carrier|supply)|prove[sd]?|proving|tag(?:ged)? )\b|\b(?:pull|take|draw)\w*\b[^.;]*(?<!\b(?:drain|oil|level|filler|fill|spark|glow|vent|blanking|core|freeze|test|sump|rubber|ear) )\bplug\b(?![^.;]*\b(?:drain|oil)\b)|\b(?:switch|turn|shut|power)\w*\b[^.;]*\b(?:off|down)\b|\b(?:switch|turn|set|put|throw|rotate|bring)\w*\b[^.;]*\bto (?:0|off|zero|nought|the off position)\b|\b(?:switch|turn|flip|throw)\w*\b[^.;]*\bover to off\b|\bdead\b/i
/** A lock or tag that comes off again. */
const UNLOCKS =
  /\b(?:remove|unlock|lift|undo|unclip|unhook)\w*\b[^.;]*\b(?:padlocks?|locks?|tags?|hasp)\b|\bunlock\w*\b[^.;]*\b(?:isolators?|breakers?|disconnects?|switch|supply|fuse carrier)\b|\b(?:take|pull|get|bring)\w*\b[^.;]*\b(?:padlocks?|locks?|tags?|hasp)\b[^.;]*\b(?:off|away|from|down|out)\b|\btake off\b[^.;]*\b(?:padlocks?|locks?|tags?)\b|\b(?:your|my|our|the|own) (?:pad)?locks?\b(?: and (?:\w+ )?tags?)? (?:comes? |is |are )?off\b|\b(?:locks?|tags?|padlocks?) (?:comes?|is|are) (?:taken |lifted )?off\b/i
/** A lock or tag put on. */
const LOCKS =
  /\b(?:hang|fit|fasten|put|set|clip|place|snap|attach|apply|secure|click)\w*\b[^.;]*\b(?:padlocks?|locks?|tags?|hasp)\b[^.;]*\b(?:on|onto|to|through|over|in)\b/i
const POWERS =
  /\b(?:throw|flip|flick|knock|put|push|set|swing)\w*\b[^.;]*\b(?:isolators?|breakers?|disconnects?|(?:main|emergency|wall) switch|switch)\b[^.;]*\b(?:on|up|in)\b(?! (?:its|the|a|to|top)\b)|\b(?:switch|turn|power)\w*\b[^.;]*\bon\b(?! (?:its|the|an?|to|top|your|each|both|their|his|her|my|that|this|one|it)\b)|\b(?:switch|turn|power)(?:ed|s)? (?:back )?on\b|\bplug\w*\b[^.;]*\bin\b|\b(?:restore|energi[sz]e|start|run)\b/i

/** A plug in one's own hand is isolation enough, so pulling it brings no danger of its own. @source OSHA 29 CFR 1910.147(a)(2)(iii)(A), from memory */
const UNPLUGS =
  /\bunplug\w*\b(?![^.;]*\b(?:connector|sensor|harness|hose)\b)|\b(?:pull|take|draw)\w*\b[^.;]*\bplug\b[^.;]*\b(?:wall|socket|outlet|mains)\b|\bpull\w*\b[^.;]*\b(?:mains|power) (?:plug|cord)\b|\b(?:pull|draw|take)\w* (?:out )?(?:the |its )?(?:[a-z]+'s )?plug\b(?! from the (?:drain|sump|engine|cylinder))|\b(?:take|pull|draw)\w*\b[^.;]*\b(?:lead|cord|flex)\b[^.;]*\b(?:from|out of) the (?:wall|socket|outlet|mains)\b/i

/** @returns whether a step cuts the power: switched off, locked, unplugged, proved dead. */
export const cutsPower = onceForText(
  (text: string): boolean =>
    (CUTS.test(text) || LOCKS.test(text)) && !UNLOCKS.test(text) && !/\b(?:water|gas|fuel|air|oil)\b/i.test(text),
)

/** @returns whether a step brings power back or sets going what was still. */
export const bringsPower = onceForText((text: string): boolean => POWERS.test(text) || UNLOCKS.test(text))

/** @returns whether a step takes a lock or tag off: nothing is live by that alone. */
export const unlocks = onceForText((text: string): boolean => UNLOCKS.test(text))

/** @returns whether a step pulls the plug. */
export const unplugs = onceForText((text: string): boolean => UNPLUGS.test(text))
