import { readSound } from './notation'

export const fork = readSound(
  'fork',
  `
title: Changing the fork oil of a motorcycle
equipment: motorcycle with conventional 41 mm fork
months: 24
- Stand the motorcycle on a paddock stand
! danger crush: A motorcycle that topples will crush you; strap it down before lifting the front
- Support the frame with a jack under the engine
+ paddock stand
+ jack
- Raise the front until the wheel hangs free >up
- Unbolt the brake caliper and tie it up >caliper
+ 12 mm socket
- Take out the front wheel >wheel
- Loosen the upper clamp bolts >clamp
! warning spring: The fork cap is under spring load and can fly into your face; keep your head aside and press it down while you turn
- Unscrew the fork cap >cap
- Pull the fork leg out of the clamps >leg
- Tip the old oil into a pan >oil
+ pan
- Pump the leg until no more oil comes
- Pour in new fork oil <oil
* SAE 10 fork oil
= fork oil level: 108..112 mm @manual fork chapter | from the top edge, spring out
+ oil level gauge
- Thread the fork cap back on <cap
= fork cap torque: 20..25 N.m @manual fork chapter
+ torque wrench
- Slide the fork leg back into the clamps <leg
- Torque the upper clamp bolts <clamp
= clamp bolt torque: 18..22 N.m @manual fork chapter
- Refit the front wheel <wheel
- Bolt the brake caliper back on <caliper
= caliper bolt torque: 30..35 N.m @manual brake chapter
- Let the front down <up
! warning crash: Air between pad and disc means no braking at first and can kill; pump the lever before you ride
- Squeeze the brake lever until it is hard
? Front brake holds the motorcycle when it is pushed {proves brake}
? Fork moves smoothly and no oil weeps at the seals {proves leak} {proves function}
- Hand the old fork oil in at a collection point {proves waste}
`,
)
