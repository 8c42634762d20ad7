import { readSound } from './notation'

export const lathe = readSound(
  'lathe',
  `
title: Changing the headstock oil of a gear-head lathe
equipment: gear-head engine lathe, 330 mm swing, splash-lubricated headstock
months: 12
! warning entanglement: A turning chuck catches sleeves and hair and can maim; keep clear and take the chuck key out
- Run the spindle at low speed to warm the oil >warm {before off}
= warm-up time: 5..10 min @manual section 4
- Turn off the wall isolator >power {after off} {before cover}
! danger electric-shock: The motor terminals carry mains voltage that kills; isolate and lock out before opening any cover
- Hang your padlock and tag on the isolator >lock
+ padlock and tag
- Take off the end guard >guard {after cover}
+ 5 mm hex key
- Slide a drain pan under the headstock {before drain}
+ drain pan
! caution burn: Warm oil burns skin; wear nitrile gloves while it drains
- Unscrew the drain plug >plug {after drain} {before flow}
+ 14 mm hex key
+ nitrile gloves
- Let the oil run out >oil {after flow}
= draining time: 15.. min @manual section 4
? Drained oil carries no metal flakes
- Screw the drain plug back in with a new sealing washer <plug
* sealing washer
= drain plug torque: 30..35 N.m @manual torque table
+ torque wrench
- Lift off the filler cap >cap
! notice contamination: Dirt in the filler ruins the gears; wipe around the opening first
- Pour in fresh headstock oil through a strainer funnel <oil
+ strainer funnel
* ISO VG 32 headstock oil
= headstock oil capacity: 4.8..5.2 L @plate headstock plate
? Oil stands between the two lines of the sight glass
- Press the filler cap home <cap
- Put the end guard back on <guard
- Take your padlock and tag off the isolator <lock
- Switch the isolator on <power
- Start the spindle at its lowest speed {proves function}
? No oil drips from the drain plug {proves leak}
? Spindle runs quietly in every gear {proves function}
- Take the used oil to a collection point {proves waste}
`,
)
