import { wordList } from './list'

/** Parts of machines: what steps act on. They tell a noun from a verb, and name what "it" stands for. To teach a part, add its head. */
export const PART_HEADS: ReadonlySet<string> = new Set(
  wordList(`
  // fasteners
  bolt, bolts, nut, nuts, screw, screws, washer, stud, studs, pin, pins, clip, clips, rivet, cotter, circlip, thread, threads, locknut, locknuts, setscrew, fastener, fasteners, thumbscrew, wingnut, hook, strap, bracket, brackets, hinge, latch, catch,
  // covers and frames
  cover, lid, cap, panel, panels, door, guard, shield, hood, bonnet, case, casing, housing, shroud, plate, plates, frame, body, base, bed, table, fence, rail, rails, seat, saddle, cowl, cowling, hatch, drawer, box, cabinet, bezel, trim, skirt, flange, boot, sleeve, cup, collar, ring, bush, bushing, liner, lip, lug, tab, tabs, slot, hole, holes, groove, gap, joint, joints, face, edge, edges, corner, end, ends, top, bottom, side, sides, back, front, middle,
  // turning and guiding
  lining, linings, shaft, axle, wheel, wheels, pulley, pulleys, gear, gears, sprocket, rotor, hub, spindle, crank, crankshaft, camshaft, cam, lever, handle, knob, arm, rod, link, chain, belt, belts, track, cable, cables, spring, springs, bearing, bearings, chuck, quill, carriage, slide, slides, gib, drum, roller, rollers, fan, impeller, propeller, blade, blades, flywheel, clutch, brake, brakes, caliper, pads, pad, shoe, shoes, disc, disk, piston, pistons, cylinder, fork, forks, stem, steering, tensioner, idler, key, keyway, coupling, governor, bridge, neck, string, strings, saddle, nut, peg, pegs, action, hammer, reed, keys, needle, hook, bobbin, foot, presser,
  // fluids and heat
  tank, pump, valve, valves, hose, hoses, line, lines, pipe, pipes, tube, fitting, fittings, coupling, couplings, filter, element, strainer, screen, drain, plug, dipstick, gauge, sump, pan, reservoir, radiator, boiler, burner, nozzle, jet, carburettor, carburetor, float, bowl, manifold, gasket, seal, seals, o-ring, diaphragm, regulator, trap, outlet, inlet, elbow, tee, cock, tap, faucet, spout, heater, exhaust, muffler, coil, fins, thermostat, compressor, condenser, evaporator, cartridge,
  // electricity
  wire, wires, wiring, lead, leads, connector, connectors, terminal, terminals, contact, contacts, switch, breaker, fuse, relay, contactor, capacitor, motor, motors, battery, cell, sensor, coil, spark, plug, plugs, socket, board, circuit, probe, lamp, bulb, isolator, disconnect, supply, power, mains, cord, ignition, starter, alternator, element, brushes, commutator, winding, display, button, pedal, trigger, controller, thermistor, cartridge,
  // machines
  machine, engine, unit, car, bike, bicycle, van, truck, saw, mower, press, lathe, mill, drill, printer, generator, boat, trailer, tractor, dryer, washer, dishwasher, oven, fridge, freezer, furnace, guitar, piano, clock, watch, camera, gun, head, heads, block, system, tool, tip, bit, bar, sight, glass, window, wall, floor, ground, stand, bench, vice`),
)
