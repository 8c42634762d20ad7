import { readSound } from './notation'

export const cabinet = readSound(
  'cabinet',
  `
title: Recharging a refrigerated display cabinet after a valve change
equipment: plug-in refrigerated display cabinet, sealed system
months: 12
! danger refrigerant: Refrigerant freezes skin and suffocates; only certified technicians may open the circuit, by local law, with the maker's manual
! danger electric-shock: Mains parts kill; unplug the cabinet before opening its base
- Pull the cabinet's plug out of the socket >mains
- Take off the base grille >grille
+ crosshead screwdriver
- Put on safety goggles and cold-proof gloves
+ safety goggles
+ cold-proof gloves
- Connect the gauge manifold to the service ports >manifold
+ gauge manifold
- Recover the refrigerant into a recovery cylinder
+ recovery machine
? Gauges show no pressure
- Cut the old valve out of the line >valve
+ tube cutter
! warning burn: The torch and the joint burn skin and can start a fire; shield the insulation and keep an extinguisher ready
- Braze the new valve into the line under nitrogen <valve
+ brazing torch
* service valve
- Fill the circuit with nitrogen
= test pressure: 9..10 bar @plate rating plate
? Pressure holds and no bubbles show at the joints {proves leak}
- Evacuate the circuit with the vacuum pump
+ vacuum pump
= vacuum time: 30.. min @manual service sheet
- Charge the circuit with refrigerant by weight
+ charging scale
* refrigerant
= refrigerant charge: 0.29..0.31 kg @plate rating plate
- Disconnect the gauge manifold from the service ports <manifold
- Refit the base grille <grille
- Plug the cabinet in <mains
? Cabinet cools down to its range {proves function}
= cabinet temperature: 2..5 Cel @manual service sheet
- Return the recovered refrigerant to the supplier {proves waste}
`,
)
