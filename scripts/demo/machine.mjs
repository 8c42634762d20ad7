import { arc, bolt, C, circle, group, line, mix, path, polar, rect, solid, stroke } from './draw.mjs'

/** Floor and wall with the socket, as far as the side view shows them. */
const room = () =>
  [
    rect(0, 470, 960, 70, { fill: C.floor }),
    line(0, 470, 960, 470, stroke(C.ink, 2.5)),
    rect(872, 0, 88, 470, { fill: C.floor }),
    line(872, 0, 872, 470, stroke(C.ink, 2.5)),
    rect(858, 272, 16, 62, solid(C.white, { rx: 3 })),
  ].join('')

/** A plug at its cable's end; `pulled` is how far it is out of the socket, 0 to 1. A lock closes over its pins. */
const plug = (pulled, locked) => {
  const x = mix(812, 730, pulled)
  const y = mix(303, 372, pulled)
  const cable = path(`M640 384C${mix(700, 670, pulled)} 430 ${x - 70} ${y + 20} ${x} ${y}`, stroke(C.ink, 6))
  const body =
    rect(x, y - 16, 30, 32, solid(C.ink, { rx: 5 })) +
    rect(x + 30, y - 11, 18, 6, { fill: C.edge }) +
    rect(x + 30, y + 5, 18, 6, { fill: C.edge })
  const lock =
    locked <= 0
      ? ''
      : group(
          `translate(${x + 42} ${mix(y - 90, y, locked)})`,
          path('M-7 -16v-12a11 11 0 0 1 22 0v12', stroke(C.edge, 6)),
          rect(-14, -18, 36, 36, solid(C.brass, { rx: 4 })),
          circle(4, -3, 4, { fill: C.ink }),
          rect(2.5, -3, 3, 10, { fill: C.ink }),
        )
  return cable + body + lock
}

/** The drum from its end, knives at an angle in degrees. */
export const drum = (cx, cy, r, angle, { blur = false } = {}) => {
  const knife = turn =>
    group(
      `rotate(${angle + turn} ${cx} ${cy})`,
      path(
        `M${cx + r * 0.5} ${cy - r * 0.09}L${cx + r * 1.0} ${cy - r * 0.09}L${cx + r * 1.11} ${cy + r * 0.08}L${cx + r * 0.5} ${cy + r * 0.08}Z`,
        solid(C.white),
      ),
      circle(cx + r * 0.68, cy, r * 0.05, { fill: C.ink }),
    )
  return [
    circle(cx, cy, r, solid(C.steel)),
    circle(cx, cy, r * 0.8, stroke(C.steelDark, 2)),
    blur ? circle(cx, cy, r * 1.08, stroke(C.steelDark, r * 0.1, { opacity: 0.6 })) : knife(0) + knife(180),
    circle(cx, cy, r * 0.2, solid(C.steelDark)),
    rect(cx - r * 0.03, cy - r * 0.2, r * 0.06, r * 0.12, { fill: C.ink }),
  ].join('')
}

/**
 * The chipper from the side.
 *
 * @param look angle of the drum, how far the hood is open (0 to 1), how far the plug is out, how far the lock is on
 */
export const chipper = ({ angle = 90, blur = false, open = 0, pulled = 0, locked = 0, bolts = 1 }) => {
  const hood = group(
    `rotate(${open * 112} 528 300)`,
    path('M448 250C462 150 516 104 612 92V138C560 146 528 178 512 270Z', solid(C.paintDark)),
    path('M336 300A96 96 0 0 1 528 300Z', solid(C.paint)),
    path('M612 84V146', stroke(C.ink, 6)),
  )
  return [
    room(),
    path('M300 408H668V424H300Z', solid(C.paintDark)),
    path('M640 424L652 470H632L622 424Z', solid(C.paintDark)),
    path('M140 158L344 262V338L140 352Z', solid(C.paint)),
    path('M140 158V352', stroke(C.ink, 6)),
    path('M352 400L372 372H490L512 408H352Z', solid(C.paintDark)),
    path('M336 300A96 96 0 0 0 528 300Z', solid(C.floor)),
    drum(432, 300, 74, angle, { blur }),
    path('M336 300A96 96 0 0 0 528 300H510A78 78 0 0 1 354 300Z', solid(C.paint)),
    open < 0.02 ? '' : circle(528, 300, 6, { fill: C.ink }),
    hood,
    bolts <= 0 ? '' : bolt(346, mix(240, 292, bolts), 9, bolts * 360) + bolt(518, mix(240, 292, bolts), 9, bolts * 360),
    rect(548, 342, 104, 66, solid(C.steel, { rx: 8 })),
    ...[566, 584, 602, 620].map(x => line(x, 350, x, 400, stroke(C.edge, 3))),
    rect(648, 358, 14, 34, solid(C.steelDark)),
    circle(348, 430, 40, solid(C.ink)),
    circle(348, 430, 22, solid(C.steel)),
    circle(348, 430, 5, { fill: C.ink }),
    plug(pulled, locked),
  ].join('')
}

/** Middle and radius of the drum in the close view. */
export const NEAR = { x: 520, y: 300, r: 150 }

