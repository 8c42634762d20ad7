/** What the words around a number say. */
export type Surroundings = {
  /** The clause before the number, nearest last, and after it, nearest first; lower case words. */
  readonly before: readonly string[]
  readonly after: readonly string[]
  /** What was said before the text, if given. */
  readonly context: string
  /** Which system the text and what was said before count in, where they tell. */
  readonly system: 'us' | 'metric' | undefined
  /** Whether imperial measures are named. */
  readonly isImperial: boolean
  readonly value: number
  /** Values with a certain unit just before and after. */
  readonly beside: readonly { readonly value: number; readonly code: string }[]
  /** UCUM codes of certain units elsewhere in the text. */
  readonly codes: readonly string[]
}

const set = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/))

export const CUES = {
  tighten: set(
    'torque torqued torquing tighten tightened tightening tightens nip nipped snug snugged bolt bolts nut nuts lug lugs screw screws stud studs capscrew wrench clicks click clicker cinch crank wheel head plug plugs axle caliper flange pattern star fastener fasteners cap manifold pinch retighten flywheel spindle banjo',
  ),
  inflate: set(
    'lose loses losing leak leaks leakdown bleed tire tires tyre tyres inflate inflated inflates inflating pressure air gauge pump pumped boost compressor line regulator tank rail cutout cut-out manometer psi needle blow manifold pressures vacuum pressurise pressurize pressurized rim hose relief fuel rail airbag bladder accumulator tube spare',
  ),
  weigh: set(
    'weigh weighs weight weighing charge refrigerant freon scale scales heavy lift load lifting recharge ballast counterweight mass grease flour salt sugar ammonia',
  ),
  pull: set(
    'pull pulls pulling force tension spring scale push pushing pushed drag preload hook squeeze belt press effort finger load compress thumb',
  ),
  liquid: set(
    'oil water coolant fluid fuel petrol gas gasoline diesel solution acid antifreeze cleaner vinegar bleach milk liquid solvent thinner oil. lube paint primer resin hardener alcohol glycol electrolyte soap detergent juice syrup additive stabilizer stabiliser dye conditioner premix fill pour drain drained drains holds capacity sump reservoir top pints bottle jug syringe atf beer wort broth descaler kerosene paraffin chlorine shampoo',
  ),
  solid: set(
    'grease refrigerant freon powder weight weigh weighs flour salt sand solder r134a charge shot dry recoil wax lead silver gold',
  ),
  film: set(
    'film paint coating coat coats powder plastic sheeting poly thickness dry wet primer epoxy galvanizing anodize anodizing plating vapor vinyl liner tarp membrane dft zinc',
  ),
  coat: set(
    'film paint coating coat coats primer epoxy galvanizing anodizing plating liner tarp membrane dft poly sheeting',
  ),
  angle: set(
    'cut dead swing arm sweep pull angle angles position rotation protractor inclinometer turn turned turning turns rotate rotated tighten tightened torque torqued another further past angle bolt bolts nut stretch yield clockwise anticlockwise counterclockwise handle lever btdc advance timing crank dwell tilt tilted bevel camber caster toe file filing sharpen sharpening grind bend bent elbow protractor rake pitch slope incline miter mitre quarter chamfer countersink newton foot-pounds steering retard tdc atdc swivel',
  ),
  heat: set(
    'heat heated heating heats hot warm warmed warms cool cools cooled cooling cold temperature temp temps oven thermometer thermostat boil boiling water coolant outside freezing freeze frost preheat cure cures bake baked melt melts solder iron nozzle bed burn oil room night ambient rinse tank boiler flow return supply air reach reaches kiln furnace chamber fever weather grill meat fridge freezer simmer brew mash steam hotter cooler colder warmer bearing stove hotend radiator setpoint superheat subcooling glue exhaust celsius fahrenheit',
  ),
  vacuum: set('vacuum evacuate evacuated evacuating pump pull pulled pulling down manifold deep hold decay'),
} as const

type Cue = keyof typeof CUES

/** How near the nearest cue word stands, in words; after the number counts a little less. Infinity where there is none. */
export const distance = (cue: Cue, { before, after }: Surroundings): number => {
  const words = CUES[cue]
  let near = Number.POSITIVE_INFINITY
  for (let i = before.length - 1; i >= 0; i--)
    if (words.has(before[i] ?? '')) {
      near = before.length - i
      break
    }
  for (let i = 0; i < after.length; i++)
    if (words.has(after[i] ?? '')) {
      near = Math.min(near, i + 1.5)
      break
    }
  return near
}

const inContext = (cue: Cue, context: string): number => {
  let count = 0
  for (const [word] of context
    .toLowerCase()
    .slice(-400)
    .matchAll(/[a-z]+/g))
    if (CUES[cue].has(word)) count++
  return count
}

/** The cue that stands nearest, in the text or else in what was said before it. */
export const nearest = <C extends Cue>(
  cues: readonly C[],
  around: Surroundings,
): { cue: C; isFromContext: boolean } | undefined => {
  let best: C | undefined
  let near = Number.POSITIVE_INFINITY
  for (const cue of cues) {
    const d = distance(cue, around)
    if (d < near) [best, near] = [cue, d]
  }
  if (best !== undefined) return { cue: best, isFromContext: false }
  let most = 0
  for (const cue of cues) {
    const count = inContext(cue, around.context)
    if (count > most) [best, most] = [cue, count]
  }
  return best === undefined ? undefined : { cue: best, isFromContext: true }
}
