import {
  arc,
  bolt,
  C,
  circle,
  faded,
  group,
  label,
  line,
  mix,
  path,
  plate,
  polar,
  rect,
  solid,
  stroke,
  text,
} from './draw.mjs'

/** A hexagon key with its short end in a bolt head, turned by some degrees. */
export const hexKey = (x, y, turn) =>
  group(
    `translate(${x} ${y}) rotate(${turn / 6 - 50})`,
    path('M0 0V-4M0 0H150', stroke(C.ink, 17)),
    path('M0 0H150', stroke(C.edge, 11)),
    circle(0, 0, 8, { fill: C.ink }),
  )

/** A torque wrench on a bolt; angle of its handle in degrees clockwise from the right. */
export const wrench = (x, y, angle, scale = 1) =>
  group(
    `translate(${x} ${y}) rotate(${angle}) scale(${scale})`,
    rect(0, -9, 210, 18, solid(C.steelDark, { rx: 6 })),
    rect(200, -14, 100, 28, solid(C.blue, { rx: 8 })),
    ...[222, 240, 258, 276].map(at => line(at, -10, at, 10, stroke(C.paintDark, 3))),
    circle(0, 0, 30, solid(C.steel)),
    circle(0, 0, 13, solid(C.ink)),
  )

/** A dial in newton metres with its band of limits. */
export const torqueDial = (x, y, value, { low = 33, high = 37, most = 60 } = {}) => {
  const at = nm => 150 + (240 * nm) / most
  const ticks = Array.from({ length: most / 10 + 1 }, (_, i) => i * 10)
  return [
    circle(x, y, 86, solid(C.white)),
    low < high ? path(arc(x, y, 70, at(low), at(high)), stroke(C.blue, 14, { 'stroke-linecap': 'butt' })) : '',
    ...ticks.map(nm => line(...polar(x, y, 62, at(nm)), ...polar(x, y, 78, at(nm)), stroke(C.ink, 2.5))),
    ...ticks
      .filter(nm => nm % 20 === 0)
      .map(nm => {
        const [tx, ty] = polar(x, y, 46, at(nm))
        return text(tx, ty + 6, String(nm), { size: 17, anchor: 'middle' })
      }),
    line(x, y, ...polar(x, y, 66, at(value)), stroke(C.brass, 5)),
    circle(x, y, 7, { fill: C.ink }),
    text(x, y + 70, 'N·m', { size: 18, anchor: 'middle', weight: 700 }),
  ].join('')
}

/** A gloved hand from above, fingers to the left. */
export const glove = (x, y) =>
  group(
    `translate(${x} ${y})`,
    ...[-62, -22, 18, 56].map((dy, i) =>
      rect(-92 + Math.abs(i - 1.4) * 12, dy - 14, 150, 34, solid(C.brassLight, { rx: 17 })),
    ),
    path('M20 -78H150Q176 -78 176 -52V60Q176 88 150 88H34Q2 88 2 40V-50Q2 -78 20 -78Z', solid(C.brassLight)),
    path('M40 76Q-6 128 -52 118Q-66 104 -44 92Q-8 78 14 30', solid(C.brassLight)),
    rect(168, -70, 60, 152, solid(C.blue, { rx: 8 })),
    rect(226, -54, 120, 120, solid(C.wood)),
    ...[-44, -14, 16, 46].map(dy => path(`M50 ${dy}q30 -12 60 0t50 0`, stroke(C.brass, 3))),
  )

/** A folded rag. */
export const rag = (x, y, scale = 1) =>
  group(
    `translate(${x} ${y}) scale(${scale})`,
    path('M-58 -30Q-30 -52 0 -38T56 -34Q72 -6 58 30Q20 50 -8 36T-60 30Q-74 2 -58 -30Z', solid(C.paint)),
    path('M-40 -14Q-10 -28 18 -12T52 -8M-44 12Q-14 0 12 14T48 14', stroke(C.blue, 2.5)),
  )

