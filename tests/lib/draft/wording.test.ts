import { describe, expect, it } from 'vitest'
import { readSentence } from '@/lib/draft/feature'
import { wordStep } from '@/lib/draft/wording'

/** The sentence, what the step says of it. Sentences are invented, each for a way of talking. */
const TABLE: readonly (readonly [said: string, text: string])[] = [
  // orders and lead-ins
  ['Okay, so now just go ahead and undo the four screws.', 'Undo the four screws.'],
  ["What you're gonna do is slide the tray out of its rails.", 'Slide the tray out of its rails.'],
  ['Then have a good look at the seal.', 'Look at the seal.'],
  ['The first thing I did was write down the reading.', 'Write down the reading.'],
  ['Would you take those two screws out of the lid?', 'Take those two screws out of the lid.'],
  [
    "Breaker off, a lock of your own on it, and press start to see that it's dead.",
    "Switch off the breaker, put a lock of your own on it and press start to see that it's dead.",
  ],
  ["There'll be a cup of coolant left in it, so hold a tray under it.", 'Hold a tray under it.'],
  ['Removing the blower from the back plate.', 'Remove the blower from the back plate.'],
  [
    'Slide the tray in, shut the door and run it at full heat for half an hour to see that the lamp goes out.',
    'Slide the tray in, shut the door and run it at full heat for half an hour.',
  ],
  ["There's eight hex head screws round the blower.", 'Undo the eight hex head screws round the blower.'],
  [
    'Make sure the wheel spins free, an eighth of an inch off the housing all the way round.',
    'Make sure the wheel spins free.',
  ],
  // one order in two clauses
  ['Start it up and let the oil find its own level.', 'Start it up and let the oil find its own level.'],
  ['Wipe the rim before you ever lift that lid.', 'Wipe the rim before you ever lift that lid.'],
  ['Hook the strap on, and try and pull it off again.', 'Hook the strap on and try to pull it off.'],
  // what things are for, are given, do by themselves
  ['There is a mesh to keep hands out and catch the dust, so pop the clips.', 'Pop the clips.'],
  ['Bits and dust go in a bag, tie it shut.', 'Put the dust in a bag and tie it shut.'],
  ['You gotta let it drip for a minute.', 'Let it drip for a minute.'],
  ['Last job down here, pull the drain plug.', 'Pull the drain plug.'],
  ['There are two set screws in the hub, so each gets a dab of threadlock.', 'Give each a dab of threadlock.'],
  ['Strainer wants scrubbing and all.', 'Scrub the strainer.'],
  ['The baffle wants scraping and rinsing.', 'Scrape and rinse the baffle.'],
  ['Nuts get twelve newton metres.', 'Tighten the nuts to twelve newton metres.'],
  ['The baffle needs scraping and the screen needs washing.', 'Scrape the baffle and wash the screen.'],
  ['Two more screws hold the tray to the case, take the tray out.', 'Undo two more screws and take the tray out.'],
  // what looks like an order or a deed by its first word
  ['Mould cleaner is sprayed onto the cloth.', 'Spray the mould cleaner onto the cloth.'],
  ['Overflow bottle gets filled to the cold line.', 'Fill the overflow bottle to the cold line.'],
  ['On go the new rollers.', 'Fit the new rollers.'],
  ['The belt is cracked across the ribs, so on goes the new one.', 'Fit the new one.'],
  ['Mask on, and no compressed air in a bakehouse.', 'Put on the mask and do not use compressed air in a bakehouse.'],
  ["There's a catch you press, and turn the head to the left.", 'Turn the head to the left.'],
  ['Outer nut off completely.', 'Remove the outer nut completely.'],
  ['Comb it with a dog comb.', 'Comb it with a dog comb.'],
  ['Spray dry graphite on the cups.', 'Spray dry graphite on the cups.'],
  ['Helmets, chin straps done up.', 'Put on helmets.'],
  ['Tap round it with a nylon hammer.', 'Tap round it with a nylon hammer.'],
  ['Shovel the stones out by hand.', 'Shovel the stones out by hand.'],
  ['Lamp bolt 4 newton metres.', 'Tighten the lamp bolt to 4 newton metres.'],
  ['Isolator off at the wall, not just the switch on the front.', 'Switch off the isolator at the wall.'],
  ['So it just drops out on your toes.', 'Do this: it drops out on your toes.'],
  ['Gloves are worn throughout.', 'Wear the gloves throughout.'],
  // without a comma
  ['to get the shroud off undo the six screws', 'Undo the six screws.'],
  ["the bush comes out with a puller don't score the bore", 'Remove the bush with a puller and do not score the bore.'],
  ['drain the coolant into a bucket it holds about nine litres', 'Drain the coolant into a bucket.'],
  ["slacken the grub screw it's a 3 mil hex", 'Slacken the grub screw.'],
  ['coupling back on with the new spider', 'Refit the coupling with the new spider.'],
  ['Mark the hole it came from.', 'Mark the hole it came from.'],
  // who does it
  ['With a soft brush we coax it from the race.', 'Coax it from the race with a soft brush.'],
  ['Tweezers will tease it free.', 'Tease it free with the tweezers.'],
  ['Now I turn its face to the wall.', 'Turn its face to the wall.'],
  ['The technician inspects the head under a magnifier.', 'Inspect the head under a magnifier.'],
  ['I took the guard off and dropped the key in the box.', 'Take the guard off and drop the key in the box.'],
  ['I hang the plug up where I can see it.', 'Hang the plug up where you can see it.'],
  // passives and pasts
  ['The strainer is lifted out with tweezers and is brushed.', 'Lift the strainer out with tweezers and brush it.'],
  ["The doctor's stool is moved away.", "Move away the doctor's stool."],
  ['The table was lowered right down.', 'Lower the table right down.'],
  ['Wheels blocked on both sides.', 'Block the wheels on both sides.'],
  ['The isolating valve is to be closed.', 'Close the isolating valve.'],
  ['The old pieces are put in the bag.', 'Put the old pieces in the bag.'],
  // where a thing goes
  ['Off comes the presser foot.', 'Remove the presser foot.'],
  ['In she goes with a twist.', 'Put it in with a twist.'],
  ['Up with the front on the ramps.', 'Raise the front on the ramps.'],
  ['Pin back in the slot.', 'Refit the pin in the slot.'],
  ['Cover back on with all four screws.', 'Refit the cover with all four screws.'],
  ['Needles off the lock.', 'Remove the needles from the lock.'],
  ['Hands out.', 'Keep your hands out.'],
  ['Key switch to up.', 'Set the key switch to up.'],
  ['Handbrake on.', 'Apply the handbrake.'],
  ['Handbrake up.', 'Apply the handbrake.'],
  ['Bolts down again, corner to corner.', 'Tighten the bolts.'],
  ['Cap screws in a star.', 'Tighten the cap screws in a star.'],
  ['Bolts in the cross member.', 'Put the bolts in the cross member.'],
  ['Gloves on and goggles on.', 'Put on the gloves and goggles.'],
  ['Gloves on the bench.', 'Put the gloves on the bench.'],
  ['Hard hats on.', 'Put on the hard hats.'],
  ['Nozzle away from people.', 'Keep the nozzle away from people.'],
  ['Lip end away from the stop.', 'Move the lip end away from the stop.'],
  ['The spirit goes back in its tin.', 'Put the spirit back in its tin.'],
  ['The isolator on the leg goes round to off.', 'Turn the isolator on the leg to off.'],
  ['This little mesh lifts straight out.', 'Lift this little mesh out.'],
  ['First gallon goes down the sink.', 'Put the first gallon down the sink.'],
  ['Fixed end in its hole.', 'Put the fixed end in its hole.'],
  ['Old one out.', 'Remove the old one.'],
  ['New gasket, spring, cap.', 'Fit the new gasket, spring and cap.'],
  ["Gloves and glasses, and they don't come off you till it's dead.", "Keep them on until it's dead."],
  ['Arrow up.', 'Put the arrow up.'],
  // a verb taken for a noun
  ['Hose that down with oil.', 'Hose that down with oil.'],
  ['Line up your paint mark.', 'Line up your paint mark.'],
  ['Brush with a wire brush inside and outside.', 'Brush with a wire brush inside and outside.'],
  ['Drive cover on, four screws.', 'Fit the drive cover.'],
  // conditions stay, behind the action, with a small letter
  [
    'While the tyre is still on the ground, crack the nuts loose.',
    'Crack the nuts loose while the tyre is still on the ground.',
  ],
  ["If it isn't, slide the hook along its shaft.", 'Slide the hook along its shaft if necessary.'],
  ["If it's tight I add a shim.", "Add a shim if it's tight."],
  ['Before you open the lid, bleed the pressure off.', 'Bleed the pressure off before you open the lid.'],
  ['Turn it until it stops.', 'Turn it until it stops.'],
  // acronyms and sizes keep their letters
  ['ABS wire off the bracket.', 'Remove the ABS wire from the bracket.'],
  ['Undo the M12 bolt.', 'Undo the M12 bolt.'],
  // false starts and ends
  ['Put the jack under the, um, where the two notches are.', 'Put the jack under where the two notches are.'],
  ['Bring the handle towards you.', 'Bring the handle towards you.'],
  ['Turn the knob to the right.', 'Turn the knob to the right.'],
  // "not" stays where it was
  ["Don't force the lever.", 'Do not force the lever.'],
  ['Clean that hole with a soft thread, never a nail.', 'Clean that hole with a soft thread, never a nail.'],
  ['Old cord we never reuse.', 'Do not reuse the old cord.'],
  ['The old oil in the blue drum, not the skip.', 'Put the old oil in the blue drum, not the skip.'],
  ['long nose pliers on the connector not the wire', 'Put the long nose pliers on the connector not the wire.'],
  ['Never lift it without gloves.', 'Do not lift it without gloves.'],
  ['Wipe the seat, but no oil is to be put there.', 'Wipe the seat and do not put the oil.'],
  ["Wash the gloves, or you've moved it to your fingers.", 'Wash the gloves.'],
  ['No grease on the faces.', 'Do not use grease on the faces.'],
  // "again" only goes where it adds nothing
  ['Wipe it again and again.', 'Wipe it again and again.'],
  ['Wipe it with spirit again.', 'Wipe it with spirit.'],
  // a phrase or a thing in front of passives, agents and moves
  ['Before any spanner, steam must be let off.', 'Let off the steam before any spanner.'],
  [
    'From the rear the shroud is unclipped, together with its spring.',
    'Unclip the shroud from the rear, together with its spring.',
  ],
  ['Thereafter is the first tray withdrawn from the rack.', 'Withdraw the first tray from the rack.'],
  ['Its rubber hose, a thin grey pipe, is pulled off.', 'Pull off its rubber hose.'],
  ['The flange ring, new, goes on the pump.', 'Put the flange ring on the pump.'],
  ['The thrust collar has to come off.', 'Remove the thrust collar.'],
  ['The liner lifts out with a hooked wire.', 'Lift the liner out with a hooked wire.'],
  ['The knob pulls straight off.', 'Pull the knob straight off.'],
  ['Rubber feet peel off with a plastic wedge.', 'Peel the rubber feet off with a plastic wedge.'],
  ["If it's loose, one adds a shim.", "Add a shim if it's loose."],
  ['The pegs one taps in with a mallet.', 'Tap the pegs in with a mallet.'],
  ['The drawer I pull out fully.', 'Pull the drawer out fully.'],
  ['To free it she turns the knob a hair with a pin.', 'Turn the knob a hair with a pin to free it.'],
  ['You hoik it out with a bent pin.', 'Hoik it out with a bent pin.'],
  ['Hinges, unscrew.', 'Unscrew the hinges.'],
  ['The table gets a wipe with alcohol.', 'Give the table a wipe with alcohol.'],
  ['Do write the number on the lid.', 'Write the number on the lid.'],
  ['Once more with a dry cloth.', 'Repeat with a dry cloth.'],
  ['The other side likewise.', 'Do the other side in the same way.'],
  ['Same again for the lower one.', 'Do the same for the lower one.'],
  // orders by names alone
  ['A smear of wax on each.', 'Put a smear of wax on each.'],
  ['Shavings into a sack.', 'Put the shavings into a sack.'],
  ['Planks under the bench frame.', 'Put the planks under the bench frame.'],
  ['Left edge first, into the groove.', 'Put the left edge first, into the groove.'],
  ['Gloves for both of us.', 'Put on gloves.'],
  ['Bottle brush, twice, both ends.', 'Use a bottle brush, twice, both ends.'],
  ['The platen with a damp cloth.', 'Clean the platen with a damp cloth.'],
  ['The dial to 40.', 'Set the dial to 40.'],
  ['Hood, four catches, off.', 'Remove the hood, four catches.'],
  ['Three strokes on each tooth.', 'Give three strokes on each tooth.'],
  ['Quarter turn at a time.', 'Make a quarter turn at a time.'],
  ['Eight newton metres, plus or minus one.', 'Tighten to eight newton metres, plus or minus one.'],
  [
    'Clamp bolts, torque wrench, 22 newton metres.',
    'Tighten the clamp bolts to 22 newton metres with a torque wrench.',
  ],
  ['Cleats, torque wrench, I reckon 60 newton metres.', 'Tighten to 60 newton metres.'],
  ['Then the final torque is nine newton metres.', 'Tighten to nine newton metres.'],
  ['Off at the wall, not the panel.', 'Switch off at the wall, not the panel.'],
  ['With a brass brush, always along the grain.', 'Use a brass brush, always along the grain.'],
  ['Clamp bolts slack, four of them.', 'Slacken the clamp bolts, four of them.'],
  ['Cap, a bit of grease round the rim.', 'Put a bit of grease round the rim.'],
  ["I'll have my goggles on.", 'Put on the goggles.'],
  ['The tape stays on until the glue sets.', 'Keep the tape on until the glue sets.'],
  ['The old lamp goes to the depot.', 'Take the old lamp to the depot.'],
  ['Back the nuts off the way they went on.', 'Back the nuts off the way they went on.'],
  // what for is not what is done
  ['Pull the plug and put a lock on it, so nobody plugs it back in.', 'Pull the plug and put a lock on it.'],
  ['Turn the plate over so the fresh edge points out.', 'Turn the plate over.'],
  ["Prop the lid so it can't drop.", 'Prop the lid.'],
  ["The pump is full, so we don't open the bleeder.", 'Do not open the bleeder.'],
  // fasteners named at the head of what undoes are undone
  [
    'Two bolts on the hood, 17 millimetre socket, and swing the hood back.',
    'Undo two bolts on the hood with a 17 millimetre socket and swing the hood back.',
  ],
  [
    'Three bolts on each blade, and lift the blade straight off.',
    'Undo three bolts on each blade and lift the blade straight off.',
  ],
  ['Four screws, star 20 driver, cover off.', 'Undo four screws with a star 20 driver and remove the cover.'],
  ['Two screws in the bracket, and tighten them evenly.', 'Fit two screws in the bracket and tighten them evenly.'],
  ['Three screws hold the lid, lift the lid off.', 'Undo three screws and lift the lid off.'],
  ['Hood shut, both bolts snug, lock off, plug in.', 'Shut the hood, snug both bolts, remove the lock and plug in.'],
  // running captions put several together
  ['isolator on tag off padlock off', 'Switch on the isolator, remove the tag and remove the padlock.'],
  ['engine off key out', 'Switch off the engine and remove the key.'],
]

