import {
  arc,
  C,
  circle,
  faded,
  group,
  label,
  line,
  mix,
  part,
  path,
  plate,
  polar,
  rect,
  signal,
  soft,
  solid,
  stroke,
  text,
} from './draw.mjs'
import { chipper, closeUp, KNIFE, knifeView, lockingPin, NEAR, PINNED } from './machine.mjs'
import { gearbox, glove, hexKey, rag, torqueDial, wrench } from './tools.mjs'

/** Strings of wood flying from the chute. */
const strings = t =>
  Array.from({ length: 9 }, (_, i) => {
    const p = (t * 0.55 + i / 9) % 1
    const x = 616 + p * 230
    const y = 112 + p * p * 300 + (i % 3) * 8
    const sway = 9 * Math.sin(t * 7 + i * 2)
    return path(`M${x} ${y}q14 ${-10 + sway} 28 0t28 ${sway * 0.6}t26 ${6 - sway}`, stroke(C.wood, 5))
  }).join('')

const branch = t => {
  const x = -130 + ((t * 26) % 90)
  return group(
    `rotate(6 200 270) translate(${x} 0)`,
    rect(60, 262, 300, 20, solid(C.wood, { rx: 8 })),
    path('M150 262l-26 -34M230 282l-20 30', stroke(C.wood, 7)),
  )
}

const running = t =>
  chipper({ angle: 0, blur: true }) + branch(t) + path('M140 158L344 262V338L140 352Z', stroke(C.ink)) + strings(t)

const pile = path('M690 470q30 -44 76 -34q60 -26 96 34z', solid(C.wood))

/** A clock hand that goes round `turns` times while p goes to 1. */
const clock = (x, y, p, turns, words) =>
  [
    circle(x, y, 46, solid(C.white)),
    ...Array.from({ length: 12 }, (_, i) =>
      line(...polar(x, y, 36, i * 30), ...polar(x, y, 42, i * 30), stroke(C.ink, 2)),
    ),
    line(x, y, ...polar(x, y, 34, p * turns * 360 - 90), stroke(C.brass, 5)),
    circle(x, y, 5, { fill: C.ink }),
    text(x, y + 80, words, { size: 26, weight: 700, anchor: 'middle' }),
  ].join('')

/**
 * Scenes by name: title, and a picture for the share of the scene that has passed (p, 0 to 1) and the seconds of the film
 * (t). `at` gives the share at which a sentence of the scene begins.
 */
