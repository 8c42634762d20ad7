import { readSound } from './notation'

export const fan = readSound(
  'fan',
  `
title: Changing the drive belts of a rooftop extract fan
equipment: belt-driven extract fan, three-phase motor, indoor plant room
months: 6
- Switch off the fan at its local isolator >power {before guard}
! danger electric-shock: The supply kills; isolate, lock out and prove dead before opening, and leave wiring to a licensed electrician under local codes
- Fix your lock and danger tag to the isolator >lock
+ lock and danger tag
- Prove the motor terminals dead with a voltage tester
+ voltage tester
! warning entanglement: A fan can windmill and take fingers off; wait until it stands still and block it
- Remove the belt guard >guard {after guard}
+ 10 mm spanner
- Slacken the four motor slide bolts >slide
+ 17 mm spanner
- Wind the motor towards the fan with the adjusting screw
- Lift both old belts off the pulleys >belts
? Pulley grooves are not dished
= groove wear: ..0.8 mm @manual belt maker's guide
+ groove gauge
! notice damage: Never lever belts over the rim; the cords tear inside
- Lay the new belts into the grooves by hand <belts
* matched pair of V-belts
- Wind the motor back with the adjusting screw until the belts are taut
? Pulleys are in line along a straightedge
+ straightedge
= pulley misalignment: ..1.5 mm @manual belt maker's guide
- Tighten the four motor slide bolts evenly <slide
= motor slide bolt torque: 45..55 N.m @manual torque table
+ torque wrench
? Belt deflects within range at mid-span
= belt deflection: 9..11 mm @manual belt maker's guide | 30 N at mid-span
+ tension gauge
- Refit the belt guard <guard
- Remove your lock and tag <lock
- Switch the isolator on <power
- Start the fan from the panel {proves function}
? Fan turns in the direction of the arrow {proves rotation}
? Motor current is below its plate value {proves function}
= motor current: ..7.4 A @plate motor plate
+ clamp meter
- Put the old belts into the rubber recycling bin
`,
)
