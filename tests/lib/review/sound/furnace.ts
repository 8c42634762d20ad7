import { readSound } from './notation'

export const furnace = readSound(
  'furnace',
  `
title: Cleaning the flame sensor of a gas furnace
equipment: forced-air gas furnace, 120-volt controls
months: 12
! danger gas: Gas can explode; leave anything beyond the sensor to a licensed technician and local codes
- Turn the thermostat down
- Shut off the furnace switch and lock it >power >lock {before panelopen}
! danger electric-shock: 120 volts can kill; switch off and lock out before taking the panel off
- Close the gas cock >gas
- Lift off the burner compartment door >door {after panelopen}
- Photograph the wire at the sensor {before wire}
- Pull the wire off the flame sensor >wire {after wire}
- Remove the screw and draw the sensor out >sensor
+ 1/4-inch nut driver
- Rub the rod clean with fine steel wool
* fine steel wool
- Slide the sensor back in and drive the screw <sensor
- Push the wire back on <wire
- Hang the door back on <door
- Open the gas cock <gas
- Take off the lock <lock
- Flip the furnace switch on <power
- Turn the thermostat up and watch the burners light {proves function}
= flame signal: 2..6 uA @manual service sheet
+ microammeter
? Burners stay lit for a full cycle {proves function}
? No gas smell and no bubbles at the cock with soapy water
`,
)
