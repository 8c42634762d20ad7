import { readSound } from './notation'

export const toilet = readSound(
  'toilet',
  `
title: Replacing the fill valve of a toilet
equipment: close-coupled toilet, bottom-entry fill valve
- Turn the shutoff valve clockwise to close the water >water {before drainit}
- Flush the toilet to empty the tank {after drainit}
- Take the tank lid off and set it on a towel >lid
! notice damage: The lid is brittle and cracks; lay it flat on something soft
- Soak up the rest of the water with a sponge
+ sponge
- Disconnect the supply hose from the fill valve >hose
+ slip-joint pliers
- Spin off the plastic lock nut below the tank >nut
- Lift the old fill valve out of the tank >valve
- Adjust the height of the new fill valve
- Drop the new fill valve into the hole <valve
* fill valve
- Hand-tighten the plastic lock nut <nut
- Hook up the supply hose <hose
- Clip the refill tube onto the overflow pipe
- Turn the water back on <water
? No water drips at the lock nut or the hose {proves leak}
- Set the tank lid back in place <lid
- Flush twice and watch the tank refill {proves function}
? Water stops one inch below the overflow {proves function}
`,
)
