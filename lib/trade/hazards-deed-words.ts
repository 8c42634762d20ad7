/** Where most of this comes from. */
export const PRACTICE = 'common practice, no source'

/** Verbs of the hands, in base form. */
export const HANDS =
  '(?:take|lift|pull|slide|draw|ease|pop|unscrew|unclip|remove|unbolt|undo|unhook|back|wind|work|slip|twist|prise|pry|lever|tap|drift|knock|drive|push|press|hoist|tease|swing|drop|haul|fit|set|lay|put|seat|hang|get|reach|tip|turn|roll|spring|snap|wiggle|walk)'
/** @returns what matches one of the verbs, and after it in the same clause one of the things. */
export const on = (verbs: string, things: string): RegExp =>
  new RegExp(`\\b${verbs}\\w*\\b[^.;]*\\b(?:${things})\\b`, 'i')
