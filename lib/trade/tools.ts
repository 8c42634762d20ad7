import { wordList } from './list'

/**
 * Tools by the word that names them (the head: last word of "long-nose pliers"). A tool is kept and used again; what is used
 * up is a material. Heads of two words come as said. General knowledge of many trades, no source. To teach a tool, add its head.
 */
export const TOOL_HEADS: readonly string[] = wordList(`
  // turning and gripping
  wrench, spanner, socket, ratchet, screwdriver, driver, nut driver, hex key, allen key, allen, torx, torx bit, bit, breaker bar, extension, extension bar, crowfoot, strap wrench,
  pliers, plier, grips, locking pliers, locking grips, pincers, tweezers, forceps, circlip pliers, snips, cutters, side cutters, nippers, scissors, shears, wire strippers, strippers, crimper, crimpers,
  impact gun, impact driver, impact wrench, impact, nut gun, drill, cordless drill, chuck key, tap wrench, die stock, t-handle, t handle, t-bar, tee wrench, spoke key, pin spanner, c spanner, hook spanner, key, star bit, basin wrench, pipe wrench, stillson,
  torque wrench, torque screwdriver, torque driver, torque key, clicker, wheel brace, lug wrench, four-way,
  // striking, prying, pulling
  hammer, mallet, sledge, punch, drift, chisel, centre punch, center punch, pin punch, pry bar, prybar, crowbar, lever, tyre lever, tire lever, tyre levers, tire levers, tire iron, spudger, pick, puller, extractor, splitter, wedge, hook, slide hammer, gear puller, bearing puller, opening tool,
  // cutting and shaping
  saw, hacksaw, file, rasp, knife, utility knife, retractable knife, craft knife, blade, razor blade, scraper, plane, grinder, angle grinder, stone, whetstone, oilstone, sharpening stone, honing guide, sander, router, reamer, tap, die, deburring tool, burr, hole saw, step drill, drill bit, countersink, lathe, rotary tool, strop, card scraper, spokeshave, burnisher,
  // measuring and testing
  caliper, calipers, vernier, vernier caliper, micrometer, dial gauge, dial indicator, indicator, test indicator, feeler gauge, feeler gauges, feeler, feelers, straightedge, straight edge, ruler, rule, tape measure, tape, square, protractor, level, spirit level, plumb bob, depth gauge, pressure gauge, gauge, tyre gauge, tire gauge, gage, tension gauge, compression tester, leak tester, thermometer, thermocouple, infrared thermometer,
  multimeter, meter, voltmeter, ohmmeter, ammeter, clamp meter, tester, test lamp, test light, voltage tester, voltage detector, insulation tester, insulation meter, oscilloscope, scope, refractometer, hydrometer, tachometer, stethoscope, stopwatch, timer, scale, scales, kitchen scale, spring balance, luggage scale, manometer, chain checker, wear gauge, go gauge, plug gauge, thread gauge, pitch gauge, test bar, mandrel, battery tester, load tester, manifold gauge, vacuum gauge, leak detector, borescope, telescope gauge, bore gauge, tuner, microscope, probe, probes, test leads, crocodile clips, alligator clips,
  // holding and lifting
  vice, vise, clamp, clamps, g-clamp, c-clamp, g clamp, c clamp, jack, floor jack, trolley jack, bottle jack, jack stand, jack stands, axle stand, axle stands, stand, work stand, repair stand, bench, workbench, hoist, lift, ramps, ramp, sling, strap, straps, ratchet strap, bungee, chain hoist, engine crane, creeper, trestle, sawhorse, ladder, stepladder, chock, chocks, wheel chock, wheel chocks, wedges, v block, v-block, magnetic base, fixture, jig, cradle, crate, wooden block, block of wood, soft jaws, helping hand, zip tie gun,
  // oiling, pouring, catching
  grease gun, oil can, oiler, funnel, jug, measuring jug, measuring cup, pitcher, syringe, pipette, dropper, pan, drain pan, drip tray, drip pan, oil pan, tray, bucket, pail, tub, bowl, basin, jar, tin, dish, magnetic dish, magnetic tray, container, jerry can, spray bottle, squeeze bottle, hand pump, pump sprayer, sprayer, transfer pump, siphon, suction gun, baster, hose pipe, garden hose, cup, bottle, watering can, sieve, strainer, beaker, egg carton, muffin tin,
  // cleaning and air
  brush, wire brush, toothbrush, paint brush, paintbrush, bottle brush, nylon brush, stiff brush, broom, air gun, air line, airline, air hose, blow gun, blowgun, compressor, air compressor, bellows, blower, vacuum, vacuum cleaner, shop vac, wet-dry vac, wet-dry vacuum, pressure washer, parts washer, ultrasonic cleaner, plunger, drain snake, auger, plumber's snake, squeegee, dust pan, pipe cleaner, bore brush,
  // heat and joining
  soldering iron, iron, heat gun, blow torch, blowtorch, torch, hair dryer, hairdryer, kettle, hot plate, glue gun, desoldering pump, solder sucker, rivet gun, riveter, staple gun, caulking gun, caulk gun, bearing press, arbor press, press, seal driver, spring compressor, spring compressors, valve spring compressor, ring compressor, piston ring compressor, bleed kit, bleeder, bleeding kit, vacuum pump, hand vacuum pump,
  // light, marking, power
  flashlight, head torch, headlamp, lamp, inspection lamp, work light, mirror, inspection mirror, magnet, magnifier, loupe, magnifying glass, marker, marker pen, paint pen, paint marker, pencil, scribe, scriber, camera, phone, phone camera, laptop, scanner, code reader, charger, battery charger, jump leads, jumper cables, jumper wire, power supply, extension lead, generator, heater,
  // household things that serve
  awl, bradawl, skewer, toothpick, cocktail stick, chopstick, lolly stick, craft stick, wooden spoon, spoon, teaspoon, fork, coin, credit card, business card, paint stirrer, broom handle, clothes peg, peg, rubber band, elastic band, cushion, blanket, old blanket, moving blanket, mat, towel, pillow, plank, board, scrap wood, stick, rod, dowel, crochet hook, knitting needle, tongs, ladle, thimble, comb, hairbrush, sponge brush, tea towel, baking sheet, cookie sheet, tea tray, ice cube tray, egg box, stool, chair, trolley, cart, dolly, wheelbarrow, shovel, spade, trowel, rake, scoop, dustpan, watering can, spray gun, nail file, emery board, eyedropper, turkey baster, blower bulb, bulb blower, rubber bulb, can opener, bottle opener, straw, drinking straw, chalk line, string line, plumb line, pipe wrench, basin, rope, chain, winch, lanyard, tag line, barrow, clipboard,
  // words said for a longer name
  hex, phillips, flathead, flat head, flat blade, crosshead, pozi, pozidriv, vac, mike, needle nose, needle-nose, long nose, snips, slip-joint pliers, water pump pliers, vernier, blow-off gun, spirit-level, straight-edge, tape, torx driver, nut spinner, tee handle, tommy bar, long-nose pliers, snap ring pliers, hose pick, hook pick, curved needle, timing light, strobe, tachometer, light meter, sound meter, moisture meter, ph meter, infrared gun, temperature gun, temp gun, sharps box, lab coat, sight tube, collimator, alignment tool, jig block, feeler blade, planer block, blind flange, test weight, weights,
  // for the person
  gloves, glove, nitrile gloves, rubber gloves, leather gloves, cut-resistant gloves, insulating gloves, thick gloves, welding gloves, heat gloves, helmet, helmets, hi-vis, face covering, hairnet, goggles, safety glasses, glasses, safety goggles, eye protection, face shield, faceshield, visor, ear muffs, ear defenders, earplugs, ear plugs, ear protection, hearing protection, respirator, mask, dust mask, face mask, coat, apron, overalls, boots, steel toe boots, hard hat, harness, padlock, lockout, lock, tag, lockout tag, hasp, knee pads, welding mask, insulating mat, wrist strap, fire extinguisher, extinguisher, sleeves`)