const gear = (x, y, r, teeth, angle) =>
  [
    ...Array.from({ length: teeth }, (_, i) =>
      group(
        `rotate(${angle + (360 / teeth) * i} ${x} ${y})`,
        rect(x + r - 6, y - 8, 20, 16, solid(C.steelDark, { rx: 2 })),
      ),
    ),
    circle(x, y, r, solid(C.steel)),
    circle(x, y, r * 0.25, solid(C.ink)),
  ].join('')

/**
 * The gearbox cut open.
 *
 * @param look `plugOut` of the level plug, `level` of the oil (1 stands at the hole), whether oil is poured and weeps, how
 *   far the run-down oil is wiped up and the rag on its way to the bin, each 0 to 1
 */
export const gearbox = ({ p, t, plugOut, level, pouring, weeping, wiped = 0, binned = 0 }) => {
  const hole = 312
  const top = mix(410, hole, level)
  const run = weeping ? Math.min(1, (t * 0.7) % 1.4) : 0
  const puddle = wiped > 0 || binned > 0 ? 1 - wiped : weeping ? 0.6 : 0
  return [
    rect(0, 470, 960, 70, { fill: C.floor }),
    line(0, 470, 960, 470, stroke(C.ink, 2.5)),
    rect(300, 150, 330, 290, solid(C.paint, { rx: 20 })),
    rect(322, 172, 286, 246, solid(C.white, { rx: 10 })),
    path(`M322 ${top}H608V408Q608 418 598 418H332Q322 418 322 408Z`, { fill: C.oil, opacity: 0.85 }),
    gear(420, 270, 62, 14, 0),
    gear(520, 330, 44, 10, 18),
    path(`M322 ${top}H608V408Q608 418 598 418H332Q322 418 322 408Z`, { fill: C.oil, opacity: 0.35 }),
    rect(606, hole - 12, 26, 24, solid(C.white)),
    level >= 1 && plugOut > 0.5 ? rect(606, hole, 26, 11, { fill: C.oil }) : '',
    weeping ? path(`M634 ${hole + 8}q6 ${20 + 60 * run} 4 ${40 + 100 * run}`, stroke(C.oil, 6)) : '',
    puddle > 0 ? path(`M${640 - 36 * puddle} 470q${40 * puddle} -16 ${84 * puddle} 0z`, { fill: C.oil }) : '',
    group(
      `translate(${plugOut * 90} ${plugOut * 30})`,
      rect(610, hole - 9, 34, 18, solid(C.steelDark)),
      bolt(652, hole, 17, plugOut * 300),
    ),
    rect(440, 124, 50, 30, solid(C.paintDark)),
    pouring ? path('M452 96Q466 110 466 172V300', stroke(C.oil, 7)) : '',
    pouring || (p > 0.4 && level < 1)
      ? group(
          'translate(452 88) rotate(-118)',
          rect(-26, -150, 72, 120, solid(C.brassLight, { rx: 10 })),
          rect(-4, -32, 28, 34, solid(C.brass, { rx: 4 })),
          text(10, -84, '80W-90', { size: 17, weight: 700, anchor: 'middle' }),
        )
      : '',
    faded(p < 1 && p > 0.3 ? 1 : 0, label(760, 250, 'level plug', 664 + plugOut * 90, hole - 12 + plugOut * 30)),
    faded(p < 1 && p > 0.82 ? 1 : 0, plate(690, 380, '80 to 100 mL', { width: 230 })),
    wiped > 0 || binned > 0
      ? [
          path('M790 330H910L898 470H802Z', solid(C.ink)),
          text(850, 410, 'oily', { size: 24, weight: 700, fill: C.white, anchor: 'middle' }),
          text(850, 438, 'waste', { size: 24, weight: 700, fill: C.white, anchor: 'middle' }),
          binned < 1
            ? rag(
                mix(mix(620, 690, wiped), 850, binned),
                440 - 260 * Math.sin(Math.PI * Math.min(1, binned * 0.75)),
                0.8,
              )
            : '',
          rect(782, 318, 136, 16, solid(C.warning, { rx: 4 })),
        ].join('')
      : '',
  ].join('')
}
