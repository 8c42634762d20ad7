const set = (text: string): ReadonlySet<string> => new Set(text.split(' '))

/** Tools: a number before one is its size, whatever the unit's number. @source common practice, no source */
export const TOOLS = set(
  'socket sockets wrench wrenches spanner spanners key keys hex allen allens drive ratchet ratchets driver drivers bit bits drill drills tap taps die dies torx crowfoot extension extensions adapter adapters nutdriver screwdriver screwdrivers chisel punch reamer endmill cutter hexes combination t-handle breaker impact deepwell ring-spanner nut-driver feeler feelers leaf leaves mallet router',
)

/** Parts: a number with a singular unit before one is a rating or a size: `a 50 amp breaker`. @source common practice, no source */
export const PARTS = set(
  'cap caps bolt bolts screw screws nut nuts washer washers stud studs hose hoses pipe pipes line lines tube tubes tubing fitting fittings wire wires cable cables rope cord o-ring ring rings rod rods stock bar bars file files brush clamp clamps jack hammer gauge fuse fuses breaker breakers battery batteries bulb bulbs lamp motor motors engine engines pump pumps supply system systems resistor resistors charger outlet circuit bike truck trailer tires tyres rim rims wheel wheels rotor rotors tank jug bottle bucket can cans drum tin tub container syringe pack bag box filter mesh gearbox element heater cartridge grinder disc discs disk disks blade blades hole holes chain belt machine generator compressor bearing bearings shaft shafts pin pins dowel nail nails plank timber board boards plywood sheet sheets job jobs ride trip walk class lesson video show break warranty dragon one ones lead leads winch hoist crane jackstand unit units model panel panels valve valves connector connectors plug plugs receptacle switch transformer inverter solar laser saw tape ruler lathe mill press chip shim shims plate plates tarp membrane poly piece pieces bracket spacer spacers bushing gasket gaskets thread threads radiator cooler magnet rail rails column beam joist nozzle nozzles orifice jet jets needle needles barrel monitor camera lens mower chainsaw van car cars scooter house room shop bay ladder fan blower duct vent tile tiles pot pots pan pans bowl glass cup mug drums keg carboy injector strap straps chains drill-bit tow tow-rope sledge maul sledgehammer weight weights dumbbell load loads test-bar collet collets mandrel arbor arbors boring-bar spindle light lights lightbulb strip bolts. dispenser canister cylinder cylinders relay contactor capacitor capacitors phone tooth deck boat rifle scope bipod air-gun syringes slot slots gap-filler keyway bore journal piston pistons sleeve stroker head heads offset rebar conduit anchor anchors lag lags staple staples foam insulation window windows door doors',
)

/** Things that are measured, and words that begin something new: a number before one is a value: `a thirty thou gap`. */
export const MEASURED = set(
  'burst spray blast flush squirt pulse gap clearance limit minimum maximum min max interval torque turn turns soak rest wait preload runout play lash deflection drop rise travel stroke fill pressure reading tolerance range setting cut pass depth height width slack backlash endplay free overlap protrusion stickout wear crush squeeze stretch interference fit cure drying bleed warm-up warmup cooldown dwell step more per pull load shim-gap air spacing apart spread lap projection idle slope fall pitch-change bake hold vacuum charge dose mix difference lift offset margin allowance thickness total differential oil swap dip rinse purge burn-in run each max. in on at with for and or to if of all across from until before after between is as so then but when while around round right here there please back out up down off over through it that',
)

/** What may stand between a size and its tool or part. */
export const ADJECTIVES = set(
  'click dial digital deep shallow long short impact open ended open-ended box ring flex ball end swivel stubby big little small wide thin thick flat hollow steel brass copper rubber plastic stainless hardened drill deep-well six twelve point sided combination old new cheap cordless air nylon braided high low heavy duty galvanized black white red blue green wooden metal inch drive jaw socket nut hex allen torx tip inside cup masonry twist spade hand round square good nice single double pressure vacuum-rated garden extension fuel brake coolant power',
)

/** Words after a singular unit that are no things it rates. */
export const SMALL = set(
  'the and that this those these not just then because cause when while until only really usually maybe if you your they them she his her him our its who why how what where which too also again now today always never ever still both some any every none plus minus either neither yeah yes yep okay right well sorry thank thanks please',
)