export const SCENES = {
  strings: {
    title: 'Long strings instead of chips',
    draw: (p, t) =>
      running(t) +
      pile +
      faded(soft(p, 0.12, 0.2), label(742, 108, 'long strings', 690, 150)) +
      faded(soft(p, 0.5, 0.56), label(250, 120, 'knives inside', 420, 260), label(70, 430, 'anvil inside', 352, 318)),
  },
  meter: {
    title: 'How often',
    draw: (p, t) => {
      const hours = mix(49.2, 50, soft(p, 0.3, 0.55))
      return [
        running(t),
        pile,
        faded(
          soft(p, 0.28, 0.36),
          rect(560, 196, 290, 150, solid(C.white, { rx: 8 })),
          text(705, 232, 'hours run', { size: 22, anchor: 'middle' }),
          rect(610, 244, 190, 46, { rx: 4, fill: C.ink }),
          text(705, 279, hours.toFixed(1).padStart(6, '0'), { size: 34, weight: 700, fill: C.white, anchor: 'middle' }),
          text(705, 326, 'or 6 months', { size: 24, weight: 700, fill: C.blue, anchor: 'middle' }),
        ),
      ].join('')
    },
  },
  plug: {
    title: 'Plug out, lock on',
    draw: p =>
      chipper({ angle: 24, pulled: soft(p, 0.15, 0.4), locked: soft(p, 0.45, 0.65) }) +
      faded(soft(p, 0.66, 0.74), label(640, 250, 'your own lock', 770, 350, { anchor: 'middle' })),
  },
  coast: {
    title: 'The drum runs on',
    draw: p => {
      const angle = 1500 * (1 - (1 - part(p, 0, 0.86)) ** 3)
      const turned = 90 + Math.round(1500 / 180) * 180 - 1500 + angle
      return [
        closeUp({ angle: turned, open: 0, anvil: 18 }),
        path(arc(NEAR.x, NEAR.y, 112, 200 + angle, 290 + angle), stroke(C.blue, 5, { opacity: 1 - part(p, 0.7, 0.9) })),
        faded(soft(p, 0.06, 0.12), signal(40, 92, 'WARNING', ['Keep the hood shut', 'until the drum stands.'])),
        faded(soft(p, 0.6, 0.66), clock(846, 190, part(p, 0.6, 0.97), 2, 'at least 2 min')),
      ].join('')
    },
  },
  hood: {
    title: 'Hood open',
    draw: p =>
      [
        chipper({ angle: 90, pulled: 1, locked: 1, bolts: 1 - soft(p, 0.08, 0.42) || -1, open: soft(p, 0.55, 0.88) }),
        faded(
          soft(p, 0.1, 0.16) - soft(p, 0.56, 0.62),
          label(210, 110, '17 mm', 346, 262),
          label(640, 190, '17 mm', 518, 262),
        ),
      ].join(''),
  },
  pin: {
    title: 'Drum held',
    draw: p =>
      closeUp({ angle: PINNED, anvil: 18 }) +
      lockingPin(1 - soft(p, 0.12, 0.4)) +
      faded(soft(p, 0.45, 0.55), label(760, 130, 'locking pin', 664, 140)),
  },
  knife: {
    title: 'Knife off',
    draw: p => {
      const out = [0, 1, 2].map(i => soft(p, 0.06 + i * 0.2, 0.24 + i * 0.2))
      const active = out.findIndex(one => one < 1)
      const [keyX, keyY, keyTurn] = [
        KNIFE.bolts[active] ?? 0,
        277 - (out[active] ?? 0) * 110,
        -(out[active] ?? 0) * 540,
      ]
      const keyTip = polar(keyX, keyY, 120, keyTurn / 6 - 50)
      return [
        knifeView({ bolts: out, turns: out.map(one => -one * 540), lift: 90 * soft(p, 0.72, 0.95) }),
        active >= 0 ? hexKey(keyX, keyY, keyTurn) : '',
        faded(soft(p, 0.3, 0.36) - soft(p, 0.66, 0.7), label(700, 108, '6 mm hex key', ...keyTip)),
        faded(soft(p, 0.72, 0.8), label(560, 470, 'knife seat', 500, 335)),
      ].join('')
    },
  },
  gloves: {
    title: 'Gloves first',
    draw: p =>
      [
        group('translate(-50 150) scale(0.7)', knifeView({ lift: 90, bolts: [1, 1, 1] })),
        glove(mix(1010, 712, soft(p, 0.2, 0.45)), 330),
        faded(soft(p, 0.05, 0.12), signal(40, 92, 'CAUTION', ['A dull knife cuts too.'])),
        faded(
          soft(p, 0.5, 0.56),
          text(792, 474, 'cut-resistant gloves', { size: 24, weight: 700, fill: C.blue, anchor: 'middle' }),
        ),
      ].join(''),
  },
  wipe: {
    title: 'Seat clean',
    draw: (p, t) => {
      const reach = mix(140, 800, part(p, 0.1, 0.85))
      const sway = 278 + 34 * Math.sin(t * 9)
      return [
        knifeView({ lift: 1000, bolts: [1, 1, 1] }),
        ...Array.from({ length: 34 }, (_, i) => {
          const [x, y] = [190 + ((i * 0.618) % 1) * 580, 232 + ((i * 0.382 * i) % 1) * 108]
          return x < reach ? '' : circle(x, y, 2.5 + (i % 3), { fill: C.brass })
        }),
        rag(reach, sway),
        faded(soft(p, 0.1, 0.2), label(640, 110, 'dry rag', reach, sway - 30)),
      ].join('')
    },
  },
  turn: {
    title: 'Fresh edge out',
    draw: p => {
      const lift = 84 * (1 - soft(p, 0.36, 0.5))
      const drops = [0, 1, 2].map(i => part(p, 0.57 + i * 0.12, 0.67 + i * 0.12))
      const bolts = [0, 1, 2].map(i => 1 - soft(p, 0.66 + i * 0.11, 0.76 + i * 0.11))
      const tip = mix(KNIFE.bolts[0], KNIFE.bolts[2], (soft(p, 0.67, 0.69) + soft(p, 0.79, 0.81)) / 2)
      return [
        knifeView({ lift, turn: soft(p, 0.05, 0.34), bolts, drops }),
        faded(soft(p, 0.34, 0.4), label(170, 480, 'fresh edge', 300, 345)),
        faded(
          soft(p, 0.52, 0.56) - soft(p, 0.92, 0.95),
          group(
            `translate(${tip} 160)`,
            path('M-6 0L-16 -26H16L6 0Z', solid(C.brass)),
            rect(-22, -78, 44, 54, solid(C.blue, { rx: 6 })),
          ),
        ),
        faded(
          soft(p, 0.54, 0.58),
          text(930, 480, 'medium threadlocker', { size: 22, weight: 700, fill: C.blue, anchor: 'end' }),
        ),
      ].join('')
    },
  },
  torque: {
    title: 'Knife bolts',
    draw: (p, t) => {
      const order = [1, 0, 2]
      const now = p < 0.44 ? 0 : p < 0.58 ? 1 : 2
      const begun = [0.08, 0.44, 0.58][now]
      const value = mix(now === 0 ? 0 : 8, 35, soft(p, begun, begun + (now === 0 ? 0.28 : 0.1)))
      const swing = p < 0.72 ? Math.max(0, Math.sin(t * 3.2)) : 0
      return [
        group('translate(0 96)', knifeView({ worn: false, turns: KNIFE.bolts.map(() => swing * 10) })),
        wrench(KNIFE.bolts[order[now]], 373.5, now === 2 ? 158 - swing * 14 : 12 + swing * 14),
        ...order.map((n, i) =>
          text(KNIFE.bolts[n], 304, String(i + 1), { size: 26, weight: 700, fill: C.blue, anchor: 'middle' }),
        ),
        torqueDial(846, 154, value),
        faded(soft(p, 0.26, 0.32), plate(536, 128, '35 ± 2 N·m', { width: 200 })),
        faded(
          soft(p, 0.14, 0.18) - soft(p, 0.24, 0.28),
          text(636, 166, '45', { size: 36, weight: 700, anchor: 'middle' }),
          faded(soft(p, 0.19, 0.21), line(604, 154, 668, 154, stroke(C.ink, 5))),
        ),
        faded(soft(p, 0.72, 0.78), signal(40, 92, 'WARNING', ['Tighter stretches the bolt.'])),
      ].join('')
    },
  },
  anvil: {
    title: 'Anvil up to the knife',
    draw: p => {
      const gap = mix(70, 18, soft(p, 0.6, 0.88))
      const angle = mix(PINNED, 180, soft(p, 0.2, 0.38))
      return [
        closeUp({ angle, anvil: gap, loose: soft(p, 0.42, 0.56) }),
        p < 0.2 ? faded(1 - part(p, 0.14, 0.19), lockingPin(soft(p, 0.02, 0.16))) : '',
        faded(soft(p, 0.2, 0.26), label(150, 430, 'anvil', 200, 356)),
        faded(soft(p, 0.42, 0.46) - soft(p, 0.58, 0.62), label(60, 220, 'two nuts', 182, 318)),
        faded(soft(p, 0.62, 0.68), feeler(gap), label(262, 130, '1.5 mm feeler gauge', 318, 168, { anchor: 'end' })),
      ].join('')
    },
  },
  gap: {
    title: 'Gap at both knives',
    draw: p => {
      const turning = soft(p, 0.46, 0.52)
      return [
        closeUp({ angle: 180 + 180 * soft(p, 0.5, 0.82), anvil: 18 }),
        faded(1 - soft(p, 0.4, 0.46) + soft(p, 0.86, 0.9), feeler(18)),
        gapInset(830, 178),
        path(arc(NEAR.x, NEAR.y, 96, 210, 300), stroke(C.blue, 5, { opacity: turning })),
        faded(
          turning,
          path(`M${polar(NEAR.x, NEAR.y, 96, 308).join(' ')}l-22 -4l13 -16z`, { fill: C.blue }),
          text(NEAR.x, NEAR.y + 90, 'by hand', { size: 24, weight: 700, fill: C.blue, anchor: 'middle' }),
        ),
      ].join('')
    },
  },
  nuts: {
    title: 'Anvil nuts',
    draw: (p, t) => {
      const swing = Math.max(0, Math.sin(t * 3.4))
      return [
        closeUp({ angle: 0, anvil: 18, loose: 1 - soft(p, 0.1, 0.7) }),
        wrench(p < 0.5 ? 182 : 242, 331, 62 + swing * 12, 0.8),
        torqueDial(846, 154, mix(0, 60, soft(p, 0.15, 0.75)), { low: 60, high: 60, most: 80 }),
        faded(soft(p, 0.5, 0.6), plate(60, 120, '60 N·m', { width: 160 })),
      ].join('')
    },
  },
  oil: {
    title: 'Gearbox oil',
    draw: (p, t) =>
      gearbox({
        p,
        t,
        plugOut: soft(p, 0.28, 0.4),
        level: mix(0.34, 1, part(p, 0.5, 0.78)),
        pouring: p > 0.48 && p < 0.8,
        weeping: p > 0.78,
      }),
  },
  rag: {
    title: 'Plug in, wipe up',
    draw: (p, t) =>
      gearbox({
        p: 1,
        t,
        plugOut: 1 - soft(p, 0.04, 0.24),
        level: 1,
        pouring: false,
        weeping: false,
        wiped: part(p, 0.3, 0.6),
        binned: soft(p, 0.62, 0.92),
      }),
  },
  shut: {
    title: 'Hood shut, plug in',
    draw: p =>
      [
        chipper({
          angle: 0,
          open: 1 - soft(p, 0.04, 0.28),
          bolts: soft(p, 0.3, 0.46) || -1,
          locked: 1 - soft(p, 0.5, 0.6),
          pulled: 1 - soft(p, 0.6, 0.76),
        }),
        faded(soft(p, 0.32, 0.4) - soft(p, 0.52, 0.58), label(200, 110, 'snug', 346, 280)),
      ].join(''),
  },
}

