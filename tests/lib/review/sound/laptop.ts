import { readSound } from './notation'

export const laptop = readSound(
  'laptop',
  `
title: Swapping the cooling fan of a laptop
equipment: 15-inch laptop with removable bottom case
- Shut down the laptop and unplug the charger
- Remove the ten screws of the bottom case
+ Phillips 0 driver
- Pry the bottom case off with a plastic pick >case
+ plastic pick
! caution battery: A pierced battery can burn; keep metal tools away from it
- Disconnect the battery connector >battery {before fancable}
- Unplug the fan cable {after fancable} >fan
- Undo the three fan screws
- Lift the fan out >fanout
- Set the new fan in place <fanout
* fan
- Drive in the three fan screws
= fan screw torque: 0.15..0.2 N.m @manual service guide
+ torque screwdriver
- Plug the fan cable back in <fan
- Reconnect the battery connector <battery
- Snap the bottom case back on <case
- Reinstall the ten screws
- Power on the laptop and run the hardware test {proves function}
? Fan spins up without rattling {proves function}
- Drop the old fan off at an electronics recycler
`,
)
