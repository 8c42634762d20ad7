import { wordList } from './list'

/**
 * Actions that call for their opposite: what is taken off goes back on. Verbs in base form, with the particle that makes
 * them mean it ("take off"); a particle may stand after the object ("take the guard off"). General knowledge of many
 * trades, no source. To teach a wording, add it to its act.
 */
export const ACTS = {
  remove: wordList(`
    remove, unscrew, unbolt, detach, withdraw, extract, dismount, unmount, unclip, unfasten, unseat, unpin, unstrap, unhitch, unthread, uncover, disassemble, dismantle, demount, pry out,
    take off, take out, take away, take apart, take down, lift off, lift out, lift away, lift clear, pull off, pull out, pull away, pull free, slide off, slide out, slip off, slip out, draw off, draw out,
    pop off, pop out, prise off, prise out, prize off, prize out, pry off, lever off, lever out, knock off, knock out, tap off, tap out, drive out, drift out, press out, push out, push off, twist off, twist out, screw off, screw out,
    ease off, ease out, work off, work out, wiggle off, wiggle out, tease off, tease out, fish out, pick out, wind off, unhook, unwind, spin off, get off, get out, break off, strip off, clip off, hook out, roll off, back out, drop out, drop down, swing off, shake out, set aside, lay aside, put aside, come off, slide aside, lift aside, move aside, carry off, unlatch off, unload, cut out, saw out, drill out,
    whip off, whip out, strip out, strip down, slip free, cut away, cut free, roll out, peel off, peel away, peel back, draw back, hoist off, hoist out, hoist clear, crane out, lift free, wheel out, shake loose, shake off, rip off, rip out, tear off, tear out, snap off, snap out, prise up, prise free, prise loose, lever free, lever loose, pry loose, pry free, thread off, thread out, run off, wind out, wind back off, unship, unhang, unlace, unbuckle, unclasp, unwrap, unpeg, unstick, knock apart, come away, carry away, carry out, fetch out, break down, relieve, take clear, unstack, unfix, slip away, ease away, pull up, pull loose, get free, have off, have out, bring out, swap out, clear away, empty out`),
  refit: wordList(`
    refit, reinstall, fit, install, replace, renew, change, swap, exchange, substitute, attach, reattach, mount, remount, insert, reinsert, reassemble, assemble, rebuild, seat, reseat, secure, fasten, refasten, return, reuse,
    rehang, reposition, relocate, recover, reload, load,
    put back, put on, put in, take back, lift in, lift on, lift back, slide on, slide in, slide back, slide over, slide up, slip on, slip in, slip over, slip back, push on, push in, push back, push home, press in, press on, press home, press back, press down,
    snap on, snap in, snap back, snap shut, clip on, clip in, clip back, clip down, screw on, screw in, screw back, screw down, bolt on, bolt up, bolt down, bolt back, bolt in, bolt, bolt to, screw to, clip to, clip, thread in, thread on, thread back, wind on, wind in, spin on, start by hand, hang back, hang on, hang up,
    set in, set back, set on, place back, place in, place on, place over, drop in, drop back, drop on, lower in, lower on, lower back, pop on, pop in, pop back, ease on, ease in, ease back, tap in, tap back, tap home, drive in, drive home, drift in, offer up, hook on, hook back, hook up, turn down, turn in, run on, run up, braze in, braze on, braze, weld in, weld on, solder in, glue in, guide in, guide back, guide on, feed in, feed back, bring back, swing back, move back, lay in, lay on, lay back, position, roll on, work on, work in, stretch over, stretch on, stand back, start, strap down, strap in, rest on, pack in, plug in, button up, box up, stack, ship, reeve, reeve through, loop on, loop over,
    reinstate, refix, fix, affix, fix back, put together, put over, put up, marry up, marry, mate, reunite, rejoin, join, unite, knock in, knock on, knock home, hammer in, hammer home, walk on, settle in, settle on, sit in, sit back, sit on, nestle, slot in, slot back, slot home, hitch up, thread up, spin in, spin back, twist on, twist in, twist home, wind home, run in, pack, bring in, raise into, feed through, draw in, dock, fit up, fit back, fit over, fit on, fit in, stick on, stick in, stick back, tie on, tie back, tie down, lash down, strap on, strap up, drop over, hook over, clip over, clip together, snap together, push together, press together, click in, click on, click home, click together, close up, do up, get back, put around, wrap, re-wrap, screw home, bed in, bed down, bed, restore`),
  open: wordList(
    `
    open, open up, crack open, crack, lift up, unlatch, unlock, unseal, uncap, swing open, slide open, prop open, fold back, turn on, fold down,
    swing up, swing aside, flip up, flip back, flip open, prop up, wedge open, hook open, throw open, ease open, push open, pull open, slide aside, roll up, wind open, turn open, spin open, unzip, uncork, unstopper, fold up, fold away, hinge up, hinge open, hinge back, tilt up, tilt open, crank open, turn back, reopen, re-open, open out, lift open, slit`,
  ),
  close: wordList(`
    close, close up, close off, shut, shut off, shut down, reclose, latch, relatch, lock down, seal, reseal, cap, recap, swing shut, swing closed, slide shut, fold up, turn off, push shut, nip up, tighten, retighten, snug, refit, replace, screw in, screw down, wind down, torque, secure, fasten, lower, drop, put back, put on,
    push to, pull to, draw to, swing to, screw shut, wind shut, turn shut, spin shut, drop shut, let down, bring down, put down, roll down, pull down, push down, slam, snap shut, snap closed, click shut, hook shut, zip up, zip, button up, fasten down, plug, stopper, blank off, crank shut, isolate, knock off, stop off, stopcock, cut off, swing down, swing back, swing over, fold over, fold shut, fold back down, pinch off, clamp off, clamp shut, turn down, do up, lock, lock up, tape over, cover, re-close, pull shut, slide closed, turn to, screw up, nip, nip down`),
  drain: wordList(
    `
    drain, drain off, drain out, drain down, empty, siphon, syphon, siphon out, suck out, pump out, draw off, tip out, pour out, let out, run off, run out, flow out, drip out, draw down, extract, blow down,
    run down, bleed down, bleed off, bleed out, draw out, draw, suck, suck up, pump off, pump down, pump dry, pump, syringe, syringe out, siphon off, syphon off, syphon out, drop, dump, void, evacuate, flush out, spill, scoop out, bail, bail out, ladle out, sponge out, mop out, mop up, tip, decant, blow out, let, let go, squeeze out, drip, soak up, catch, discharge, purge, drain away, drain dry, pour off, tap off, vacuum out`,
  ),
  fill: wordList(
    `
    fill, refill, fill up, top up, top off, pour, pour in, add, replenish, recharge, charge, prime, pump in, feed in, put in, inject, flood, squirt in, run in, tip in,
    top, brim, load, put into, tip into, pour back, pour into, refill up, squirt, dose, make up, introduce, transfer, decant, restore, bring up, tip, meter in, measure in, run back in, bleed in, set, correct, load up, put back, return, re-prime, let in, draw in, suck in, fill back`,
  ),
  disconnect: wordList(
    `
    disconnect, unplug, uncouple, decouple, unhook, unwire, undo, pull, detach, unsolder, desolder, disengage, separate, split,
    part, pull apart, break, slip off, unmate, unjoin, cut, snip, unlink, take loose, pull off, pull out, slide off, ease off, work off, twist off, unclip, unfasten, unsnap, unthread, unlatch, spin off, break apart, come apart, draw off, drop off, peel off, unstick, disjoin`,
  ),
  connect: wordList(`
    reconnect, connect, plug in, plug back, plug, replug, couple, recouple, hook up, hook back, rewire, wire, wire up, wire in, terminate, land, attach, reattach, rejoin, join, refit, fit, replace, renew, install, reinstall, push on, push back, push in, push home, clip on, clip back, clip in, put back, put on, screw on, solder, resolder, crimp, slide on, slip on, press on, snap on, re-engage, engage, swap, change, tighten, torque, secure, snap in, make, remake, start, restore,
    join up, hook in, link, link up, tie in, wire back, clip together, click together, push together, make off, make up, make good, hard-wire, splice, put together, marry, mate, thread on, thread in, slide back, slip back, push onto, bolt on, bolt up, screw in, screw up, screw back, insert, reinsert, seat, mount, remount, fix, fix on, fix back, do up, nip up, fasten, clamp, reinstate, bring back, pop on, pop back, click in, click on, click home, offer up, feed back, land back, return, hook onto, set back, twist on, twist in, tie, lock in, draw up, pinch up, wind on, spin on, ease on, ease back, work on, stick on, hang back, press back, slot in, put`),
  loosen: wordList(
    `
    loosen, slacken, undo, back off, crack loose, crack off, break loose, slack off, free off, let off, release, unclamp, free up, unlock,
    ease, ease off, ease back, crack, break, back out, back away, slack, slacken off, slack back, let out, wind back, turn back, turn out, run back, relax, unlatch, unhook, break free, crack free, work loose, work free, shake loose, ease loose, knock loose, pull loose, unbolt, unfasten, untighten, unlatch, unwind, screw out, wind off, wind out, untie, unhitch, uncramp`,
  ),
  tighten: wordList(`
    tighten, retighten, re-tighten, hand-tighten, finger-tighten, thumb-tighten, torque, retorque, re-torque, tighten up, tighten down, nip up, nip, snug, snug up, snug down, cinch, cinch up, do up, lock, lock up, secure, clamp, reclamp, pinch, pinch up, run down, run up, pull up, pull down, crank down, screw in, screw down, wind in, bolt up, bolt down, fasten, refit, fit, replace, reinstall, install, renew, seat, set, engage, close, latch, set to torque, adjust, tension, retension, turn in, screw up, squeeze, squeeze up, crimp, bring up, wind up, put back,
    pull tight, draw up, draw tight, draw down, draw in, nip tight, nip down, wind down, wind tight, wind home, screw tight, screw home, screw up tight, turn tight, turn home, run home, take up, bring home, pinch tight, pull in, set up, bed down, harden, harden up, re-snug, do up tight, bolt up tight, knock up, hook up, hook, latch up, re-engage, re-latch, relatch, push home, press home, click home, tie, tie down, strap down, fix, make up, make, remake, put on, put up, put tight, hold down, bring up tight, pull home, cinch down, tweak up, lash, buckle, batten down, refasten, fasten down, stretch, restore, reset, hook back, turn up, twist up, twist tight, twist home, set tight, screw back`),
  off: wordList(`
    switch off, turn off, shut off, shut down, power off, power down, isolate, de-energise, de-energize, deenergise, deenergize, kill, cut, trip, unplug, knock off, disable, deactivate, disarm, throw off, flip off, flick off, bypass, pull,
    throw, click off, cut off, set to off, turn to off, move to off, switch to off, put off, black out, unpower, flip down`),
  on: wordList(`
    switch on, turn on, turn back, power on, power up, restore, energise, energize, re-energise, re-energize, reenergise, reenergize, plug in, plug back, start, restart, run, reset, enable, re-enable, activate, reactivate, rearm, re-arm, arm, put back, throw on, throw up, throw over, lift up, flip on, flick on, switch back, return, boot, bring up, reinstate, fire up, close, refit, reconnect, connect, plug, power, replace, push in,
    click on, knock on, set to on, turn to on, move to on, switch to on, put on, flip up, flip back, throw back, throw, bring back, bring on, close up, reinsert, refasten, rejoin, repower, power back, start up, boot up, wake, make live, liven, livening`),
  lock: wordList(`
    lock out, lock off, lock, padlock, tag, tag out, lockout, tagout,
    lock up, lock down, padlock off, lock-out`),
  unlock: wordList(`
    unlock, untag, remove, take off, lift off, clear, lift,
    unlatch, unfasten, cut, unchain, unpadlock, detach, take away, release, unclip, retrieve, lift away`),
  raise: wordList(`
    raise, jack up, jack, lift, hoist, lift up, hoist up, winch up, prop up, crank up,
    put up, bring up, run up, wind up, pump up, pull up, elevate, boost, prop, roll up, drive up, push up, heave up, lever up, drive onto`),
  lower: wordList(
    `
    lower, let down, drop, bring down, lower down, set down, set back, put down, put back, jack down, wind down, ease down, place back, stand, return, put,
    let go, run down, pump down, drop down, come down, roll down, roll off, drive off, take down, take off, ease off, lift off, lift down, slide off, slide down, push off, settle, roll back, stand back, lay down, lay back, rest, sit, drive down, wheel off, back off, get down, tip back, turn back`,
  ),
} as const satisfies Readonly<Record<string, readonly string[]>>

