/** Tools an action can't do without, although nobody names them. General knowledge, no source. */
export type ImpliedTool = {
  readonly id: string
  readonly action: RegExp
  readonly not?: RegExp
  readonly tool: RegExp
  readonly name: string
}

/** To teach one, add a row. */
export const IMPLIED_TOOLS: readonly ImpliedTool[] = [
  {
    id: 'air',
    action:
      /\bblow(?:ing)? (?:the |any |all |every |out |off |each )?(?:\w+ ){0,3}(?:out|off|clean|clear|through|dry|dirt|dust)\b|\bcompressed air\b/i,
    not: /\bfuse\b|\blet (?:the|it)\b[^.;]*\bblow through\b/i,
    tool: /\b(?:air|blow|blower|bulb|bellows|compressor|nozzle|duster|vacuum)\b/i,
    name: 'air gun and its supply',
  },
  {
    id: 'scraper',
    action: /\bscrap(?:e|ing)\b/i,
    tool: /\b(?:scrap\w*|blade|knife|chisel|spatula|putty|pick|plastic card)\b/i,
    name: 'scraper',
  },
  {
    id: 'file',
    action: /\b(?:deburr|file off|file the)\b/i,
    tool: /\b(?:files?|deburr\w*|stone|emery|scraper|countersink)\b/i,
    name: 'file',
  },
  {
    id: 'drill',
    action: /\b(?:drill (?:out|a|the|two|three|four)|ream)\b/i,
    tool: /\b(?:drill\w*|reamer|bit)\b/i,
    name: 'drill',
  },
  {
    id: 'soldering-iron',
    action: /\b(?:solder|desolder|unsolder)\b/i,
    tool: /\b(?:solder\w*|iron|torch|hot air)\b/i,
    name: 'soldering iron',
  },
  {
    id: 'jack',
    action: /\bjack (?:up|the)\b|\bjack\b[^.;]*\bup\b/i,
    tool: /\b(?:jack|lift|hoist|ramp)s?\b/i,
    name: 'jack and stands',
  },
  {
    id: 'press',
    action: /\bpress\b[^.;]*\bbearings? (?:in|out)\b/i,
    tool: /\b(?:press|driver|drift|vice|puller|socket)\b/i,
    name: 'press',
  },
  {
    id: 'grease-gun',
    action: /\b(?:grease the [^.;]*(?:nipple|zerk|fitting)s?|pump grease)\b/i,
    tool: /\bgrease gun\b/i,
    name: 'grease gun',
  },
]
