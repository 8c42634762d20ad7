import { wordList } from './list'

const set = (text: string): ReadonlySet<string> => new Set(wordList(text))

/** Closed classes of English and the talk's manner, as the tagger and the features use them. */

/** Said while thinking; carries nothing. */
export const FILLERS = set(
  'um, uh, er, erm, ah, eh, hmm, mmm, mhm, oh, ooh, ha, huh, aye, och, yeah, yep, yup, nah, hey, wow, phew, like, well, okay, ok, alright, right, so, now, then, just, actually, basically, literally, honestly, really, simply, obviously, anyway, kinda, sorta, please, also, again, first, next, finally, lastly, only, maybe, perhaps, see, look, listen',
)
/** Opens a sentence without being its verb's subject. */
export const LEAD = set(
  'um, uh, er, erm, ah, oh, okay, ok, alright, right, so, now, then, and, but, first, firstly, second, secondly, third, next, finally, lastly, well, yeah, yep, yes, no, just, also, again, afterwards, always, just, please, only, carefully, gently, slowly, now, actually, basically, anyway, obviously, simply, quickly, good, cool, great, lovely, perfect, likewise, still, there, or, meanwhile, today, here',
)
export const DETERMINERS = set(
  'the, a, an, this, that, these, those, your, my, our, his, her, its, their, each, every, both, all, any, some, another, either, neither, no, what, which, whatever, enough, one, two, three, four, five, six, seven, eight, nine, ten, half, several, few, many, most',
)
export const PRONOUNS = set(
  'it, them, him, her, this, that, these, those, one, everything, something, anything, nothing, yourself, itself, us, me, you, each, both, all',
)
export const SUBJECTS = set(
  'i, you, we, he, she, they, it, that, this, there, who, people, everybody, everyone, somebody, someone, nobody, anybody, folks, guys',
)
export const PREPOSITIONS = set(
  'of, in, on, at, to, for, with, from, by, into, onto, over, under, through, across, against, between, behind, below, beneath, above, around, round, along, past, toward, towards, inside, outside, near, until, without, about, after, before, per, off, out, up, down, upon, beside, underneath, within',
)
export const PARTICLES = set(
  'off, on, out, in, up, down, away, back, apart, together, over, through, through, aside, forward, home, open, shut, closed, loose, tight',
)
export const AUXILIARIES = set(
  "be, is, are, was, were, am, been, being, 's, 're, 'm, have, has, had, 've, 'd, do, does, did, isn't, aren't, wasn't, weren't, haven't, hasn't, hadn't, doesn't, didn't, don't, ain't",
)
export const MODALS = set(
  "can, could, will, would, shall, should, may, might, must, ought, 'll, can't, couldn't, won't, wouldn't, shouldn't, mustn't, cannot, needn't",
)
export const NEGATIONS = set(
  "not, never, no, don't, doesn't, didn't, won't, wouldn't, can't, cannot, couldn't, shouldn't, mustn't, isn't, aren't, wasn't, weren't, haven't, hasn't, hadn't, ain't, nothing, nobody, none, neither, nor, without, needn't, hardly",
)
export const CONDITIONS = set(
  'if, unless, when, whenever, once, until, till, while, whilst, before, after, as, where, wherever, whichever, suppose, supposing, provided, otherwise',
)
export const CAUSES = set("because, since, 'cause, cos, coz, otherwise, therefore, hence, thus")
export const QUESTION_WORDS = set(
  "what, why, how, who, where, which, when, what's, how's, why's, where's, who's, whose",
)
export const TIME_PAST = set(
  'yesterday, ago, once, earlier, used, last, previously, before, already, back, formerly, years, year, decade, childhood, apprentice, apprenticeship',
)
export const PEOPLE = set(
  'guy, guys, bloke, fella, fellow, fellas, lad, lads, mate, uncle, aunt, dad, daddy, father, mother, mum, mom, grandfather, grandmother, grandad, granddad, grandpa, grandma, brother, sister, brother-in-law, sister-in-law, son, daughter, cousin, nephew, niece, wife, husband, friend, buddy, neighbour, neighbor, customer, customers, client, boss, apprentice, trainee, student, colleague, somebody, someone, everybody, everyone, people, folks, man, woman, lady, boy, girl, kid, kids, doctor, teacher, owner, hairdresser, farmer, driver, manager, intern, newbie, beginner, amateur',
)
export const MONEY = set(
  'dollar, dollars, buck, bucks, quid, pound, euro, euros, cent, cents, pence, price, cost, costs, paid, cheap, cheaper, expensive, money, charge, bill, invoice, worth, free, spend, spent, buy, bought, sell, sold, sale, budget, grand',
)
export const EVALUATIONS = set(
  'good, nice, lovely, great, perfect, beautiful, fine, happy, horrible, awful, nasty, gorgeous, terrible, amazing, cool, brilliant, excellent, wonderful, ugly, sweet, disgusting, pretty, neat, clever, fancy, fun, funny',
)
export const BODY = set(
  'finger, fingers, fingertip, fingertips, fingernail, thumb, thumbs, hand, hands, eye, eyes, face, skin, hair, arm, arms, wrist, foot, feet, toe, toes, leg, legs, head, back, lungs, lung, heart, knuckles, knuckle, ear, ears, sleeve, sleeves, tie, ring, jewellery, jewelry, neck, body, blood, bone, bones, palm, teeth, mouth, nose',
)
export const HARM = set(
  'burn, burns, burned, burnt, scald, scalds, blister, blisters, cut, cuts, slice, slices, crush, crushes, crushed, pinch, pinches, pinched, trap, trapped, hurt, hurts, injure, injures, injured, injury, kill, kills, killed, killing, death, dead, die, dies, fatal, blind, blinded, electrocute, electrocuted, electrocutes, shock, shocks, explode, explodes, explosion, fire, flames, flame, ignite, ignites, poison, poisonous, poisoned, toxic, choke, suffocate, asphyxiate, gas, gases, fumes, fume, vapour, vapor, vapours, hospital, ambulance, bleed, bleeding, stitches, amputate, lose, sever, severed, fling, flings, flies, fly, flying, shatter, shatters, whip, whips, kickback, slip, slips, fall, falls, fell, topple, topples, trip, dangerous, danger, hazard, hazardous, hot, scalding, live, sharp, razor, caustic, corrosive, acid, flammable, deadly, lethal, maim, serious, seriously, badly, worse, spit, spits, splash, splashes, spray, sprays, inhale, breathe, breathing, infected, sting, stings, bite, bites, grab, grabs, snatch, snatches, spark, sparks, arc, arcs, jab, stab, impale, voltage, mains, radiation, laser, asbestos, silica, lead, carbon, monoxide, chlorine, pressure, dust',
)
export const DAMAGE = set(
  'damage, damages, damaged, ruin, ruins, ruined, wreck, wrecks, wrecked, destroy, destroys, destroyed, strip, strips, stripped, crack, cracks, cracked, warp, warps, warped, scratch, scratches, scratched, gouge, gouges, score, scores, scored, bend, bends, bent, snap, snaps, snapped, shear, shears, break, breaks, broken, broke, chip, chips, contaminate, contaminates, contaminated, overtighten, overtightening, overfill, overfilled, cross-thread, crossthread, cross, jam, jams, seize, seizes, seized, swell, swells, melt, melts, dissolve, dissolves, attack, attacks, eats, eat, rot, rots, corrode, corrodes, blow, blows, kill, kills, fry, fries, fried, burst, bursts, split, splits, tear, tears, torn, scrap, junk, toast, leak, leaks, distort, distorts, crush, crushes, kink, kinks, mar, dent, dents, round, rounds, force, foul, clog, clogs, short, shorts, overheat, overheats, burn, burns, smash, smashes, shatter, bruise, mushroom, goof, void, spoil, spoils, stain, stains, expensive, rip, rips, glaze, glazes, stretch, stretches, damp, unsafe, wear, wears',
)
export const STATE_WORDS = set(
  'worn, loose, slack, tight, bent, cracked, broken, blocked, clogged, plugged, leaking, leaky, leak, leaks, weeping, dry, dirty, wet, low, high, weak, dead, blown, failed, failing, faulty, bad, gone, shot, done, stuck, seized, sticking, noisy, noise, squeal, squealing, squeals, squeak, squeaks, squeaking, grinding, grind, grinds, knock, knocking, knocks, rattle, rattles, rattling, vibration, vibrate, vibrates, vibrating, wobble, wobbles, wobbling, play, slop, smoke, smoking, milky, cloudy, foamy, rusty, rust, pitted, scored, glazed, black, white, blue, brown, sooty, burnt, flat, hard, soft, spongy, rough, gritty, hissing, hiss, hisses, humming, hum, hums, buzzing, buzz, buzzes, clicking, clicks, click, ticking, chatter, chatters, slipping, slips, drips, dripping, drip, stalls, stall, overheating, jumps, skips, skipping, cuts, trips, tripping, fault, symptom, sign, problem, cause, culprit, trouble, wear, damage, crack, cracks, flakes, flickers, surges, hunting, bind, binds, binding, drag, drags, drifts, pulls, whine, whines, whining, thump, thumping, clunk, clunks, misfire, misfires, smell, smells, sludge, metal, shavings, streaks, uneven, out, off, creeps, blunt, dull',
)
export const HEDGE = set(
  'think, guess, reckon, probably, maybe, roughly, around, about, somewhere, something, remember, memory, sure, pretty, believe, suppose, usually, normally, generally, typically, often',
)
export const ADVICE = set('should, must, ought, need, needs, want, wants, supposed, has, have, got, better')
export const CHAT = set(
  "hello, hi, hiya, hey, bye, goodbye, cheers, thanks, thank, welcome, subscribe, channel, video, videos, watching, watch, comments, comment, episode, folks, everyone, everybody, guys, morning, evening, afternoon, today, tonight, show, camera, name, laugh, joke, joking, kidding, coffee, tea, lunch, dinner, beer, breakfast, pub, weekend, holiday, birthday, weather, story, anyway, whatever, sorry, seriously, ya, y'all, dear, love, god, lord, christ, heck, hell, damn, ok, okay, wee, sir, ma'am, buddy, pal, mate",
)

