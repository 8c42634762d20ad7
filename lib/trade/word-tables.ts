/** Tables the tagger looks words up in. To teach a word, add it to the table it belongs to. */

/** What is said in one breath, opened into its words. */
export const OPENED: Readonly<Record<string, readonly string[]>> = Object.setPrototypeOf(
  {
    gonna: ['going', 'to'],
    wanna: ['want', 'to'],
    gotta: ['got', 'to'],
    hafta: ['have', 'to'],
    gimme: ['give', 'me'],
    lemme: ['let', 'me'],
    "let's": ['let', 'us'],
    ya: ['you'],
    "y'all": ['you'],
    "'em": ['them'],
    em: ['them'],
    cannot: ['can', 'not'],
    "'cause": ['because'],
    cos: ['because'],
    coz: ['because'],
    till: ['until'],
    "'til": ['until'],
    til: ['until'],
    alright: ['okay'],
    ok: ['okay'],
    "should've": ['should', "'ve"],
    "could've": ['could', "'ve"],
    "would've": ['would', "'ve"],
    dunno: ["don't", 'know'],
    kinda: ['kind', 'of'],
    sorta: ['sort', 'of'],
    oughta: ['ought', 'to'],
    "c'mon": ['come', 'on'],
    tryna: ['trying', 'to'],
    outta: ['out', 'of'],
  },
  null,
)

/** Words that count. */
export const NUMBER_WORDS = new Set(
  'zero nought naught one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand million half quarter quarters third thirds eighth eighths tenth tenths hundredth hundredths sixteenth sixteenths point dozen couple'.split(
    ' ',
  ),
)

/** Words that a number may stand before. */
export const UNIT_WORDS = new Set(
  'mil mils mm millimetre millimetres millimeter millimeters centimetre centimetres centimeter centimeters cm metre metres meter meters micron microns inch inches foot feet ft yard yards mile miles km kilometre kilometres kilometer kilometers thou thousandths tenths newton newtons nm pound pounds lb lbs foot-pound foot-pounds inch-pound inch-pounds psi bar kpa mpa pascal litre litres liter liters ml millilitre millilitres milliliter milliliters quart quarts pint pints gallon gallons ounce ounces oz cc gram grams kilo kilos kg degree degrees celsius fahrenheit volt volts millivolt millivolts amp amps milliamp milliamps ohm ohms megohm megohms kilohm watt watts kilowatt kilowatts hertz rpm revs revolution revolutions turn turns second seconds minute minutes hour hours day days week weeks month months year years percent per-cent microfarad microfarads farad stroke strokes k ton tons tonne cubic'.split(
    ' ',
  ),
)

/** Nouns that the verb lexicon would claim, besides tools, materials and parts. */
export const NOUNISH = new Set(
  'turn stop work drive mark touch hold run start check test set lift feel look watch pull push order change read rest measure level square light short cut point place kind sort bit bench load charge charging ground earth power heat water oil dust paint grease rust cover record note gap date name number match form face back top bottom side end play slack wear damage film sign fire drop show ride step try call help plan bend split'.split(
    ' ',
  ),
)

/** Adjectives of the shop. */
export const ADJECTIVES = new Set(
  'new old clean dirty fresh good bad big small little tiny long short thin thick wide narrow deep high low hot cold warm cool dry wet soft hard flat round square sharp blunt tight loose slow slow fast quick light heavy full empty open closed even level straight bent proper right wrong left front rear upper lower inner outer top bottom main other same whole next last first second third spare fine coarse rough smooth plain white black red blue green yellow brown grey gray silver clear sure careful safe dead live live ready different original plastic rubber brass copper steel aluminium aluminum wooden metal nylon ceramic leather cheap nice decent'.split(
    ' ',
  ),
)

/** Adverbs without -ly. */
export const ADVERBS = new Set(
  'always again already too anywhere here there still never often sometimes usually maybe perhaps once twice anyway however instead together away forever yet almost enough quite rather very much more less most least even ever else far straight backwards forwards clockwise anticlockwise counterclockwise upward downward sideways'.split(
    ' ',
  ),
)