/** Name of an act. */
export type Act = keyof typeof ACTS

/** Words that follow a verb and change what it does. */
export const PARTICLES: ReadonlySet<string> = new Set(
  wordList(
    'off, out, up, down, back, on, in, away, apart, together, over, home, shut, open, loose, free, clear, aside, tight, closed, wide',
  ),
)

/** What is taken off for good, or never was a part: not to be put back. Heads, singular. */
export const NOT_PUT_BACK: ReadonlySet<string> = new Set(
  wordList(`
    debris, dirt, dust, rust, scale, limescale, swarf, chip, sludge, residue, burr, glue, adhesive, sealant, sealer, grease, oil, water,
    condensate, moisture, air, carbon, soot, ash, lint, hair, fluff, leaf, grass, sawdust, shaving, deposit, sediment, corrosion, paint,
    varnish, lacquer, rag, masking, packaging, packing, wrapping, spanner, socket, wrench, screwdriver, glove, goggle, jewellery, jewelry,
    watch, excess, drip, spill, foam, fluid, coolant, fuel, petrol, gasoline, slag, spatter, bubble, stain, mark, paste, flux, solder,
    obstruction, blockage, clog, waste, silicone, remnant, remains, fragment, filament, contamination, clutter, snow, ice, nest, root, mud,
    sand, grit, stone, thread, cardboard, jewel, tension, slack, play, load, weight, pressure, charge, lock, tag, padlock, lockout, hand,
    finger, finish, wax, sticker, staple, reading, sample, vehicle, puller, feather, grime, mineral, matter, growth, mould, mold, slime, glass, shard, nail, splinter, coin, paper, ammunition, food, leftover, liquid, wash, trigger, button, pedal,
    coating, insulation, sheathing, tablet, pellet, granule, refrigerant, silt, scum, lime, crust,
    tail, stub, offcut, trimming, sprue, dross, peeling, cone, pendant, disinfectant, wipe, salt, chaff, straw, manure, litter, feed`),
)

