import { readSound } from './notation'

export const mower = readSound(
  'mower',
  `
title: Sharpening the blade of a rotary lawn mower
equipment: walk-behind petrol rotary lawn mower, single blade
months: 6
- Stand the mower on a flat surface outdoors
- Pull the spark plug lead off {before tip} >spark
! warning laceration: A blade that starts by itself cuts off fingers; take the spark plug lead off first
- Put on cut-resistant gloves
+ cut-resistant gloves
- Turn the fuel tap off >fuel
! danger fire: Spilt petrol ignites and burns; work outdoors away from flames and wipe up spills
- Tip the mower onto its side with the air filter up {after tip}
- Mark the lower face of the blade with chalk
* chalk
- Wedge the blade with a block of wood
+ block of wood
- Undo the blade bolt anticlockwise >bolt
+ 15 mm socket
- Lift the blade off its adapter >blade
- Scrape the grass off the deck
+ plastic scraper
- Clamp the blade in the vice
+ bench vice
- Put on safety glasses
+ safety glasses
- File both cutting edges at the original angle
+ flat file
= cutting edge angle: 28..32 deg @manual blade page
? Blade hangs level on a nail
- Set the blade back on its adapter <blade
! danger thrown-object: A loose blade flies off and kills; torque the bolt to the maker's value
- Fit the blade bolt with a new spring washer <bolt
* spring washer
= blade bolt torque: 50..60 N.m @manual blade page
+ torque wrench
- Take the block of wood away
- Set the mower upright
- Turn the fuel tap on <fuel
- Push the spark plug lead back on <spark
! danger carbon-monoxide: Exhaust gas kills without warning; run the engine only in the open air
- Start the engine outdoors {proves function}
? Blade stops soon after the handle is released {proves device}
= blade stopping time: ..3 s @manual safety page
? Mower runs without shaking {proves function}
`,
)