/**
 * Housing, drum and anvil close by, cut open.
 *
 * @param look angle of the drum; `open` of the hood; `anvil` how far the anvil's tip
 *   stands from the knife's circle in pixels; `loose` how far its nuts are undone
 */
export const closeUp = ({ angle = 90, blur = false, open = 1, anvil = 40, loose = 0 }) => {
  const { x, y, r } = NEAR
  const tip = x - r * 1.11 - anvil
  const wall = (from, to) =>
    `${arc(x, y, 192, from, to)}L${polar(x, y, 178, to).join(' ')}${arcBack(x, y, 178, to, from)}Z`
  return [
    path(wall(0, 150), solid(C.paint)),
    group(`rotate(${open * 118} ${x + 190} ${y - 4})`, path(wall(206, 360), solid(C.paint))),
    circle(x + 190, y - 4, 9, solid(C.ink)),
    drum(x, y, r, angle, { blur }),
    circle(...polar(x, y, r * 0.86, angle - 90), 9, { fill: C.ink }),
    path(`M120 ${y + 2}H${tip - 26}L${tip} ${y + 2}V${y + 26}L${tip - 26} ${y + 58}H120Z`, solid(C.steelDark)),
    rect(150, y + 22, 124, 18, { rx: 9, fill: C.ink }),
    bolt(182, y + 31, 19, loose * 200),
    bolt(242, y + 31, 19, loose * 200),
  ].join('')
}

const arcBack = (cx, cy, r, from, to) => {
  const [x2, y2] = polar(cx, cy, r, to)
  return `A${r} ${r} 0 ${from - to > 180 ? 1 : 0} 0 ${x2} ${y2}`
}

/** Direction the locking pin comes from, in degrees clockwise from the right: above the open housing. */
const PIN_ANGLE = -48

/** The drum's angle at which its hole meets the pin. */
export const PINNED = PIN_ANGLE + 90

/** The locking pin in the rim of the drum; `away` 1 is outside. */
export const lockingPin = away => {
  const { x, y, r } = NEAR
  const at = x + r * 0.78 + away * 100
  return group(
    `rotate(${PIN_ANGLE} ${x} ${y})`,
    rect(at, y - 9, 130, 18, solid(C.brassLight, { rx: 4 })),
    circle(at + 150, y, 20, stroke(C.brass, 8)),
  )
}

/** The knife on the drum from the front. */
export const KNIFE = { left: 180, right: 780, top: 225, bottom: 330, bolts: [280, 480, 680] }

/**
 * @param look `lift` of the knife in pixels; `turn` 0 to 1 over its long axis; `bolts` how far each of the three is out
 *   (1 is gone); `turns` of the heads in degrees; `drops` of threadlocker on each
 */
export const knifeView = ({
  lift = 0,
  turn = 0,
  bolts = [0, 0, 0],
  turns = [0, 0, 0],
  drops = [0, 0, 0],
  worn = true,
}) => {
  const { left, right, top, bottom } = KNIFE
  const flat = Math.cos(turn * Math.PI)
  const middle = (top + bottom) / 2 - lift
  const half = ((bottom - top) / 2) * Math.abs(flat)
  const isWorn = flat > 0 === worn
  const low = middle + half
  const nicks = isWorn
    ? [230, 330, 370, 455, 540, 610, 650, 730].map(x => path(`M${x} ${low + 16}l7 -8l7 8`, stroke(C.ink, 2))).join('')
    : path(`M${left + 30} ${low + 9}H${left + 150}M${left + 200} ${low + 9}H${left + 260}`, stroke(C.white, 4))
  return [
    rect(90, 150, 780, 270, solid(C.steel, { rx: 14 })),
    ...[176, 394].map(y => line(104, y, 856, y, stroke(C.steelDark, 2))),
    rect(left - 8, top - 8, right - left + 16, bottom - top + 34, { rx: 4, fill: C.steelDark }),
    ...KNIFE.bolts.map(x => circle(x, (top + bottom) / 2, 13, { fill: C.ink })),
    rect(left, middle - half, right - left, half * 2, solid(C.white)),
    half > 6
      ? path(`M${left} ${low}H${right}L${right - 8} ${low + 18}H${left + 8}Z`, solid(isWorn ? C.rule : C.paint))
      : '',
    half > 30 ? nicks : '',
    ...KNIFE.bolts.map((x, i) => {
      if (bolts[i] >= 1) return half > 20 ? circle(x, middle, 13, { fill: C.ink }) : ''
      const y = middle - bolts[i] * 110
      return bolt(x, y, 24, turns[i], true)
    }),
    ...KNIFE.bolts.map((x, i) => {
      if (drops[i] <= 0 || drops[i] >= 1) return ''
      const y = mix(166, middle - 30, drops[i])
      return path(
        `M${x} ${y - 16}C${x + 5} ${y - 6} ${x + 9} ${y} ${x + 9} ${y + 5}A9 9 0 0 1 ${x - 9} ${y + 5}C${x - 9} ${y} ${x - 5} ${y - 6} ${x} ${y - 16}Z`,
        solid(C.blue),
      )
    }),
  ].join('')
}