/** Consequences by gravity, as they are said of people. */
export const DEADLY = set(
  'kill, kills, killed, killing, killer, die, dies, died, death, deaths, fatal, lethal, deadly, electrocute, electrocuted, electrocutes, suffocate, suffocates, suffocated, asphyxiate, drown, drowned, funeral, grave, coffin, undertaker, morgue',
)
export const INJURIES = set(
  'hurt, hurts, injure, injures, injured, injury, injuries, burn, burns, burned, burnt, scald, scalds, scalded, blister, blisters, blind, blinded, blinds, crush, crushes, crushed, maim, maims, maimed, hospital, ambulance, stitches, sever, severed, severs, amputate, amputated, scar, scars, scarred, poison, poisons, poisonous, poisoned, toxic, explode, explodes, exploded, explosion, shock, shocks, shocked, impale, slice, slices, sliced, pinch, pinches, pinched, choke, inhale, cannonball, grenade, bomb, bullet, shrapnel, shatter, shatters, whip, whips, kickback, ignite, ignites, ignited, flash, flashes, fingerprints, casualty, surgeon, bandage, plaster, infection, sting, stings, amputation, dangerous, danger, hazard, hazardous, unsafe',
)
/** What carries the danger. */
export const AGENTS = set(
  'voltage, volts, mains, live, acid, fumes, fume, vapour, vapor, vapours, vapors, gas, gases, flammable, inflammable, pressure, pressurised, pressurized, hot, scalding, steam, sharp, razor, razors, caustic, corrosive, flame, flames, fire, sparks, spark, spring, springs, tension, blade, blades, dust, chlorine, ammonia, monoxide, exhaust, asbestos, silica, solvent, bleach, alkali, lye, glass, swarf, splinters, chips, needle, heavy, weight, falling, moving, spinning, rotating, current, charge, capacitor, battery, batteries, lithium, laser, radiation, molten, petrol, gasoline, fuel, slippery',
)
/** What spoils the work. */
export const SPOILS = set(
  'ruin, ruins, ruined, wreck, wrecks, wrecked, destroy, destroys, destroyed, strip, strips, stripped, crack, cracks, cracked, snap, snaps, snapped, shear, shears, sheared, warp, warps, warped, scratch, scratches, scratched, gouge, gouges, score, scores, chip, chips, tear, tears, torn, rip, rips, ripped, damage, damages, damaged, contaminate, contaminates, burst, bursts, split, splits, jam, jams, seize, seizes, seized, melt, melts, melted, swell, swells, swelled, kink, kinks, dent, dents, bend, bends, bent, break, breaks, broken, chew, chews, mangle, kills, fry, fries, fried, scrap, junk, blows, leak, leaks, flood, distort, distorts, overtighten, overfill, rot, rots, eats, dissolves, goner, toast, cook, cooks, cooked, burns, smash, smashes, crushes, mar, mars, stain, stains, scuff, cross-thread, round, rounds, pop',
)
/** Calls for care. */
export const CARE = set(
  'careful, carefully, mind, beware, caution, warning, danger, dangerous, never, avoid, watch, clear, away, safe, safely, safety, gently, slow, slowly',
)
