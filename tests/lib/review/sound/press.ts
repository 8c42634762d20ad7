import { readSound } from './notation'

export const press = readSound(
  'press',
  `
title: Renewing the seals of a workshop press cylinder
equipment: 20-tonne workshop press with hand pump
- Run the ram down onto a wooden block
- Open the release valve to drop the pressure {before line} >rv
! danger hydraulic: Oil under pressure cuts through skin; see the gauge at zero before you undo a line, and never feel for leaks
- Put a tray beneath the cylinder {before spill}
+ tray
- Undo the hydraulic line {after line} {after spill} >line
+ 17 mm spanner
- Plug the line with a blanking plug
* blanking plug
- Unscrew the gland nut >gland
+ hook spanner
- Draw the piston out >piston
- Pick the old seals out of their grooves >seals
- Oil the new seals
* seal kit
* hydraulic oil
- Work the new seals into their grooves <seals
- Push the piston back in <piston
- Screw the gland nut home <gland
= gland nut torque: 110..130 N.m @manual torque table
+ torque wrench
- Take the blanking plug out
- Reconnect the hydraulic line <line
- Close the release valve <rv
- Top up the pump reservoir with hydraulic oil
- Pump the ram up to half load and hold it {proves function}
= holding time: 5.. min @manual test page
? No oil seeps past the gland {proves leak}
? Gauge does not fall within the time {proves function}
- Take the waste oil to a collection point {proves waste}
`,
)
