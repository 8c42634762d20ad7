import { wordList } from './list'

/**
 * What hands do in a workshop, by what the action brings about. Base forms; inflections are computed
 * (lib/draft/morphology.ts) but for the irregular ones in IRREGULAR. To teach a verb, add it to the group it belongs to.
 * General knowledge of many trades, no source.
 */
export const ACTIONS = {
  /** Comes off, out or apart. Opposite of `fit`. */
  remove: wordList(`
    remove, undo, unscrew, unbolt, unfasten, unhook, unclip, unclamp, unplug, unwrap, unwind, unseat, unlock, unlatch, untie,
    unsolder, desolder, unthread, uncouple, unmount, unload, uncover, unpin, unhitch, unstrap, loosen, slacken, detach,
    disconnect, disengage, dismount, disassemble, dismantle, extract, withdraw, strip, pry, prise, prize, pop, peel, release,
    pull, yank, knock, tease, lever, jimmy, free, ease, break, crack, discard, bin, toss, chuck, empty, scoop, dig, pluck, expose`),
  /** Goes on, in or together. Opposite of `remove`. */
  fit: wordList(`
    fit, refit, install, reinstall, replace, renew, swap, exchange, change, substitute, attach, reattach, connect, reconnect,
    insert, reinsert, mount, remount, assemble, reassemble, join, couple, screw, bolt, rivet, nail, pin, clip, hook, hitch, hang,
    seat, reseat, press, push, slide, slip, slot, snap, thread, feed, route, string, lace, weave, wrap, wind, tie, tape, zip,
    plug, stuff, pack, bed, nest, sandwich, stack, locate, position, place, put, set, lay, rest, pop, drop, lower, stick, bond, glue,
    clamp, chock, wedge, block, prop, support, secure, fasten, anchor, strap, lash, latch, cover, cap, shim, load, stow, fold`),
  /** Is made tight. */
  tighten: wordList(
    'tighten, retighten, torque, retorque, snug, nip, cinch, pinch, crank, bottom, preload, tension, compress',
  ),
  /** Moves round, over or along. */
  move: wordList(`
    turn, rotate, spin, twist, swing, flip, roll, wind, swivel, pivot, tilt, tip, lean, raise, lift, hoist, jack, lower, drop, drag, move,
    shift, slew, shove, push, pull, draw, bring, take, carry, wheel, drive, ride, reverse, park, back, advance, retract, extend, work,
    wiggle, jiggle, waggle, rock, shake, tap, hit, strike, hammer, bump, nudge, squeeze, pinch, stretch, bend, flex, grab, grip, hold, steady,
    catch, guide, steer, aim, point, straighten, square, centre, center, tuck, haul, tug, squash, smack, stab, level, align, realign, index, cycle, stroke, jog, crank, coax`),
  /** Controls and energy. */
  control: wordList(`
    open, close, shut, switch, start, restart, stop, run, fire, power, energise, energize, isolate, lock, tag, trip, reset, engage, press, flick, relieve, degas, blip,
    flip, toggle, select, dial, program, boot, enable, disable, activate, deactivate, arm, disarm, ground, earth, discharge, charge,
    jump, short, bridge, idle, rev, throttle, choke, prime, pump, vent, bleed, purge, depressurise, depressurize, pressurise, pressurize,
    heat, preheat, warm, cool, chill, boil, freeze, evacuate, pull, crack, kill, cut, apply, home, zero, calibrate, null, actuate, operate`),
  /** Dirt, rust and edges. */
  clean: wordList(`
    clean, wipe, brush, blow, hose, scrape, rinse, wash, flush, vacuum, polish, buff, sand, file, deburr, degrease, descale, scrub, scour, suck, backflush,
    hone, lap, grind, sharpen, dress, burnish, strop, swab, sweep, dust, mop, dry, blot, pick, chase, ream, skim, sieve, strain, filter, decant, unblock,
    clear, coax, flick, neutralise, neutralize, disinfect, sanitise, sanitize, etch, strip, roughen, scuff, key, emery, whet, flatten`),
  /** Liquids, greases and coatings. */
  apply: wordList(`
    apply, distribute, grease, regrease, oil, lube, lubricate, smear, coat, spray, dab, paint, prime, pour, fill, refill, top, add, squirt, inject, soak, dip, wet, moisten,
    dampen, drip, drizzle, rub, spread, brush, work, butter, wax, dress, seal, caulk, anoint, flood, mist, charge, pump, mix, stir, dilute, dissolve, dose, drain, lap`),
  /** Looks, measures, tries out. Often a check. */
  inspect: wordList(`
    check, recheck, inspect, measure, remeasure, test, retest, verify, confirm, examine, gauge, compare, look, feel, listen, watch, observe, see, read,
    reread, sniff, smell, prove, try, count, probe, trace, weigh, sight, view, scan, study, monitor, meter, mike, mic, ensure, eyeball, sense, peek, review,
    assess, squint, note, search, diagnose`),
  /** Leaves a trace for later. */
  record: wordList(
    'mark, label, tag, write, scribble, note, photograph, record, log, sketch, number, scribe, scratch, stamp, sign, date, enter, punch, draw, film, snap',
  ),
  /** Time does the work. */
  wait: wordList('wait, let, leave, allow, give, keep, stand, cure, set, settle, soak, rest, steep, stay, hold'),
  /** Shapes material. */
  make: wordList(`
    cut, trim, slice, chamfer, drill, bore, countersink, tap, saw, snip, shear, split, bend, shape, form, fold, crimp, splice, solder, weld, braze, tack, glue, epoxy,
    rout, plane, chisel, carve, turn, mill, face, part, knurl, anneal, harden, temper, quench, heat, shrink, expand, peen, swage, flare, bead, score, rip, shave, notch, sew, stitch, make, build, cast, mould`),
  /** Waste and putting away. */
  dispose: wordList('dispose, recycle, discard, dump, return, store, bag, collect, save, keep, take, scrap'),
  /** Protects the person. */
  protect: wordList('wear, don, put, ventilate, shield, mask, glove, barricade, cordon, lockout'),
  /** Fetches and uses. */
  use: wordList('use, grab, get, fetch, take, find, pick, choose, reach, borrow, reuse'),
  /** General doing; an action only with an object. */
  general: wordList(`
    do, redo, repeat, line, go, come, begin, continue, finish, complete, follow, proceed, adjust, readjust, regulate, trim, tune, tweak, correct, reduce, increase, match,
    fix, repair, mend, service, overhaul, rebuild, restore, return, separate, split, divide, protect, stop, avoid, touch, reach, step, walk, stand, sit, kneel, stay, make, get,
    remember, satisfy, transfer, retain, save, sort, arrange, prepare, ready, plan, order, buy, ask, call, call, tell, show, consult, refer, figure, calculate, convert, multiply, play, throw, poke, offer, join, sew, thread`),
  /** What machines and stuff do by themselves, in health and in trouble. Never an instruction. */
  behave: wordList(`
    leak, drip, weep, seep, ooze, foam, froth, bubble, seize, wobble, rattle, squeal, squeak, rub, jam, bind, slip, wear, melt, corrode, rust, rot, swell, sag, creep, drift, fail, die, stall, misfire, smoke, hum, buzz, click,
    knock, ping, vibrate, chatter, skip, whine, hiss, gurgle, glug, surge, hunt, cough, splutter, sputter, spit, splash, spurt, gush, overheat, overflow, clog, block, foul, glaze, warp, burn, scorch, char, burst, explode, ignite, fly, shoot, spring, fall,
    flow, circulate, evaporate, condense, freeze, thaw, expand, contract, shrink, harden, soften, cure, crystallise, oxidise, wander, float, sink, settle, drain, carry, trap, hold, grab, snatch, bite, kick, catch, chip, flake, scratch, score, gouge, dent,
    distort, deform, bend, twist, snap, shear, break, crack, split, tear, stretch, loosen, work, rise, drop, trip, blow, fry, short, arc, spark, shock, electrocute, scald, blister, crush, trap, injure, hurt, kill, blind, poison, ruin, wreck, damage, destroy, contaminate, stain,
    collect, gather, build, cling, stick, lubricate, protect, prevent, cause, help, allow, let, ensure, reduce, increase, spread, transfer, conduct, insulate, absorb, attract, repel, hide, last, outlast, survive, match, vary, differ, indicate, mean, show, tell, prove, suggest, point, flutter, flicker, dim, glow, fade, stutter, judder, shudder, grumble, growl, groan, screech, chirp, thump, clunk, scrape, graze, gall, pit, cavitate, starve, flood, choke, detonate, backfire, idle, rev, shift, move, wind, turn`),
  /** What people think, say and own. Never an instruction. */
  mind: wordList(`
    want, need, know, think, like, love, hate, say, mean, seem, appear, sound, believe, guess, reckon, hope, wish, pay, owe, cost, happen, become, belong, contain, include, depend, matter, suppose, expect, remember, forget, care, laugh, talk, worry, bother, promise,
    prefer, recommend, suggest, agree, understand, learn, teach, explain, mention, wonder, imagine, deserve, live, sleep, eat, drink, cry, swear, moan, complain, joke, blame, trust, thank, welcome, appreciate, subscribe, sell, spend, own, hear, lose, win, charge, hire, rent, speak, feel, swear, regret, retire, grow, marry`),
} as const

