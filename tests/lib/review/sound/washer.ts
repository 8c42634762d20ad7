import { readSound } from './notation'

export const washer = readSound(
  'washer',
  `
title: Replacing the drain pump of a washing machine
equipment: front-loading household washing machine with service flap
! danger electric-shock: Live parts inside kill; unplug the machine before you open it
- Pull the mains plug out of the wall socket >mains {before panel}
- Shut the water supply tap >tap
- Set a shallow tray under the service flap {before drain}
+ shallow tray
- Open the service flap >flap
! caution burn: Water from a hot wash scalds skin; let it cool first
- Drain the remaining water through the emergency hose {after drain}
= water temperature before draining: ..40 Cel @manual safety page
! warning crush: A toppling machine can crush feet; have a second person hold it
- Lean the machine back against a wall
- Undo the four screws of the base panel >base {after panel}
+ Torx T20 driver
- Photograph the wires at the pump {before wires}
+ camera
- Unplug the pump connector >connector {after wires}
- Release the hose clips with clip pliers >hose
+ clip pliers
- Pull the two hoses off the pump stub >stub
- Twist the old pump out of its seat >pump
- Push the new pump into its seat until it locks <pump
* drain pump
- Slide both hoses onto the pump stub <stub
- Squeeze the hose clips over the beads of the hoses <hose
? Each clip sits behind its bead
- Plug the pump connector back in <connector
- Screw the base panel on <base
= base panel screw torque: 1.5..2 N.m @manual service sheet
+ torque screwdriver
- Set the machine upright
- Close the service flap <flap
- Open the water supply tap <tap
- Plug the machine into the wall socket <mains
- Run a rinse cycle with the drum empty {proves function}
? No water drips under the machine while it drains {proves leak}
? Drum is empty of water within the time {proves function}
= pump-out time: ..2 min @manual test table
- Hand the old pump in at an electrical recycling point
`,
)