describe('[D1] a step says what is done, as an order', () => {
  it.each(TABLE)('%s', (said, text) => {
    expect(wordStep(readSentence(said)).text).toBe(text)
  })
})

describe('[D1] where no action is named', () => {
  it.each([
    ['New idler.', 'Fit the new idler.'],
    ['A photo of the pipes.', 'Take a photo of the pipes.'],
    ['Gloves.', 'Put on gloves.'],
    ['Caliper, two bolts at thirty.', 'Do this: caliper, two bolts at thirty.'],
    // how it is, what happens, a figure taken back, a fragment
    ['A child gets a shock.', 'Do this: a child gets a shock.'],
    ['My van has two bolts missing.', 'Do this: my van has two bolts missing.'],
    [
      "Twelve newton metres, no, wait, that's the other one, nine.",
      "Do this: twelve newton metres, no, wait, that's the other one, nine.",
    ],
    ['Before you open.', 'Do this: before you open.'],
    ['Tab first, then your screw, then the plug.', 'Do this: tab first, then your screw, then the plug.'],
  ])('%s asks', (said, text) => {
    const worded = wordStep(readSentence(said))
    expect(worded.text).toBe(text)
    expect(worded.question).toMatch(/What is done here/)
  })
  it.each([
    ['Eight screws, torx twenty.', 'Undo eight screws, torx twenty.'],
    ['Four bolts on the bracket, and hold the motor.', 'Undo four bolts on the bracket and hold the motor.'],
    ['Idler, one bolt, sixteen.', 'Remove the idler, one bolt, sixteen.'],
    ['The lid is held by two screws.', 'Remove the lid, two screws.'],
    ['The drum is just one bolt at the back.', 'Remove the drum, one bolt at the back.'],
    ["End panel's got two screws up inside, five-sixteenths socket.", 'Remove the end panel, two screws up inside.'],
  ])('%s guesses that a part named with what holds it comes off, and asks', (said, text) => {
    const worded = wordStep(readSentence(said))
    expect(worded.text).toBe(text)
    expect(worded.question).toMatch(/Is this what is done/)
  })
})

