import { FASTENERS } from '@/lib/trade/pairs'
import { isDisposing } from './disposing'
import { onceForText } from './memo'
import { singular } from './words'

const GENERAL =
  /\b(?:in reverse|reverse order|(?:put|build|bolt|screw|assemble) (?:it|them|everything|the lot|all) (?:all |up )?(?:back )?together|back together (?:again|in reverse)|(?:reassemble|refit|replace|reinstall|fasten|secure|reconnect|return|put) (?:back )?(?:everything|the (?:rest|remaining|others?|machine|unit|parts)|all (?:the )?(?:(?:removed|other|remaining) )?(?:parts|components|covers|panels|guards|items|connections))\b)/i
const LEFT_SO =
  /\b(?:leave|keep)\b.*\b(?:out|off|open|disconnected|loose|drained|empty|closed|shut|unplugged|removed)\b/i
/** "Slide the old seal out and the new one in": off and on in one step. */
const SWAPS =
  /\b(?:out|off|away|remove|strip|peel)\b[^.;]*?(\b(?:and|then|,) (?:(?:fit|put|slide|push|press|screw|clip|drop|set|lay|hang|hook) )?(?:the|a|an|its|another) (?:new|fresh|other|spare|replacement) (?:one|ones|pair|set|pieces?)\b)/i
/** @returns the words of what comes off and is put on new in one step; empty where nothing is. */
const swappedIn = (text: string): string => {
  const found = SWAPS.exec(text)
  const before = text.slice(0, found === null ? 0 : found.index + found[0].length - (found[1] ?? '').length)
  const parts = before.split(/,|\b(?:and|then)\b/i).filter(part => part.trim() !== '')
  return (parts.at(-1) ?? '').toLowerCase()
}
const DONE =
  /\b(?:refitted|replaced|reinstalled|fitted|in place|back on|back in|closed|shut|reconnected|connected|plugged in|tight|tightened|torqued|secured?|filled|refilled|full|latched|seated|restored|lowered)\b/i

/** Shut down when the work is over: what is left so stays so. */
export const ENDS = /\bfor the (?:night|day|weekend|winter|season|holidays?)\b|\bovernight\b/i

/** "Tighten a new lock nut": a fastener renewed goes where the old one came off, whatever kind it was. */
const NEW =
  /\b(?:new|fresh|replacement|spare)\s+(?:[a-z-]+\s+){0,3}?([a-z-]+)(?=\s*(?:$|[,.;]|\b(?:on|onto|in|into|to|with|up|down|home|tight|clockwise|anticlockwise|by|at|until|over|through|for)\b))/gi
const newHeadsIn = (text: string): ReadonlySet<string> =>
  new Set(
    [...text.matchAll(NEW)].map(match => singular((match[1] ?? '').toLowerCase())).filter(head => FASTENERS.has(head)),
  )

/** @returns what a step tells besides its actions: everything back, left as it is, old out and new in, what is new. */
export const tellsOf = onceForText((text: string) => ({
  isGeneral: GENERAL.test(text),
  isLeftSo: LEFT_SO.test(text) || ENDS.test(text),
  isDisposal: isDisposing(text),
  isDone: DONE.test(text),
  swapped: swappedIn(text),
  renews: newHeadsIn(text),
}))
