import { readSound } from './notation'

export const brakes = readSound(
  'brakes',
  `
title: Renewing the front brake pads of a small van
equipment: small panel van, front sliding-caliper disc brakes
months: 24
- Park on firm, level ground
- Pull the parking brake on
- Wedge chocks behind both rear wheels {before jack}
+ wheel chocks
- Crack the wheel bolts loose while the tyre is on the ground >bolts
+ breaker bar
! danger crush: A vehicle that drops off a jack will kill you; never reach under it until it rests on a stand
- Jack up the front corner at the marked point >raised {after jack} {before under}
+ trolley jack
- Rest the van on an axle stand {after under}
+ axle stand
? Van does not move when pushed
- Take the road wheel off >wheel
- Undo the lower caliper bolt >caliper
+ 13 mm socket
- Swing the caliper up and tie it with wire
* wire
! notice damage: Never hang the caliper on its hose; the hose is damaged
! caution dust: Brake dust harms the lungs; wear a dust mask and never blow it out
- Slide out both worn pads >pads
+ dust mask
! warning fire: Brake cleaner vapour ignites and irritates eyes and lungs; keep flames away, wear gloves and air the place
- Clean the bracket with brake cleaner
* brake cleaner
? Brake disc is thicker than its limit
= minimum disc thickness: 20.. mm @plate stamped on the disc
+ micrometer
- Press the piston back squarely
+ piston tool
- Fit the new pads with their springs <pads
* brake pads
- Swing the caliper down and tighten its bolt <caliper
= caliper bolt torque: 26..30 N.m @manual brake chapter
+ torque wrench
- Put the road wheel back on <wheel
- Let the van down off the stand <raised
- Torque the wheel bolts crosswise <bolts
= wheel bolt torque: 105..115 N.m @manual wheel chapter
- Pump the pedal until it is firm
? Brake holds the van when it is pushed standing still {proves brake}
? Brake stops the van at walking pace on an empty yard {proves brake}
= pedal free travel: ..25 mm @manual brake chapter
- Recheck the wheel bolt torque after 50 km {proves retorque}
- Take the old pads and the brake cleaner rags to the hazardous-waste collection point {proves waste}
`,
)
