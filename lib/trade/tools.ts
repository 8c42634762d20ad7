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
  // shop words
  multigrips, side cutter, chain binder, earthing wand,
  muffs, muff, specs, safety specs, shop glasses, nitriles, hexagon key, six-corner key, clicker wrench, rattle gun, cross screwdriver, star screwdriver, dial clock, infrared pistol, fish scale, sliding measure, slide gauge, ball-peen, soft hammer, wood wedge, wood block, wood dowel, dollar bill, scotches, drop key, shifter, extension ladder, platform steps, podium step, work platform, push block, chain block, half mask, eye shield, earth strap, inflation cage, maintenance strut, dip block, gauge bar, tramming bar, lemonade bottle, pool noodle, roasting tin, dishpan, box end, ring spanner, ring key, socket key,
  // words said for a longer name
  hex, phillips, flathead, flat head, flat blade, crosshead, pozi, pozidriv, vac, mike, needle nose, needle-nose, long nose, snips, slip-joint pliers, water pump pliers, vernier, blow-off gun, spirit-level, straight-edge, tape, torx driver, nut spinner, tee handle, tommy bar, long-nose pliers, snap ring pliers, hose pick, hook pick, curved needle, timing light, strobe, tachometer, light meter, sound meter, moisture meter, ph meter, infrared gun, temperature gun, temp gun, sharps box, lab coat, sight tube, collimator, alignment tool, jig block, feeler blade, planer block, blind flange, test weight, weights,
  // for the person
  gloves, glove, nitrile gloves, rubber gloves, leather gloves, cut-resistant gloves, insulating gloves, thick gloves, welding gloves, heat gloves, helmet, helmets, hi-vis, face covering, hairnet, goggles, safety glasses, glasses, safety goggles, eye protection, face shield, faceshield, visor, ear muffs, ear defenders, earplugs, ear plugs, ear protection, hearing protection, respirator, mask, dust mask, face mask, coat, apron, overalls, boots, steel toe boots, hard hat, harness, padlock, lockout, lock, tag, lockout tag, hasp, knee pads, welding mask, insulating mat, wrist strap, fire extinguisher, extinguisher, sleeves,
  // turning: sets, keys, bits and handles by their fuller names
  adjustable, podger, knuckle bar, power bar, wobble bar, cheater bar, cheater pipe, helper bar, flex handle, speed handle, speed brace, brace, stubby, nut runner, bit holder, bit set, socket set, spanner set, wrench set, hex set, key set, screwdriver set, torx set, drill set, tool set, tool kit, toolkit, tool roll, toolbox, tool box, spline bit, hex bit, driver bit, screwdriver bit, security bit, tri-wing, pentalobe, robertson, hex driver, bit driver, precision driver, stubby driver, drum key, tuning key, radiator key, clock key, winding key, bleed key, panel key, drain key, stopcock key, crow's foot, crow foot, spin handle, pilot bar, turning bar, barring tool, barring lever, flywheel tool, clutch holder, rotor holder, pulley holder, chain whip, cassette tool, crank tool, bottom bracket tool, freewheel tool, cone key, headset press, dropout gauge, hanger gauge, truing stand, dishing tool, chain tool, chain breaker, link tool, multi-tool, multitool, penknife, jackknife,
  // gripping, pinching and crimping
  nail clipper, clippers, croppers, pipe slice, pipe freezer, pipe bender, tube bender, bender, flaring tool, swaging tool, expander, crimping tool, crimp tool, punch-down tool, insertion tool, terminal tool, pin extractor, wire wrapper, eyelet punch, leather punch, hole punch, grommet punch, snap setter, rivet setter, rivet set, hemostat, sprung clamp, spring clamp, toggle clamp, sash clamp, bar clamp, quick clamp, band clamp, mitre clamp, line clamp, line stopper, finger clamp, hold-down, clothespin, clothes pin, bulldog clip, binder clip, paper clip, paperclip, hair clip, hairpin, hair grip, bobby pin, safety pin, dressmaker's pin, drawing pin, thumb tack, pushpin,
  // striking, prying and pulling
  dead-blow, dead blow, soft-face, tack lifter, maul, axe, hatchet, pickaxe, mattock, star punch, nail punch, nail set, letter stamp, number stamp, letter punch, hollow punch, wad punch, clicker press, dolly block, body file, anvil, bench block, steady block, wrecking bar, nail bar, cat's paw, pinch bar, heel bar, jemmy, trim tool, trim lever, trim remover, panel tool, panel popper, clip remover, clip tool, upholstery tool, pry tool, plastic card, guitar pick, plectrum, suction cup, suction lifter, suction handle, glass lifter, three-jaw, bearing separator, bearing splitter, ball joint splitter, ball joint separator, pickle fork, tie rod separator, stud extractor, screw extractor, bolt extractor, easy-out, easy out, nut splitter, nut cracker, seal pick, o-ring pick, dental pick, hand remover, corkscrew, fish tape, fish wire, draw wire, draw tape, draw rope, threading wire, come-along, cable winch, hand winch, lever hoist, rope hoist, chain fall, block and tackle, tackle, pulley block, turnbuckle,
  // cutting, boring and shaping
  tenon saw, coping saw, jigsaw, circular saw, mitre saw, miter saw, table saw, band saw, bandsaw, reciprocating saw, chop saw, chainsaw, pruning saw, wire saw, tile saw, scalpel, seam ripper, stitch ripper, secateurs, pruners, loppers, hedge trimmer, trimmer, guillotine, paper trimmer, cutting mat, cutting board, chopping board, mitre box, miter box, gouge, drawknife, adze, bow drill, hand drill, pillar drill, drill press, bench drill, hammer drill, mag drill, spade bit, auger bit, masonry bit, centre drill, center drill, countersink bit, counterbore, spot facer, valve lapper, lapping stick, lapping plate, surface plate, glass plate, plate glass, sanding block, sanding board, flap wheel, polishing wheel, buffing wheel, polishing mop, buffer, polisher, wire wheel, cutting wheel, grinding wheel, grinding stone, dressing stone, diamond dresser, wheel dresser, diamond file, needle file, fret file, nut file, key file, contact file, thread file, thread chaser, thread restorer, thread repair kit, thread insert tool, tapping guide, cylinder hone, hone, brake hone, ball hone, knurling tool, boring bar, lathe tool, parting tool, end mill, milling machine, deburrer, chamfer tool, edge trimmer, roughing pad, pencil sharpener, sharpening steel, honing steel, sharpener, slipstone, flat bastard, mill file, bastard file, heat pen, engraver, engraving tool,
  // measuring: lengths, shapes and runout
  clock gauge, dti, depth mic, inside mic, bore mic, telescopic gauge, snap gauge, ring gauge, gauge block, slip gauge, height gauge, radius gauge, angle gauge, angle finder, angle cube, inclinometer, digital level, laser level, laser, laser measure, chalk box, snap line, steel rule, steel tape, yardstick, metre stick, meter stick, measuring stick, measuring tape, folding rule, dipstick, dip rod, sounding rod, try square, set square, combination square, engineer's square, framing square, carpenter's square, sliding bevel, bevel gauge, marking gauge, compass, trammel, odd-legs, odd legs, contour gauge, profile gauge, template, stencil, drilling jig, drill guide, dowel jig, centre finder, center finder, edge finder, parallel bar, parallels, sine bar, vee block, setting gauge, setting block, setting tool, setting jig, timing tool, timing pin, timing kit, locking pin, alignment bar, alignment pin, alignment laser, laser pointer, tram gauge, toe gauge, camber gauge, wheel aligner, wheel balancer, balancing stand, balancer, runout gauge, paint gauge, thickness gauge, coating gauge, hardness tester, durometer, surface comparator, wire gauge, drill gauge, screw gauge, needle gauge, fret rocker, radius block, string action gauge, brake gauge, pad gauge, tread gauge, finger gauge, pull gauge, force gauge, push-pull gauge, belt gauge, tension meter, torque gauge, torque meter, torque tester, load cell, digital scale, jewellery scale, precision balance, balance, bathroom scale, crane scale, luggage balance, calibration weight, known weight, counting scale,
  // testing: electrics, pressure, heat, air, water and sound
  continuity tester, socket tester, circuit tester, proving unit, volt stick, voltage stick, voltage pen, neon tester, logic probe, logic analyser, signal generator, function generator, tone generator, cable tester, cable tracer, cable detector, stud finder, stud detector, pipe detector, metal detector, lcr meter, capacitance meter, esr meter, earth tester, loop tester, rcd tester, appliance tester, insulation resistance tester, milliohm meter, bench supply, lab supply, dummy load, load bank, variable transformer, isolating transformer, spark tester, spark plug tester, ignition tester, coil tester, injector tester, noid light, timing lamp, strobe light, rev counter, tacho, scan tool, code scanner, diagnostic tool, diagnostic lead, handset, programmer, serial cable, data cable, usb cable, memory stick, memory card, sd card, breakout box, breakout lead, bypass lead, jumper, jumper lead, jump wire, jump pack, jump starter, booster pack, test plug, test cap, test hose, test rig, test bench, test gauge, test kit, test pump, pressure tester, pressure pump, cooling system tester, radiator tester, leak-down tester, leakdown tester, cylinder leakage tester, vacuum tester, u-tube, u-gauge, flow meter, flowmeter, flow gauge, flow bag, anemometer, smoke machine, smoke pen, smoke generator, smoke tester, gas detector, sniffer, carbon monoxide alarm, co detector, gas analyser, combustion analyser, exhaust analyser, gauge set, manifold set, micron gauge, recovery machine, recovery unit, recovery cylinder, charging scale, charging hose, vacuum rig, thermal camera, thermal imager, temperature probe, data logger, pyrometer, hygrometer, humidity meter, damp meter, psychrometer, barometer, ph pen, conductivity meter, tds meter, turbidity meter, colorimeter, photometer, lux meter, densitometer, spectrometer, radiometer, dosimeter, geiger counter, sound level meter, decibel meter, vibration meter, vibration pen, accelerometer, listening stick, tuning fork, pitch pipe, metronome, headphones, earphones, inspection camera, endoscope, drain camera, pipe camera, otoscope, slit lamp, lensmeter, eye chart, test chart, test card, timegrapher, stop watch, egg timer, kitchen timer,
  // holding, lifting, blocking and moving
  bench dog, bench hook, stop block, wood block, timber block, packing block, support block, cribbing, sleeper, railway sleeper, railroad tie, timber, baulk, prop, adjustable prop, support bar, engine stand, engine hoist, transmission jack, gearbox jack, scissor jack, pillar jack, toe jack, farm jack, high-lift jack, pallet jack, pallet truck, pump truck, pallet, forklift, fork truck, telehandler, cherry picker, scissor lift, boom lift, access platform, tower scaffold, scaffold, scaffolding, staging, hop-up, step stool, step ladder, crawl board, kneeler, kneeling mat, kneeling pad, overhead crane, crane, gantry, gantry crane, shear leg, shackle, eye bolt, eyebolt, lifting eye, lifting beam, spreader bar, lifting strap, lifting sling, lifting magnet, lifting frame, round sling, web sling, endless sling, tow rope, tow strap, tow bar, tow chain, hand truck, sack truck, skates, roller bar, pipe roller, tyre machine, tire machine, tyre changer, tire changer, bead breaker, bead roller, bike stand, paddock stand, motorcycle lift, table lift, lift table, two-post lift, four-post lift, car lift, vehicle lift, inspection pit, vee-block, sandbag, sand bag, bean bag, beanbag, neck rest, neck support, movement holder, case holder, case opener, case back tool, watch press, spring bar tool, mainspring winder, let-down key, staking set, staking tool, jewelling tool, ring stretcher, ring clamp, ring sizer, bezel pusher, burnishing tool, doming block, third hand, board holder, pcb holder, soldering station, solder station, hot air station, rework station, fume extractor, fume hood, anti-static mat, antistatic mat, static mat, static strap, esd strap, heat mat, silicone mat, magnetic mat, magnetic strip, magnetic pick-up, magnetic pickup, magnetic wand, pick-up tool, pickup tool, grabber, litter picker, reacher, reaching tool, parts tray, parts bin, storage bin, sorting tray, compartment box, sandwich box, lunch box, plastic tub, ice cream tub, margarine tub, takeaway tub, shoebox, shoe box, pizza box, cardboard box, cereal box, cigar box, storage box, rack, drying rack, cooling rack, wire rack, dish rack, baking rack, folding table, card table, saw bench, drop cloth, dustsheet, tarpaulin, tarp, ground sheet, picnic blanket, yoga mat, doormat, carpet, carpet offcut, carpet tile, rug, rubber mat, foam mat, fender cover, car cover,
  // oiling, pouring, catching and storing
  oil drainer, drip tin, catch pan, catch tray, catch can, catch bottle, catch bag, drain tray, drain tub, drain bucket, waste drum, waste can, slop bucket, mop bucket, washing-up bowl, dishpan, wash tub, roasting tin, roasting pan, roasting tray, baking tray, baking tin, cake tin, loaf tin, loaf pan, bread tin, pie tin, pie dish, oven tray, foil tray, seed tray, paint tray, paint kettle, roller tray, litter tray, storage tray, instrument tray, kidney dish, petri dish, casserole, stock pot, saucepan, skillet, pot, wok, pressure cooker, slow cooker, double boiler, dutch oven, jam jar, mason jar, jam pan, colander, funnel filter, paint filter, tun dish, mixing bowl, mixing cup, mixing stick, stir stick, stirrer, paint mixer, mixing paddle, whisk, hand mixer, blender, food processor, rolling pin, pastry bag, piping bag, piping nozzle, spatula, fish slice, turner, slotted spoon, dessert spoon, tablespoon, soup spoon, measuring spoon, potato masher, masher, grater, zester, rubber spatula, silicone spatula, icing spatula, oven mitt, mitt, pot holder, trivet, pizza peel, tamper, portafilter, blind basket, blind filter, backflush disc, knock box, dosing cup, dosing ring, bar spoon, keg coupler, keg tap, hydrometer jar, racking cane, auto-siphon, siphon tube, siphon hose, bottling wand, capper, carboy, demijohn, mash paddle, sample jar, sample bottle, sample cup, specimen pot, vial, test tube, flask, measuring cylinder, graduated cylinder, burette, micropipette, pipettor, pipette filler, wash bottle, squirt bottle, dropper bottle, needle bottle, oil pen, oil pot, grease pump, grease nozzle, grease coupler, grease needle, bearing packer, pump can, oil extractor, fluid extractor, fluid pump, drum pump, barrel pump, bladder pump, spout, filler hose, drain hose, drain tube, bleed hose, bleed tube, bleed bottle, catch hose, clear hose, clear tube, clear tubing, aquarium pump, pond pump, sump pump, submersible pump, trash pump, wet vac, mister, atomiser, foam gun, foam lance, lance, spray wand, airbrush, paint roller, roller pole, paint pad, glue spreader, notched spreader, spreader, gluepot, glue pot, brayer, seam roller, wallpaper table, wallpaper steamer, grout float, plaster float, tile spacer, tile leveller, caulking tool, sealant gun, mastic gun, skeleton gun, cartridge gun, dispensing gun, mixing nozzle, static mixer, smoothing tool, grout remover, grout saw, raking tool,
  // cleaning, drying and blowing
  mop, floor mop, push broom, scrub brush, duster, fin comb, drain rods, sewer rod, drain auger, closet auger, toilet auger, hand auger, toilet plunger, sink plunger, force cup, drain jetter, jetter, steam cleaner, steamer, carpet cleaner, hand vac, hand-held vacuum, crevice tool, crevice nozzle, dust extractor, extraction unit, air blower, leaf blower, air nozzle, air wand, air chuck, air regulator, inflator, tyre pump, tire pump, track pump, foot pump, floor pump, shock pump, bicycle pump, bike pump, ball pump, balloon pump, balloon, air bed pump, hose reel, spray nozzle, hose nozzle, hose gun, hose wand, window vac, chamois leather, tongue depressor, nozzle cleaner, tip cleaner, jet cleaner, carb jet set, needle set, unclogging needle, cleaning needle, cleaning rod, cleaning kit, cleaning cassette, pull-through, swab stick, trumpet snake, ultrasonic bath, ultrasonic tank, cleaning tank, wash tank, solvent tank, dip tank, parts basket, wire basket, tea ball, autoclave, steriliser, sterilizer, blast cabinet, bead blaster, sandblaster, sand blaster, media blaster, tumbler, vibratory tumbler, salad spinner, centrifuge, fan, drying cabinet, dehumidifier, air mover, incubator, drying oven, toaster oven, bin, dustbin, trash can, rubbish bin, waste bin, pool net, skimmer net, leaf net, net, vacuum head, vacuum pole, telescopic pole, extension pole, pole, garden fork, pitchfork, hay fork, hoe, edging iron, dibber, bulb planter, post hole digger, wire tensioner, post driver, post rammer, tamping rod, rammer, hoof pick, curry comb, drench gun,
  // heat, joining and pressing
  gas torch, butane torch, propane torch, brazing torch, cutting torch, oxy torch, tig torch, welding torch, mini torch, micro torch, pencil torch, gas lighter, match, spark lighter, flint lighter, bunsen, bunsen burner, spirit lamp, alcohol lamp, tea light, camp stove, camping stove, infrared lamp, curing lamp, uv lamp, uv torch, heat pad, heating pad, heat blanket, pipe thawing kit, hot water bottle, hot-water bottle, cool box, ice pack, freezer pack, freeze pack, paint stripper gun, shrink gun, plastic welder, welder, welding machine, mig welder, stick welder, tig welder, spot welder, arc welder, inverter welder, ground clamp, earth clamp, electrode holder, welding table, welding magnet, welding blanket, fire blanket, welding curtain, welding clamp, weld gauge, soldering gun, solder pot, tip tinner, brass sponge, heat sink clip, clothes iron, steam iron, travel iron, mini iron, ironing board, tailor's ham, pressing cloth, heat press, laminator, bearing heater, induction heater, bearing driver, bearing installer, bushing driver, bush driver, seal installer, seal press, bearing tool, bush tool, bushing tool, installer, installation tool, insertion sleeve, fitting sleeve, ring expander, valve lifter, strut compressor, clutch tool, brake tool, piston tool, wind-back tool, bearing cup driver, race driver, hydraulic press, shop press, workshop press, fly press, arbour press, crimping press, press plate, press tool, press jaw, pressing tool, nail gun, nailer, stapler, staple remover, staple lifter, hammer tacker, tacker, tack hammer, webbing stretcher, button press, button tool, upholstery needle, regulator needle, needle threader, hand needle, sewing needle, darning needle, tapestry needle, stitching pony, pricking iron, overstitch wheel, edge beveller, slicker, bone folder, tracing wheel, pin cushion, pincushion, tailor's chalk, french curve, dress form, embroidery hoop,
  // light, viewing, marking and writing
  torchlight, pen torch, penlight, pen light, lantern, flood light, floodlight, lead lamp, lead light, trouble light, drop light, strip light, ring light, desk lamp, bench lamp, magnifier lamp, magnifying lamp, uv light, black light, blacklight, light box, lightbox, eyeglass, binoculars, telescopic mirror, dental mirror, mouth mirror, hand mirror, make-up mirror, compact mirror, smartphone, mobile phone, cell phone, tripod, selfie stick, webcam, video camera, walkie-talkie, two-way radio, pencil lead, felt tip, felt-tip, felt pen, felt-tip pen, permanent pen, highlighter, ballpoint, ballpoint pen, pen, whiteboard, notebook, notepad, logbook, log sheet, check sheet, label maker, label printer, labeller, ink pad, carpenter's chalk, scribing block, surface gauge, calculator,
  // household and shop things that serve as tools
  nail, brick, house brick, breeze block, concrete block, cinder block, paving slab, slab, pebble, coat hanger, wire hanger, clothes hanger, bicycle spoke, piano wire, dental floss, shoelace, bootlace, bank card, loyalty card, gift card, putty blade, broomstick, broom stick, scaffold tube, scaffold pole, box section, angle iron, flat bar, metal bar, steel plate, steel strip, offcut, off-cut, wooden wedge, wood wedge, door wedge, doorstop, cedar shim, coffee stirrer, chopping block, butcher's block, wooden dowel, wooden stick, bamboo stick, bamboo cane, cane, orange stick, orangewood stick, knitting pin, crochet needle, hat pin, long bolt, threaded rod, all-thread, studding, guide pin, guide stud, dowel pin, sock, stocking, tights, nylon stocking, bath towel, beach towel, hand towel, bedsheet, sheet, quilt, duvet, sleeping bag, pillowcase, foam block, foam board, cardboard tube, cardboard tray, egg tray, ice tray, pill organiser, film can, tobacco tin, biscuit tin, coffee can, tin can, soup can, drinks can, pop bottle, yoghurt pot, yogurt pot, bottle cap, bottle top, paper cup, paper plate, plastic cup, saucer, dinner plate, mug, wine glass, shot glass, ash tray, ashtray, plant pot, flower pot, flowerpot, plant mister, plastic fork, plastic spoon, ice cream scoop, ice-cream scoop, sifter, tea spoon, drinking glass, nutcracker, ball bearing, golf ball, tennis ball, rubber ball, bicycle inner tube, luggage strap, bungee cord, tie-down, washing line, clothes line, clothesline, bookend, phone book, umbrella, bag, shoe horn, shoehorn, hair comb, ear bulb, enema bulb, washboard, clothes airer, hand cart, tool trolley, tool cart, tool chest, parts trolley, tool belt, tool bag, tool pouch, milk crate, beer crate, bread crate,
  // for the person, the shop and the lockout
  goggle, spectacles, gauntlet, finger cot, finger stall, breathing apparatus, welding helmet, welding screen, bump cap, safety shoes, safety boot, wellingtons, wellington boot, rubber boots, wellies, waders, overshoes, shoe cover, coveralls, coverall, boiler suit, jumpsuit, disposable suit, chainsaw trousers, gaiters, arc flash suit, hi-vis vest, high-vis, hi-viz, high-vis vest, arm guard, wrist support, back support, back brace, sunscreen, safety harness, fall arrester, fall arrest, fall arrest block, safety line, lifeline, safety stand, safety prop, safety strut, safety bar, locking bar, lock bar, articulation lock, wheel clamp, breaker lock, lockout kit, lock box, lockbox, danger tag, warning tag, safety tag, warning sign, wet floor sign, barrier, cone, traffic cone, warning cone, warning triangle, barricade, guard rail, spill kit, spill tray, bund, drain cover, first aid kit, first-aid kit, eye wash, eyewash, eyewash bottle, eyewash station, burn kit, emergency blanket, rescue hook, rescue pole, insulating boot, insulating blanket, insulating stick, hot stick, earthing stick, earthing lead, grounding stick, grounding strap, grounding lead, discharge stick, discharge tool, discharge resistor, discharge lead, bleed resistor, shorting lead, shorting stick, insulated tools, carbon monoxide monitor, oxygen monitor, sharps bin, sharps container, biohazard bag, needle holder, needle driver, patient hoist, sphygmomanometer, oximeter, infusion analyser, infusion pump tester, patient simulator, defibrillator tester, electrosurgical analyser, test lung, curing light, articulator, impression tray, lens clock, frame heater, frame warmer, bead pan, pupil gauge,
  // printing, computing, sound and stage
  plate gauge, packing gauge, blanket gauge, roller gauge, nip gauge, nozzle key, levelling card, feeler card, crimp die, patch cable, patch lead, network cable, network tester, loopback plug, boot stick, card reader, drive caddy, usb adapter, power adapter, multi-plug, extension cord, extension cable, power strip, cable reel, cable drum, test speaker, test microphone, test record, demagnetiser, demagnetizer, degausser, audio probe, signal tracer, di box, tallescope, safety bond, safety cable, quick link, carabiner, karabiner, belay device, ascender, rope grab, cargo net, luggage net, string winder, peg winder, nut slotting file, fret press, fret leveller, levelling beam, crowning file, neck jig, capo, tuning lever, tuning mute, felt wedge, voicing tool, hammer shaper, spring hook, spring tool, spring puller, spring bender, dip block, regulating tool, capstan tool, leak light, pad slick, pad iron, dent rod, dent ball, dent tool, swedging tool, bending iron, soundpost setter, sound post setter, peg shaper, rib clamp, spool clamp, cam clamp, caul, go-bar, go-bar deck,
  // sport, model, tyre, pool and battery gear
  base planer, wax iron, waxing iron, skate hook, stringing machine, flying clamp, racquet clamp, gauge stick, pump needle, ball needle, patch kit, puncture kit, puncture repair kit, tyre plug kit, tire plug kit, plug tool, plugger, reaming tool, valve tool, valve key, core remover, core tool, tensiometer, razor saw, jeweller's saw, piercing saw, fret saw, fretsaw, scroll saw, pin pusher, balsa plane, track gauge, back-to-back gauge, rerailer, foam cradle, loco cradle, wheel cleaner, glow starter, glow plug igniter, prop balancer, kv meter, watt meter, wattmeter, energy meter, plug-in meter, power meter, battery maintainer, battery carrier, battery strap, battery lifter, terminal cleaner, post cleaner, terminal spreader, battery filler,
  // lifts, doors, locks, conveyors and plant
  landing key, release key, lift door key, triangle key, triangular key, budget key, plug follower, pinning tray, lock pick, key gauge, key decoder, key machine, bypass tool, rim gauge, door jack, door lifter, door holder, door stand, airbag wedge, air wedge, glazing shovel, glazing paddle, glazing packer, glass suckers, sucker, deglazing tool, winding bar, winding rod, tensioning bar, belt clamp, belt stretcher, belt lacer, lacing tool, skiver, belt lifter, beam clamp, girder clamp, rail clamp, plate clamp, pipe stand, pipe jack, pipe threader, threading machine, die head, pipe die, groover, flange spreader, flange wedge, flange pin, flange jack, line-up bar, drift pin, bull pin, spud bar, torque multiplier, stud tensioner, bolt tensioner, spreader tool, packing extractor, packing hook, packing tool, packing pick, gasket punch, o-ring splicing kit, shim kit, feeler stock, alignment kit, soft foot gauge, vibration analyser, ultrasonic detector, ultrasound detector, steam trap tester, grease meter, oil sampler, sample pump, sampling pump, oil sampling kit, filter wrench strap, filter strap, filter crusher, oil filter tool, drain plug key, sump key, sump plug key, hose press, blanking plug, blanking cap, blanking plate, plug set, bung, cork, golf tee, tee, line plug, test bung, pipe plug, inflatable bung, pipe stopper, stopper, spade plate,
  // sealing, reading and setting gear of many trades
  vacuum chamber, vacuum box, vacuum bag, vacuum sealer, bag sealer, heat sealer, impulse sealer, tape gun, tape dispenser, strapping tool, banding tool, strap tensioner, tie gun, tag gun, price gun, hot melt gun, torque adapter, angle meter, degree wheel, degree disc, piston stop, tdc tool, valve shim tool, bucket tool, tappet tool, tappet adjuster, feeler set, carb balancer, carb synchroniser, sync gauge, carb stick, float gauge, float level gauge, jet drill, jet gauge, fork oil gauge, fork tool, fork clamp, damper rod tool, wheel nut key, wheel hanger, guide hanger, alignment dowel, lining-up tool, brake adjuster, brake spoon, adjuster spoon, hose pinch tool, hose remover, hose tool, quick-release tool, fuel line tool, disconnect tool, release tool, radio key, radio removal key, airbag tool, cutting wire, cheese wire, windscreen wire, dent lifter, paint gun, paint stand, panel stand, spot drill, seam buster, body saw, air saw, air drill, needle scaler, needle gun, scaler, descaling pump, flushing machine, power flusher, flush kit, flush hose, drain-off hose, hosepipe, hose adapter, tap adapter, bath plug, sink plug, radiator tray, radiator bag, heat shield, heat-proof mat, heatproof mat, solder mat, soldering mat, tap reseater, reseating tool, strap clamp, gas key, gas meter key, sight glass, boiler hose, soot vacuum, ash vacuum, ash shovel, coal shovel, poker, clinker tool, riddle,
  // tools named by what they do
  tool, gun, special tool, service tool, factory tool, holding tool, locking tool, tightening tool, removal tool, removing tool, fitting tool, mounting tool, adjusting tool, adjustment tool, assembly tool, cleaning tool, spanner key`)

/** Short names, by the name a list has for them. */
export const FULL_TOOL_NAMES: ReadonlyMap<string, string> = new Map(
  Object.entries({
    hex: 'hex key',
    allen: 'hex key',
    'hexagon key': 'hex key',
    'six-corner key': 'hex key',
    muff: 'ear muffs',
    muffs: 'ear muffs',
    'safety specs': 'safety glasses',
    'shop glasses': 'safety glasses',
    nitriles: 'nitrile gloves',
    'torque key': 'torque wrench',
    'clicker wrench': 'torque wrench',
    'torque driver': 'torque screwdriver',
    'cross screwdriver': 'crosshead screwdriver',
    'clock gauge': 'dial gauge',
    'dial clock': 'dial gauge',
    'temp gun': 'infrared thermometer',
    'temperature gun': 'infrared thermometer',
    'infrared gun': 'infrared thermometer',
    'infrared pistol': 'infrared thermometer',
    'fish scale': 'spring balance',
    'luggage scale': 'spring balance',
    'straight edge': 'straightedge',
    'straight-edge': 'straightedge',
    'sliding measure': 'vernier caliper',
    'slide gauge': 'vernier caliper',
    'rattle gun': 'impact wrench',
    'nut gun': 'impact wrench',
    'ball-peen': 'ball-peen hammer',
    'drop key': 'landing door release key',
    scotches: 'wheel chocks',
    shifter: 'adjustable spanner',
    'wood wedge': 'wooden wedge',
    'wood block': 'wooden block',
    'wood dowel': 'wooden dowel',
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
    adjustable: 'adjustable wrench',
    stubby: 'stubby screwdriver',
    robertson: 'Robertson screwdriver',
    pentalobe: 'pentalobe screwdriver',
    'tri-wing': 'tri-wing screwdriver',
    "crow's foot": 'crowfoot',
    'crow foot': 'crowfoot',
    'dead-blow': 'dead-blow hammer',
    'dead blow': 'dead-blow hammer',
    'soft-face': 'soft-face hammer',
    'easy-out': 'screw extractor',
    'easy out': 'screw extractor',
    'depth mic': 'depth micrometer',
    'inside mic': 'inside micrometer',
    'bore mic': 'bore micrometer',
    dti: 'dial indicator',
    tacho: 'tachometer',
    'measuring tape': 'tape measure',
    'steel tape': 'tape measure',
    'timing lamp': 'timing light',
    'strobe light': 'strobe',
    'stop watch': 'stopwatch',
    'step ladder': 'stepladder',
    bunsen: 'bunsen burner',
    'felt tip': 'felt-tip pen',
    'felt-tip': 'felt-tip pen',
    multitool: 'multi-tool',
    toolkit: 'tool kit',
    paperclip: 'paper clip',
    bandsaw: 'band saw',
    'high-vis': 'hi-vis',
    'hi-viz': 'hi-vis',
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
    vac: 'vacuum cleaner',
    torque: 'torque wrench',
    retorque: 'torque wrench',
    unbolt: 'wrench',
    mic: 'micrometer',
    unsolder: 'soldering iron',
    weld: 'welder',
    hone: 'hone',
    plane: 'plane',
    rasp: 'rasp',
    rout: 'router',
    countersink: 'countersink',
    deburr: 'deburring tool',
    burnish: 'burnisher',
    strop: 'strop',
    whet: 'whetstone',
    hacksaw: 'hacksaw',
    nail: 'hammer',
    scribe: 'scribe',
    shovel: 'shovel',
    rake: 'rake',
    trowel: 'trowel',
    ladle: 'ladle',
    sieve: 'sieve',
    squeegee: 'squeegee',
    plunge: 'plunger',
    snake: 'drain snake',
    pipette: 'pipette',
    winch: 'winch',
    swage: 'swaging tool',
    flare: 'flaring tool',
    sandblast: 'sandblaster',
    pry: 'pry bar',
    prise: 'pry bar',
    tap: 'hammer',
    whack: 'hammer',
    peen: 'hammer',
    punch: 'punch',
    shine: 'flashlight',
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
    'phillips screw': 'Phillips screwdriver',
    'crosshead screw': 'crosshead screwdriver',
    'cross-head screw': 'crosshead screwdriver',
    'slotted screw': 'flat screwdriver',
    'hex screw': 'hex key',
    'allen screw': 'hex key',
    'allen bolt': 'hex key',
    'hex-head screw': 'nut driver',
    screw: 'screwdriver',
    'drain plug': 'wrench',
    bolt: 'wrench',
    nut: 'wrench',
    'lock nut': 'wrench',
    locknut: 'wrench',
    circlip: 'circlip pliers',
    'snap ring': 'snap ring pliers',
    picture: 'camera',
    photo: 'camera',
    photograph: 'camera',
    nipple: 'grease gun',
    zerk: 'grease gun',
    'grease fitting': 'grease gun',
    'split pin': 'pliers',
    'cotter pin': 'pliers',
    'wheel nut': 'wheel brace',
    'wheel bolt': 'wheel brace',
    'lug nut': 'lug wrench',
  }),
)

/** What people hang on what feeds a machine. Common practice, no source. */
export const ENERGY_POINTS: ReadonlySet<string> = new Set(
  'isolator breaker switch disconnect disconnector supply plug handle panel mains e-stop valve'.split(' '),
)

/** Tools too general to stand alone: they count when a size, a kind or a use names them ("a 10 mm socket", "with a pick"). */
export const WEAK_TOOLS: ReadonlySet<string> = new Set(
  wordList(`
    coat, anvil, bellows, flask, hex, phillips, coin, spoon, teaspoon, fork, cushion, blanket, mat, towel, pillow, plank, board, stick, rod, dowel, comb, chair, stool, trolley, cart, rope, winch, straw, peg, weights, helmet, needle nose, vac, mike, scoop, shovel, spade, string line,
    key, bit, tap, die, stone, square, level, scale, scales, block, stand, lift, plane, iron, press, lever, hook, wedge, wedges, pick, blade, lock, tag, bench, meter, probe, probes,
    pump, lamp, mirror, timer, phone, camera, stand, bowl, cup, bottle, jar, tin, tub, container, dish, tray, hose, extension, indicator, rule, gauge, tape, drill, driver, saw, file, heater, battery, generator, compressor,
    strap, straps, clamp, clamps, chuck key, lathe, drift, punch, impact, bit, router, scope, glasses, boots, sleeves, bolt, lever, burr, magnet, ramp, ramps, chain, cradle, crate, fixture, jig, scanner, blower, iron, torch, kettle, pan, plunger, auger, sling, hoist, harness, rasp, feeler, vernier, extractor, splitter, tester, jack, vacuum, tuner,
    // more often a part, a place, furniture or talk
    adjustable, brace, stubby, toolbox, clipper, bender, expander, hold-down, maul, axe, tackle, turnbuckle, trimmer, guillotine, gouge, adze, surface plate, glass plate, buffer, polisher, hone, milling machine, sharpener, engraver, dti, laser, dipstick, compass, locking pin, balancer, load cell, balance, handset, programmer, serial cable, data cable, usb cable, memory card, sd card, jumper, test plug, test cap, test kit, charging hose, headphone, sleeper, timber, prop, pallet, forklift, scaffold, crane, gantry, shackle, eye bolt, eyebolt, tow bar, skate, tyre machine, tire machine, inspection pit, sandwich box,
    rack, folding table, card table, tarp, doormat, carpet, rug, casserole, saucepan, skillet, pot, wok, pressure cooker, slow cooker, dutch oven, stirrer, mixing paddle, whisk, hand mixer, blender, food processor, rolling pin, piping nozzle, spatula, masher, grater, zester, mitt, tamper, portafilter, blind filter, mash paddle, spout, drain hose, drain tube, clear hose, clear tube, clear tubing, sump pump, mister, lance, spreader, mop, steamer, air nozzle, air regulator, balloon, hose reel, spray nozzle, hose nozzle, autoclave, steriliser, sterilizer, tumbler, centrifuge, fan, incubator, bin, trash can,
    net, vacuum head, pole, hoe, rammer, match, welder, welding machine, laminator, installer, valve lifter, press plate, press jaw, strip light, pen, notebook, logbook, calculator, nail, brick, slab, pebble, dental floss, shoelace, bootlace, box section, flat bar, metal bar, steel plate, steel strip, offcut, cane, studding, dowel pin, sock, stocking, tight, sheet, tin can, drinks can, bottle cap, bottle top, saucer, mug, wine glass, ball bearing, bungee cord, umbrella, bag, safety line, lifeline, safety bar, locking bar, lock bar, warning sign, barrier, cone, barricade, guard rail, bund, drain cover,
    network cable, power adapter, cable reel, cable drum, safety bond, safety cable, quick link, capo, patch kit, sucker, die head, blanking plug, blanking cap, blanking plate, bung, cork, tee, line plug, pipe plug, stopper, vacuum chamber, scaler, bath plug, sink plug, heat shield, sight glass, boiler hose, riddle, tool, gun`),
)
