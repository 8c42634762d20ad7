import { readSound } from './notation'

export const bicycle = readSound(
  'bicycle',
  `
title: Servicing the cup-and-cone front hub of a bicycle
equipment: bicycle with quick-release front wheel, rim brakes
months: 12
- Clamp the bicycle in a work stand
+ work stand
- Unhook the brake cable noodle >noodle
- Open the quick release >lever
- Drop the front wheel out of the fork >wheel
- Pull the quick-release skewer out of the axle >skewer
- Hold the left cone with a cone spanner
+ 13 mm cone spanner
- Loosen the left lock nut anticlockwise >locknut
+ 17 mm spanner
- Unscrew the left cone >cone
- Draw the axle out >axle
- Fish the bearing balls out into a magnetic dish
+ magnetic dish
! caution skin: Degreaser dries skin and irritates eyes; wear gloves and work in fresh air
- Wipe the cups with a rag and degreaser
* rag
* degreaser
+ nitrile gloves
? Cups and cones show no pits
- Pack each cup with fresh grease
* bearing grease
- Press new balls into the grease
* bearing balls
= number of balls per side: 10..10 1 @manual hub sheet
- Slide the axle back in <axle
- Turn the left cone down until it touches the balls <cone
- Tighten the left lock nut against the cone <locknut
= lock nut torque: 15..20 N.m @manual hub sheet
+ torque wrench
? Axle turns freely without play {proves function}
- Slip the skewer back into the axle <skewer
- Set the wheel back into the fork <wheel
! warning crash: An open quick release lets the wheel drop out and the rider can be killed; close it until it leaves a mark on the palm
- Close the quick release <lever
- Hook the brake noodle back into its holder <noodle
? Brake stops the wheel when the lever is pulled {proves brake}
? Wheel spins without wobbling {proves function}
- Put greasy rags into the oily-waste bin {proves waste}
`,
)
