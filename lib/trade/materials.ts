import { wordList } from './list'

/**
 * Materials and spare parts that are used up or stay in the machine, by the word that names them. General knowledge of
 * many trades, no source. To teach a material, add the word or words that name it.
 */
export const MATERIAL_HEADS: readonly string[] = wordList(`
  // oils, greases and pastes
  oil, engine oil, motor oil, gear oil, machine oil, way oil, spindle oil, hydraulic oil, compressor oil, chain oil, penetrating oil, cutting oil, sewing machine oil, mineral oil, two-stroke oil, linseed oil, tung oil, vegetable oil, silicone oil,
  grease, lithium grease, silicone grease, copper grease, marine grease, bearing grease, dielectric grease, assembly lube, anti-seize, antiseize, copper paste, petroleum jelly, lube, lubricant, dry lube, wax, paste wax, beeswax, chain lube, chain wax, thermal paste, heat paste, thermal compound, cutting fluid, rubber grease, brake grease, valve grease, polish, cutting compound, polishing compound, honing compound, lapping compound, grinding paste, valve grinding paste,
  // fluids
  brake fluid, hydraulic fluid, transmission fluid, coolant, antifreeze, distilled water, deionised water, battery acid, electrolyte, petrol, gasoline, fuel, diesel, paraffin, kerosene, white spirit, mineral spirits, turpentine, thinner, acetone, solvent, degreaser, brake cleaner, carb cleaner, contact cleaner, parts cleaner, isopropyl, isopropyl alcohol, alcohol, methylated spirit, meths, vinegar, white vinegar, bleach, detergent, dish soap, washing-up liquid, soap, soapy water, descaler, citric acid, acid, water, refrigerant, nitrogen, argon, fuel stabiliser, fuel stabilizer, stabilizer, rinse aid, cleaner, window cleaner, biocide, sanitiser, sanitizer, screen wash, flux, ink,
  // glues and seals
  threadlock, thread locker, threadlocker, sealant, gasket sealant, silicone, silicone sealant, rtv, ptfe tape, sealing tape, thread tape, plumber's tape, pipe dope, jointing compound, glue, wood glue, super glue, superglue, epoxy, adhesive, contact cement, hide glue, caulk, putty, filler, mastic, electrical tape, insulating tape, insulation tape, masking tape, duct tape, double-sided tape, heat shrink, heat shrink tubing, solder, brazing rod, filler rod, electrode, tape, foam tape, gaffer tape,
  // wiping and abrasive
  rag, rags, clean rag, shop rag, shop towel, shop towels, paper towel, paper towels, kitchen roll, cloth, lint-free cloth, microfibre cloth, microfiber cloth, cotton swab, cotton swabs, cotton bud, cotton buds, swab, sponge, tissue, lens tissue, steel wool, wire wool, scouring pad, abrasive pad, sandpaper, emery cloth, emery paper, emery, wet and dry paper, wet-and-dry, abrasive paper, sanding disc, pipe cleaners, newspaper, cardboard, card, paper, sheet of paper, plastic bag, zip bag, freezer bag, absorbent, absorbent pad, cat litter, sawdust, chalk, talc, graphite, plastic sheet, dust sheet, cling film,
  // stuff about the house and shop
  baking soda, talcum powder, salt, sugar, cornflour, toothpaste, candle wax, candle, soapstone, leather, felt strip, rope gasket, door rope, pellet salt, wax paper, baking paper, tissue paper, blotting paper, foil, tin foil, aluminium foil, plastic wrap, card stock, cotton wool, wool, gauze, wipes, disinfectant wipes, disinfectant, bubble wrap, foam pad, insulating sleeving, sleeving, labels, label, barrier tape, warning tape, sticker, marker flag tape, test strip, nails, tacks, wood screws, wood plug, dowels, veneer, plywood, hardboard, steel bar, bar stock, test piece, scrap piece, cord, braided cord, nylon cord, fishing line, elastic, hook-and-loop tape, magnets, ink ribbon, ribbon, contact glue, contact adhesive, hide glue, fire cement, stove cement, gasket cement, refractory cement, vegetable oil, silicone lube, silicone lubricant, silicone spray, dry ptfe spray, ptfe spray, damp cloth, microfiber, leak detector, leak detector spray, smoke pellet, water softener salt, sanitiser tablets, chlorine, pump oil, fork oil, shock oil, valve oil, cork grease, rosin, key oil, clock oil, base cleaner, ski wax, hot wax, solder wick, wire brush pad,
  // more that is wiped, sprayed, dabbed or poured on
  paste, ceramic paste, conducting paste, spray, dry spray, mould spray, mold spray, release spray, spray tack, lanolin, lanolin spray, rope dressing, belt dressing, dressing, inhibitor, corrosion inhibitor, rust inhibitor, rust remover, remover, adhesive remover, resin remover, paint stripper, surgical spirit, rubbing alcohol, ethanol, naphtha, lighter fluid, penetrating fluid, flushing oil, flush, dye penetrant, developer, marking blue, engineer's blue, layout fluid, hardener, activator, resin, gel, disinfectant spray, cleaning fluid, lens fluid, lens cleaning fluid, press wash, cleaning solution, soap solution, leak fluid, bubble solution, moly grease, white grease, red grease, silicone paste, joint paste, thread paste, sealing compound, potting compound, boiled oil, neatsfoot oil, camphor oil, red oil, cleaning powder, descaling powder, washing soda, borax, bicarbonate, baking powder, detergent tablet, cleaning tablet, demineralised water, demineralized water, deionized water,
  // more cloths, papers and sticks
  chamois, muslin, cheesecloth, kitchen paper, kitchen towel, blue roll, blue paper, paper roll, toilet paper, toilet roll, filter paper, coffee filter, carbon paper, indicator paper, litmus paper, test paper, test strips, wax cloth, tack cloth, tack rag, polishing cloth, microfibre, microfibre towel, alcohol wipe, alcohol wipes, detergent wipe, dry cloth, cocktail stick, toothpick, toothpicks, skewer, matchstick, lolly stick, popsicle stick, crayon, wax crayon, marking paint, paint pen, bin bag, rubbish bag, garbage bag, trash bag, bin liner, waste bag, sealing bag,
  // more that is cut to length, laid in or tied
  webbing, sheepskin, calfskin, buckskin, hessian, burlap, canvas, gasket paper, gasket sheet, cork sheet, rubber sheet, sheet of cardboard, foam strip, foam rod, backing rod, weatherstrip, weather strip, draught strip, draft strip, sealing strip, sealing putty, glazing putty, gland packing, braided packing, packing ring, packing rings, pump packing, seizing wire, baling twine, waxed thread, serving thread, cotton thread, nylon line, picture wire, crimps, crimp connectors, crimp connector, ferrules, ferrule, splice connector, heat-shrink sleeve, marker sleeves, cable markers, tie wrap, tie wraps, hose clips, jubilee clip,
  // fastening
  cable tie, cable ties, zip tie, zip ties, hose clamp, hose clip, worm-drive clip, wire, safety wire, locking wire, mechanic's wire, split pin, split pins, cotter pin, cotter, roll pin, circlip, snap ring, e-clip, crush washer, sealing washer, copper washer, spring washer, lock washer, washer, washers, lock nut, locknut, nyloc nut, self-locking nut, rivet, rivets, screws, string, twine, thread, staples, connectors, butt connector, wire nut, wire nuts, crimp terminal, spade connector, ring terminal,
  // spares
  gasket, gaskets, o-ring, o ring, o-rings, oring, seal, seals, oil seal, shaft seal, mechanical seal, lip seal, seal kit, filter, oil filter, air filter, cartridge, filter element, filter cartridge, water filter, strainer, diaphragm, spark plug, plug, plugs, impeller, belt, drive belt, v-belt, v belt, timing belt, chain, sprocket, bearing, bearings, bushing, bush, brushes, carbon brushes, pads, brake pads, brake shoes, brake disc, rotor, disc, cable, inner cable, brake cable, gear cable, cable housing, outer cable, tube, inner tube, tyre, tire, rim tape, valve core, hose, fuse, fuses, bulb, battery, capacitor, contactor, relay, thermostat, element, heating element, igniter, thermocouple, solenoid, wiper blade, blade, blades, cutting blade, nozzle, needle, bobbin, spring, springs, strut, shock absorber, damper, drive roller, ink cartridge, print head, rubber feet, drain washer, washer kit, repair kit, service kit, rebuild kit, kit, strings, guitar strings, reed, felt, wick, flint, anode, sacrificial anode, shear pin, shear bolt, woodruff key, piston rings, rings, valve, float valve, fill valve, flapper, aerator, ball valve, trap, hinge, grommet, screen, switch, circuit board, foam, insulation, spacer, spacers, shim, shims, lacquer, varnish, paint, primer, primer paint, touch-up paint, spray paint, rust converter, stain, shellac`)