/** Name of a group of actions. */
export type ActionClass = keyof typeof ACTIONS

/** Irregular verbs of the shop: base, past, participle. */
export const IRREGULAR: readonly (readonly [base: string, past: string, participle: string])[] = wordList(`
  be was been, have had had, do did done, go went gone, take took taken, put put put, set set set, cut cut cut, let let let, hold held held,
  give gave given, get got got, keep kept kept, leave left left, make made made, come came come, run ran run, draw drew drawn, drive drove driven,
  wind wound wound, unwind unwound unwound, grind ground ground, bend bent bent, break broke broken, blow blew blown, bring brought brought, build built built,
  buy bought bought, catch caught caught, choose chose chosen, dig dug dug, feel felt felt, find found found, freeze froze frozen, hang hung hung, hear heard heard,
  hit hit hit, know knew known, lay laid laid, lose lost lost, read read read, ride rode ridden, say said said, see saw seen, seek sought sought, sell sold sold,
  send sent sent, shake shook shaken, shrink shrank shrunk, shut shut shut, sit sat sat, slide slid slid, speak spoke spoken, spin spun spun, split split split,
  spread spread spread, stand stood stood, steal stole stolen, stick stuck stuck, strike struck struck, string strung strung, swell swelled swollen, swing swung swung,
  teach taught taught, tear tore torn, tell told told, think thought thought, throw threw thrown, understand understood understood, undo undid undone, redo redid redone,
  wear wore worn, weave wove woven, write wrote written, withdraw withdrew withdrawn, bleed bled bled, feed fed fed, burn burnt burnt, melt melted molten, weep wept wept,
  creep crept crept, kneel knelt knelt, lean leaned leaned, light lit lit, ring rang rung, rise rose risen, begin began begun, show showed shown, sew sewed sewn, saw sawed sawn, cast cast cast, quit quit quit, burst burst burst`).map(
  row => {
    const [base = '', past = '', participle = ''] = row.split(' ')
    return [base, past, participle] as const
  },
)