/** Short names, by the name a list has for them. */
export const FULL_TOOL_NAMES: ReadonlyMap<string, string> = new Map(
  Object.entries({
    hex: 'hex key',
    allen: 'hex key',
    'allen key': 'hex key',
    phillips: 'Phillips screwdriver',
    flathead: 'flathead screwdriver',
    'flat head': 'flathead screwdriver',
    'flat blade': 'flat-blade screwdriver',
    crosshead: 'crosshead screwdriver',
    pozi: 'crosshead screwdriver',
    pozidriv: 'crosshead screwdriver',
    torx: 'torx screwdriver',
    vac: 'vacuum cleaner',
    'shop vac': 'shop vacuum',
    vacuum: 'vacuum cleaner',
    mike: 'micrometer',
    meter: 'multimeter',
    ohmmeter: 'multimeter',
    voltmeter: 'multimeter',
    feeler: 'feeler gauge',
    feelers: 'feeler gauge',
    'feeler blade': 'feeler gauge',
    vernier: 'vernier caliper',
    'needle nose': 'needle-nose pliers',
    'needle-nose': 'needle-nose pliers',
    'long nose': 'long-nose pliers',
    indicator: 'dial indicator',
    clicker: 'torque wrench',
    'tee wrench': 't-handle',
    'tee handle': 't-handle',
    'spirit-level': 'spirit level',
    prybar: 'pry bar',
    blowgun: 'blow gun',
    lockout: 'lockout and padlock',
    goggle: 'goggles',
    specs: 'safety glasses',
  }),
)