describe('[D1] what the sentences around suggest', () => {
  const word = (before: string, said: string, after: string) =>
    wordStep(readSentence(said), readSentence(before), readSentence(after))

  it('is said, and asked about', () => {
    expect(word('Now the hood has to come off.', 'Eight screws, torx twenty.', 'Good.').text).toBe(
      'Undo eight screws, torx twenty.',
    )
    expect(word('Good.', 'Eight screws, torx twenty.', 'Tighten those crosswise.')).toEqual({
      text: 'Fit eight screws, torx twenty.',
      question: 'Is this what is done? The talk names no action; what is said here and around it suggests this one.',
    })
    expect(word('Paste it.', 'Ten minutes.', 'Good.').text).toBe('Wait ten minutes.')
  })
  it('is not said where they tell both ways', () => {
    expect(word('Undo the old one and fit the new.', 'Eight screws, torx twenty.', 'Good.').text).toMatch(/^Do this/)
  })
})

describe('[D1] what hands point at', () => {
  const word = (before: string, said: string) => wordStep(readSentence(said), readSentence(before))

  it('gets the name of the one thing the sentence before names', () => {
    expect(word('There is a circlip.', 'Pull that.').text).toBe('Pull the circlip.')
    expect(word('Next the two washers.', 'Wipe them with a rag.').text).toBe('Wipe the two washers with a rag.')
  })
  it('stays open where two would do, or none of its number', () => {
    expect(word('There is a circlip behind the gasket.', 'Pull it out.').text).toBe('Pull it out.')
    expect(word('There is a circlip.', 'Wipe them with a rag.').text).toBe('Wipe them with a rag.')
  })
  it('is not what the sentence says around it', () => {
    const worded = wordStep(
      readSentence('Push this guy through the hole in the drum.'),
      readSentence('Swing the hood back.'),
      readSentence('The locking pin?'),
    )
    expect(worded).toEqual({
      text: 'Push the locking pin through the hole in the drum.',
      question: 'Is “this guy” the locking pin? The talk names it around here.',
    })
    expect(word('Good.', 'Push this guy through the hole.').text).toBe('Push the part shown through the hole.')
    expect(word('Good.', 'Turn this guy, the drain screw.')).toEqual({ text: 'Turn the drain screw.' })
  })
  it('is asked about where nothing is named', () => {
    expect(word('Good.', 'Pull that.').question).toMatch(/“that”/)
    expect(word('Good.', 'Pull these guys out.')).toEqual({
      text: 'Pull the parts shown out.',
      question: 'What is “these guys”? The talk does not name it nearby.',
    })
  })
})