/** The same, but only where nothing more is said of them: a tray, a drain pan; not the cup tray. */
export const AIDS: ReadonlySet<string> = new Set(
  wordList(`
    pan, tray, bucket, jack, stand, block, support, prop, tool, ring, key, clamp, glass, label, wrap, tape, mask, card, material, piece, item,
    strap, wood, bag, plastic, compressor, vice, vise, gauge, meter, probe, cloth, film, ramp, chock, hoist, sling, cover, charger`),
)
/** What goes before an aid to the work. */
export const AID_KINDS: ReadonlySet<string> = new Set(
  wordList(
    'drain, drip, oil, catch, jack, axle, work, floor, trolley, support, wooden, safety, masking, cable, spring, test, feeler, parts, magnetic, bearing, gear, welding, dust, wheel, locking, pulling, guide',
  ),
)

/** Words that set two parts of one name apart: the upper tray is not the lower one. */
export const OPPOSITES: readonly (readonly [string, string])[] = [
  ['upper', 'lower'],
  ['top', 'bottom'],
  ['front', 'rear'],
  ['front', 'back'],
  ['side', 'back'],
  ['side', 'front'],
  ['side', 'rear'],
  ['side', 'centre'],
  ['side', 'center'],
  ['left', 'right'],
  ['inner', 'outer'],
  ['inlet', 'outlet'],
  ['inlet', 'discharge'],
  ['suction', 'delivery'],
  ['suction', 'discharge'],
  ['supply', 'return'],
  ['drain', 'filler'],
  ['drain', 'fill'],
  ['drain', 'level'],
  ['positive', 'negative'],
  ['first', 'second'],
  ['hot', 'cold'],
  ['intake', 'exhaust'],
  ['near', 'far'],
  ['high', 'low'],
  ['male', 'female'],
  ['primary', 'secondary'],
  ['live', 'neutral'],
  ['minimum', 'maximum'],
  ['min', 'max'],
  ['initial', 'final'],
  ['before', 'after'],
  ['new', 'used'],
  ['input', 'output'],
  ['cut-in', 'cut-out'],
  ['open', 'closed'],
  ['oxygen', 'acetylene'],
  ['oxygen', 'propane'],
  ['oxygen', 'fuel'],
]