/** Verbs that name their tool or stuff: who brushes has a brush. */
export const VERB_TOOLS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    brush: 'brush',
    vacuum: 'vacuum cleaner',
    file: 'file',
    scoop: 'scoop',
    sweep: 'broom',
    mop: 'mop',
    hammer: 'hammer',
    drill: 'drill',
    solder: 'soldering iron',
    desolder: 'soldering iron',
    mike: 'micrometer',
    photograph: 'camera',
    weigh: 'scales',
    clamp: 'clamp',
    jack: 'jack',
    saw: 'saw',
    ream: 'reamer',
    chisel: 'chisel',
    scrape: 'scraper',
    meter: 'multimeter',
    crimp: 'crimper',
    rivet: 'rivet gun',
    staple: 'staple gun',
    padlock: 'padlock',
    syringe: 'syringe',
    siphon: 'siphon',
    hoist: 'hoist',
    chock: 'wheel chocks',
    unscrew: 'screwdriver',
    snip: 'snips',
  }),
)

/** What turns a fastener that is named with no tool. Common practice, no source. */
export const FASTENER_TOOLS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    'grub screw': 'hex key',
    'set screw': 'hex key',
    setscrew: 'hex key',
    'cap screw': 'hex key',
    'socket screw': 'hex key',
    screw: 'screwdriver',
    'drain plug': 'wrench',
    bolt: 'wrench',
    nut: 'wrench',
    'lock nut': 'wrench',
    locknut: 'wrench',
    circlip: 'circlip pliers',
    'snap ring': 'circlip pliers',
    picture: 'camera',
    photo: 'camera',
    photograph: 'camera',
  }),
)

/** Tools too general to stand alone: they count when a size, a kind or a use names them ("a 10 mm socket", "with a pick"). */
export const WEAK_TOOLS: ReadonlySet<string> = new Set(
  wordList(`
    hex, phillips, coin, spoon, teaspoon, fork, cushion, blanket, mat, towel, pillow, plank, board, stick, rod, dowel, comb, chair, stool, trolley, cart, rope, winch, straw, peg, weights, helmet, needle nose, vac, mike, scoop, shovel, spade, string line,
    key, bit, tap, die, stone, square, level, scale, scales, block, stand, lift, plane, iron, press, lever, hook, wedge, wedges, pick, blade, lock, tag, bench, meter, probe, probes,
    pump, lamp, mirror, timer, phone, camera, stand, bowl, cup, bottle, jar, tin, tub, container, dish, tray, hose, extension, indicator, rule, gauge, tape, drill, driver, saw, file, heater, battery, generator, compressor,
    strap, straps, clamp, clamps, chuck key, lathe, drift, punch, impact, bit, router, scope, glasses, boots, sleeves, bolt, lever, burr, magnet, ramp, ramps, chain, cradle, crate, fixture, jig, scanner, blower, iron, torch, kettle, pan, plunger, auger, sling, hoist, harness, rasp, feeler, vernier, extractor, splitter, tester, jack, vacuum, tuner`),
)
