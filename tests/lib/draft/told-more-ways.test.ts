import { describe, expect, test } from 'vitest'
import { sameQuantity } from '@/scripts/fit-draft/same-quantity'
import { limitsOf } from './limits-of'

const [METRIC, US] = [
  'The grey one by the kerb, two metres out, takes a litre of oil.',
  'The gray one by the curb takes a gallon of gasoline, fifty psi, five inches deep.',
]

/** `low=3 high=4 mm` as a quantity. */
const toQuantity = (said: string): Record<string, number | string> =>
  Object.fromEntries(
    said.split(' ').map(part => {
      const [name = '', value] = part.split('=')
      return value === undefined ? ['unit', name] : [name, Number(value)]
    }),
  )

describe('limits as a second lot of trades and manners tells them', () => {
  test.for([
    [
      'low=1.5 mm',
      'The strings at the twelfth fret, never lower than one and a half millimetres, whatever he tells you.',
    ],
    ['low=1.5 high=2 mm', 'At the twelfth fret somewhere around one and a half, two at the outside, millimetres.'],
    ['high=0.15 mm', 'The wheel may be fifteen hundredths out sideways, and there I draw the line.'],
    ['nominal=9 bar', 'Line pressure’s nine bar and stays there.'],
    ['high=2 min', 'Two minutes on the fuse wire and not a breath longer.'],
    ['nominal=440 Hz', 'Tune the A to four hundred and forty hertz.'],
    ['high=3 %', 'Moisture in the timber, three percent is the most the maker will wear.'],
    ['low=8 high=12 %', 'You want the moisture between eight and twelve percent.'],
    ['low=12 mm', 'The tongue has to go at least twelve millimetres into the groove.'],
    ['nominal=12 N.m', 'Saddle clamp, twelve newton metres, grease on the thread.'],
    ['high=5 N.m', 'Carbon bars, so five newton metres and I’d rather you went under than over.'],
    ['nominal=45 deg', 'Bevel it at forty-five degrees.'],
    ['low=15 high=20 deg', 'Hone it somewhere between fifteen and twenty degrees.'],
    ['nominal=180 {rev}/min', 'The drum wants to go round at a hundred and eighty revs a minute.'],
    ['high=90 Cel', 'She’ll boil over if you let the pan go much past ninety Celsius.'],
    ['low=72 Cel', 'The milk has to get to seventy-two Celsius, and if it didn’t you do it again.'],
    ['low=15 s', 'Seventy-two Celsius for fifteen seconds at least.'],
    ['nominal=72 Cel', 'Seventy-two Celsius for fifteen seconds at least.'],
    ['high=4 Cel', 'The cold room should never be seen above four Celsius.'],
    ['low=2 high=4 Cel', 'The cold room should sit at two to four Celsius.'],
    ['high=10 mm', 'Ten millimetres of rope stretch per metre and it’s retired.'],
    ['high=50 mA', 'The leakage tester mustn’t see more than fifty milliamps.'],
    ['high=30 mA', 'It should trip at thirty milliamps or sooner.'],
    ['low=2 mm', 'I won’t fit a disc that’s down to less than two millimetres.'],
    ['high=1.5 mm', 'Once the hole’s bigger than one and a half millimetres, the nozzle’s scrap.'],
    ['nominal=1.5 circ', 'A turn and a half from seated is the factory setting.'],
    ['nominal=0.125 circ', 'Give each one another eighth of a turn.'],
    ['low=10 mm ; low=20 mm', 'Keep ten millimetres from the side wall and twenty from the back.'],
    ['low=0.5 high=1 mm', 'Leave a hair of clearance, half a millimetre to a millimetre.'],
    ['nominal=300 mL', 'Three hundred mils of gear oil up the filler.'],
    ['nominal=1.5 L', 'It holds a litre and a half.'],
    ['low=1 L', 'There must never be less than a litre in it while it’s running.'],
    ['nominal=250 h', 'Every two hundred and fifty hours, or once a season, the filter gets changed.'],
    ['nominal=1 a', 'Once a year somebody has to go up and look at the anchors.'],
    ['nominal=3 a', 'The hoses have three years in them and then they’re changed, cracked or not.'],
    ['high=5 a', 'No rope older than five years goes on this hoist.'],
    ['nominal=20 min', 'The charge takes twenty minutes to settle, so leave it twenty minutes.'],
    ['low=5 min', 'Don’t even think about opening it inside five minutes.'],
    ['high=20 s', 'If it hasn’t lit after twenty seconds, let go of the button.'],
    ['nominal=30 s', 'Keep the button in for thirty seconds once it’s lit.'],
    ['low=3 s', 'Hold it down till it beeps, three seconds or more.'],
    ['low=220 high=240 V', 'Mains at the socket, two twenty to two forty volts.'],
    ['low=12.4 V', 'Rested overnight it ought to show twelve point four volts or up.'],
    ['high=0.2 V', 'Across that joint I don’t like to see more than point two of a volt.'],
    ['low=100 kOhm', 'Probe to probe, a hundred kilohms or more is dry.'],
    ['high=5 Ohm', 'Earth stake under five ohms, or put in another.'],
    ['low=47 high=53 Ohm', 'The sensor’s fifty ohms cold, three either way.'],
    ['nominal=35 g/L', 'Thirty-five grams of salt to the litre.'],
    ['nominal=2 %', 'A two percent solution of the cleaner is plenty.'],
    ['low=0.3 high=0.5 bar', 'Mud pressure hovers between point three and point five of a bar.'],
    ['high=700 mbar', 'Vacuum no deeper than seven hundred millibar, or the bag creases.'],
    ['low=25 N', 'A spring balance on the door edge, and it takes twenty-five newtons at least to open.'],
    ['high=150 N', 'And a hundred and fifty newtons at most, or granny can’t manage it.'],
    ['nominal=8 mm', 'The pitch is eight millimetres, so that’s one full turn of the wheel for eight millimetres.'],
    ['low=1000 mm', 'From the edge of the bed to the wall leave a metre, no less.'],
    ['high=6 mm', 'Six millimetres between the bars is as wide as a finger may find it.'],
    ['low=22 high=28 mm', 'Anything from twenty-two up to twenty-eight millimetres thick goes through.'],
    ['low=0.1 high=0.2 mm', 'Tooth clearance, one to two tenths of a millimetre, cold.'],
    ['high=0.02 mm', 'The centres agree to two hundredths of a millimetre or I start again.'],
    ['high=40 kg', 'The shelf’s good for forty kilos, that’s stamped on it.'],
    ['nominal=5.5 mm', 'Drill it five and a half millimetres, straight through.'],
    ['low=75 high=85 mm', 'The pedal comes up eighty millimetres, give or take five.'],
    ['low=75 high=85 mm', 'Eighty millimetres at the pedal. // Five either way doesn’t bother me.'],
    ['nominal=30 N.m', 'We had thirty on the old flange. // This one’s thirty newton metres as well.'],
    ['nominal=35 N.m', 'The long bolts take sixty newton metres. // And the short ones thirty-five.'],
    [
      'high=60 Cel',
      'Touch the gearbox. // If you can’t keep your hand on it, it’s over sixty Celsius and something’s wrong.',
    ],
    ['low=14 V', 'Engine running now. // I want fourteen volts or better across the terminals.'],
    ['nominal=0.4 mm', 'Feeler in the points. // Point four, and it should just drag.'],
    ['nominal=1450 {rev}/min', 'Tacho on the shaft. // Fourteen fifty, bang on.'],
    ['low=1 [in_i]', '[us] You gotta have an inch of thread in there, minimum.'],
    ['high=0.125 [in_i]', '[us] If the crown’s more than an eighth of an inch off, start over.'],
    ['low=0.5 high=0.75 [in_i]', '[us] Half to three quarters of an inch of belt deflection.'],
    ['nominal=35 [ft_i].[lbf_av]', '[us] Run them to thirty-five foot-pounds and quit.'],
    ['low=60 high=65 [ft_i].[lbf_av]', '[us] Sixty, sixty-five foot-pounds on the big ones.'],
    ['nominal=100 [in_i].[lbf_av]', '[us] A hundred inch-pounds on every little screw, criss-cross.'],
    ['low=10 [psi]', '[us] If she won’t build ten pounds of oil pressure at idle, don’t run her.'],
    ['nominal=350 [degF]', '[us] Preheat to three fifty Fahrenheit.'],
    ['low=165 [degF]', '[us] The water’s gotta come out at one sixty-five or hotter, Fahrenheit.'],
    ['high=6 [mil_i]', '[us] Six thou is all the taper I’ll put up with.'],
    ['nominal=0.035 [in_i]', '[us] Plugs are gapped at thirty-five thousandths.'],
    ['low=5 [gal_us]', '[us] Never let it get below five gallons.'],
    ['low=15 min', '[us] Let her idle a good fifteen minutes, longer in the winter.'],
    ['high=3 [in_i]', '[us] The rope can’t sag but three inches.'],
    ['nominal=6 mo', '[us] Twice a year, spring and fall, those bearings get packed.'],
    ['nominal=500 [mi_i]', '[us] Retorque the lugs at five hundred miles.'],
  ] as const)('[D11] %s: %s', ([wanted, said]) => {
    const parts = said.replace('[us] ', '').split(' // ')
    const found = limitsOf([said.startsWith('[us] ') ? US : METRIC, ...parts])
    const missing = wanted.split(' ; ').filter(one => !found.some(quantity => sameQuantity(quantity, toQuantity(one))))
    expect(missing).toEqual([])
  })
})