/** Names that mean much the same part, heads in the singular. */
export const SAME_PART: readonly (readonly string[])[] = [
  ['cover', 'lid', 'panel', 'guard', 'shroud', 'cowl', 'cowling', 'fairing', 'casing', 'housing', 'plate', 'can'],
  ['screw', 'bolt', 'nut', 'fastener', 'setscrew', 'stud', 'fixing'],
  ['hose', 'pipe', 'line', 'tube'],
  ['lead', 'cable', 'wire', 'cord', 'connector', 'plug', 'harness', 'terminal', 'connection', 'loom', 'boot', 'cap'],
  ['clip', 'clamp', 'circlip', 'retainer'],
  ['power', 'supply', 'mains', 'electricity', 'isolator', 'breaker', 'disconnect', 'switch', 'fuse', 'isolation'],
  ['tyre', 'tire'],
  ['filter', 'cartridge', 'strainer', 'screen'],
  ['valve', 'tap', 'cock', 'stopcock', 'faucet', 'spigot', 'petcock'],
  ['fluid', 'oil'],
  ['element', 'pad', 'cartridge'],
]

/** Small parts that hold a bigger one: once that is back on, so are they. */
export const FASTENERS: ReadonlySet<string> = new Set(
  wordList(
    'screw, bolt, nut, fastener, fixing, stud, clip, circlip, washer, pin, clamp, setscrew, retainer, catch, latch, strap, band, cotter, key, rivet, staple, stop, knob, thumbscrew, wingnut, capscrew, grommet, plate bolt, ring, spring clip, tie, split',
  ),
)