/** Feeler gauge between knife and anvil. */
function feeler(gap) {
  const x = NEAR.x - NEAR.r * 1.11 - gap / 2
  return group(
    `rotate(6 ${x} 300)`,
    rect(x - gap / 2 + 2, 190, Math.max(6, gap - 4), 150, solid(C.brassLight, { rx: 3 })),
    rect(x - 22, 128, 44, 76, solid(C.brass, { rx: 8 })),
  )
}

/** What lies between anvil and knife, enlarged, with the limits of the gap as a dimension. */
function gapInset(x, y) {
  return [
    line(x - 70, y + 52, 346, 304, stroke(C.rule, 2)),
    circle(x, y, 92, solid(C.white)),
    path(
      `M${x - 88} ${y + 24}H${x - 30}V${y + 52}L${x - 48} ${y + 75}Q${x - 84} ${y + 52} ${x - 88} ${y + 24}Z`,
      solid(C.steelDark),
    ),
    path(`M${x + 26} ${y + 24}L${x + 42} ${y - 14}H${x + 90}Q${x + 92} ${y + 10} ${x + 88} ${y + 24}Z`, solid(C.white)),
    ...[x - 30, x + 26].map(at => line(at, y + 14, at, y - 38, stroke(C.blue, 1.5))),
    line(x - 28, y - 30, x + 24, y - 30, stroke(C.blue, 2)),
    path(`M${x - 30} ${y - 30}l12 -5v10zM${x + 26} ${y - 30}l-12 -5v10z`, { fill: C.blue }),
    text(x - 2, y - 44, '1 to 2 mm', { size: 24, weight: 700, fill: C.blue, anchor: 'middle' }),
  ].join('')
}