/** Materials that are more often a part of the machine at hand: they count when they are new, or put on or in as stuff. */
export const WEAK_MATERIALS: ReadonlySet<string> = new Set(
  wordList(`
    paste, spray, dressing, flush, developer, activator, resin, gel, remover, canvas, crimps, ferrules, ferrule, blue paper, paper roll, 
    leather, salt, sugar, label, labels, nails, tacks, cord, ribbon, magnets, elastic, sticker, foil, candle, chlorine, felt strip,
    oil, fuel, water, gasket, gaskets, o-ring, o ring, o-rings, oring, seal, seals, filter, cartridge, strainer, diaphragm, plug, plugs, impeller, belt, chain, sprocket, bearing, bearings, bushing, bush, brushes, pads, disc, rotor, cable, tube, tyre, tire, hose, fuse, fuses, bulb, battery, capacitor, contactor, relay, thermostat,
    element, igniter, thermocouple, solenoid, blade, blades, nozzle, needle, bobbin, spring, springs, strut, shock absorber, damper, kit, strings, reed, felt, rings, valve, trap, hinge, grommet, screen, switch, circuit board, insulation, spacer, spacers, shim, shims, washer, washers, screws, wire, lock nut, locknut, paint, thread, connectors, tape, gasoline, petrol, diesel, coolant, acid, ink, refrigerant, nitrogen, silicone, foam, air filter, oil filter, filter element, brake pads, brake disc, brake shoes, spark plug, inner tube, drive belt, v-belt, v belt, timing belt, brake fluid, sawdust, dust sheet, circlip, snap ring, cotter, split pin, roll pin, hose clamp, hose clip, wax, paper, card, glue, polish, cleaner, electrolyte, battery acid, water filter, flapper, fill valve, float valve, aerator, anode, wick, flint, wiper blade, stain, filler, primer, cotter pin, sandpaper, string, rivet, rivets, heat shrink, piston rings, oil seal, shaft seal, mechanical seal, lip seal, heating element, cutting blade, filter cartridge, brake cable, gear cable, cable housing, outer cable, inner cable, print head, switch, guitar strings, valve core, carbon brushes, rubber feet`),
)

/** Verbs that name the stuff they put on: who greases has grease. */
export const VERB_MATERIALS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    grease: 'grease',
    regrease: 'grease',
    oil: 'oil',
    solder: 'solder',
    wax: 'wax',
    chalk: 'chalk',
    ink: 'ink',
    paint: 'paint',
    glue: 'glue',
    tape: 'tape',
    shim: 'shim',
    caulk: 'caulk',
    putty: 'putty',
    descale: 'descaler',
    degrease: 'degreaser',
  }),
)
