/** Work that law or common sense leaves to the licensed. */
export type LicensedWork = {
  readonly id: string
  readonly signals: RegExp
  readonly not?: RegExp
  /** Completes "… is work for". */
  readonly who: string
  /** What a line that defers says, for the sheet. */
  readonly caution: string
  readonly source: string
}

/** A line that leaves the work to them or sends the reader to the rules. */
export const DEFERS =
  /\b(?:licen[sc]ed?|licen[sc]ing|certified|certificated|qualified|registered|authori[sz]ed|competent|accredited|approved (?:technician|engineer|workshop|person)|trained (?:technician|person|specialist|engineer)|specialist|professional|electrician|gas (?:engineer|fitter)|local (?:codes?|rules?|law|laws|regulations?)|electrical code|wiring (?:rules|regulations)|by law|permit|inspector)\b/i

/** Kinds of licensed work. Who may do what differs from place to place; local law decides. To teach a kind, add a row. */
export const LICENSED: readonly LicensedWork[] = [
  {
    id: 'refrigerant',
    signals:
      /\b(?:(?:recover|charge|evacuate|vent|top up|add|release|purge|braze|leak[- ]test|weigh in|bleed)\w*\b[^.;]*\b(?:refrigerant|r-?(?:22|32|134a|290|404a|407c|410a|600a|1234yf)|line ?set|sealed system|suction line|liquid line)|(?:manifold gauges?|gauge manifold)\b)/i,
    who: 'people certified for refrigerants',
    caution:
      'Refrigerant freezes, suffocates and harms the climate: only people certified for it under local law may open the circuit.',
    source: 'local law, such as EPA section 608 in the United States (from memory)',
  },
  {
    id: 'gas',
    signals:
      /\b(?:(?:disconnect|connect|open|loosen|undo|remove|replace|fit|adjust|swap|change|unscrew|install|crack|cut|extend|reconnect)\w*\b[^.;]*\b(?:(?:natural |mains )?gas (?:line|pipe|valve|supply|meter|train|union|cock|regulator|connection|jet|manifold|hose)|burner (?:jet|manifold|pressure)|propane (?:line|regulator|hose|tank valve)|lpg (?:line|regulator|hose)))\b/i,
    not: /\b(?:turn off|shut off|close)\b[^.;]*$|\bgas (?:strut|spring|bottle only)\b/i,
    who: 'a gas fitter licensed under local law',
    caution:
      'Gas explodes and suffocates: this is work for someone licensed under local law, who tests it for tightness afterwards.',
    source: 'local law and codes, no single source',
  },
  {
    id: 'mains-wiring',
    signals:
      /\b(?:consumer unit|fuse ?board|distribution board|breaker panel|load cent(?:er|re)|service panel|meter tails?|fixed wiring|house wiring|(?:new|add|extend|run|wire|replace|install|rewire|disconnect|connect|swap|change)\w*\b[^.;]*\b(?:branch circuit|ring main|wall (?:outlet|socket|receptacle)|socket outlet|light switch|receptacle|ceiling rose|light fitting|mains (?:cable|circuit|wiring)|240[ -]volt circuit|three-phase (?:supply|cable|feed)|supply cables?|circuit breaker in the panel|hard-?wired))\b/i,
    not: /\b(?:plug into|unplug)\b/i,
    who: 'an electrician licensed under local codes',
    caution:
      'Mains wiring kills and burns houses down: local codes leave it to a licensed electrician, who tests it afterwards.',
    source: 'local electrical codes, no single source',
  },
  {
    id: 'airbag',
    signals:
      /\b(?:(?:remove|disconnect|unplug|unbolt|take off|fit|refit|replace|install|reconnect|lift off|detach)\w*\b[^.;]*\b(?:air ?bags?|srs|squib|clock ?spring|pretensioners?|driver module))\b/i,
    who: 'people trained on restraint systems',
    caution:
      'An airbag can go off and kill: this is work for someone trained and authorised for it, by the maker’s manual.',
    source: 'common practice, no source; local rules on pyrotechnic parts',
  },
  {
    id: 'lifting-gear',
    signals:
      /\b(?:(?:inspect|repair|certify|load[- ]test|splice|re-?rope|replace|adjust|modify|overhaul|test|change|fit)\w*\b[^.;]*\b(?:hoist (?:rope|brake|chain|hook|limit)|crane|wire rope|lifting (?:gear|eye|beam|chain|sling)s?|chain block|load (?:chain|hook|brake)|lift (?:car|rope|brake)s?|elevator|vehicle lift|passenger lift))\b/i,
    not: /\b(?:crane to|with (?:a|the) (?:crane|hoist|sling))\b/i,
    who: 'a competent person under local lifting rules',
    caution:
      'Lifting gear that fails kills: inspection and repair are for a competent person under local rules, with a record.',
    source: 'local lifting regulations, no single source',
  },
  {
    id: 'pressure-vessel',
    signals:
      /\b(?:(?:weld|repair|drill|modify|set|adjust|re-?set|hydro(?:static(?:ally)?)?[- ]?test|pressure[- ]test|recertify|replace|braze|plug|cut)\w*\b[^.;]*\b(?:safety valve|pressure relief valve|relief valve|pressure vessel|boiler shell|air receiver|steam boiler|pressure tank|lpg (?:tank|cylinder)|gas cylinder|scuba (?:tank|cylinder)))\b/i,
    not: /\b(?:pull the ring|lever|test button|blow[- ]?down)\b/i,
    who: 'people authorised under local pressure-equipment rules',
    caution:
      'A pressure vessel that bursts kills: work on it and on its safety valve is for people authorised under local rules.',
    source: 'local pressure-equipment law, no single source',
  },
]
