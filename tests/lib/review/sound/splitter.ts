import { readSound } from './notation'

export const splitter = readSound(
  'splitter',
  `
title: Renewing a hydraulic hose of a log splitter
equipment: electric-motor hydraulic log splitter, tractor-height bed
- Run the ram all the way in
! danger electric-shock: Mains voltage kills; pull the plug before you touch the motor side
- Unplug the splitter from the mains >mains
! danger injection: A jet of hydraulic oil goes through skin and can cost a limb; release the pressure and never feel for leaks by hand
- Work the control lever both ways to release the pressure {before hose}
? Gauge reads zero
- Place a drip tray below the hose {before spill}
+ drip tray
- Mark the routing of the hose with tape
* masking tape
- Undo both hose unions with two spanners >union {after hose} {after spill}
+ 22 mm spanner
+ 19 mm spanner
- Cap the open ports with plastic plugs >caps
* plastic plugs
- Offer up the new hose along the old routing
* hydraulic hose
- Pull the plastic plugs out of the ports <caps
- Tighten both unions <union
= hose union torque: 40..50 N.m @manual hose table
+ torque wrench
? Hose is not twisted and clears the ram
- Top up the tank with hydraulic oil
* hydraulic oil
= tank level below the filler: 30..40 mm @plate tank label
- Plug the splitter back in <mains
- Move the ram slowly out and back three times {proves function}
? No oil weeps from either union when checked with card {proves leak}
? Ram moves smoothly without chatter {proves function}
- Take the old hose and the spilt oil to a collection point {proves waste}
`,
)
