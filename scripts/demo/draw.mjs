/** Colours of the page, and tints of steel, wood and oil that go with them. */
export const C = {
  paper: '#FAF8F3',
  ink: '#16202B',
  rule: '#D9D4C7',
  floor: '#EFEBE0',
  blue: '#17457A',
  paint: '#C9D7E6',
  paintDark: '#A9BFD6',
  brass: '#A87B2D',
  brassLight: '#E3CF9F',
  steel: '#E4E6E6',
  steelDark: '#C3C8CB',
  edge: '#8F979C',
  wood: '#C9A57A',
  oil: '#D9A441',
  warning: '#F07D00',
  caution: '#FFD100',
  white: '#FFFFFF',
}

export const WIDTH = 960
export const HEIGHT = 540

const attributes = more =>
  Object.entries(more)
    .map(([name, value]) => ` ${name}="${value}"`)
    .join('')

const shape =
  (name, keys) =>
  (...args) => {
    const more = args.length > keys.length ? args.at(-1) : {}
    const own = Object.fromEntries(keys.map((key, i) => [key, args[i]]))
    return `<${name}${attributes({ ...own, ...more })}/>`
  }

/** Shapes: their measures in pixels, then further attributes. */
export const rect = shape('rect', ['x', 'y', 'width', 'height'])
export const circle = shape('circle', ['cx', 'cy', 'r'])
export const line = shape('line', ['x1', 'y1', 'x2', 'y2'])
export const path = shape('path', ['d'])

/** Outline of a drawn part: filled, with the one stroke weight. */
export const solid = (fill, more = {}) => ({
  fill,
  stroke: C.ink,
  'stroke-width': 2.5,
  'stroke-linejoin': 'round',
  ...more,
})
/** A bare stroke. */
export const stroke = (colour, width = 2.5, more = {}) => ({
  fill: 'none',
  stroke: colour,
  'stroke-width': width,
  'stroke-linecap': 'round',
  'stroke-linejoin': 'round',
  ...more,
})

export const group = (transform, ...parts) => `<g transform="${transform}">${parts.join('')}</g>`
export const faded = (opacity, ...parts) =>
  opacity <= 0 ? '' : `<g opacity="${Math.min(1, opacity)}">${parts.join('')}</g>`

const safe = text => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')

/** Text on its baseline; `anchor` is start, middle or end. */
export const text = (x, y, words, { size = 22, weight = 400, fill = C.ink, anchor = 'start', mono = false } = {}) =>
  `<text x="${x}" y="${y}" font-family="${mono ? 'B612 Mono' : 'Atkinson Hyperlegible'}" font-size="${size}" font-weight="${weight}" fill="${fill}" text-anchor="${anchor}">${safe(words)}</text>`

/** A name beside a part, with a leader line that ends in a dot on it. */
export const label = (x, y, words, toX, toY, { anchor = 'start', size = 22 } = {}) => {
  const isUnder = anchor === 'middle' || (anchor === 'start' ? toX > x : toX < x)
  const from = { start: isUnder ? x + 14 : x - 8, middle: x, end: isUnder ? x - 14 : x + 8 }[anchor]
  const fromY = isUnder ? (toY > y ? y + 8 : y - size * 0.95) : y - size * 0.33
  return [
    line(from, fromY, toX, toY, stroke(C.blue, 2)),
    circle(toX, toY, 4.5, { fill: C.blue }),
    text(x, y, words, { size, weight: 700, fill: C.blue, anchor }),
  ].join('')
}

/** A value in a plate, as on a drawing. */
export const plate = (x, y, words, { width = 200, fill = C.blue, ink = C.white, size = 28 } = {}) =>
  rect(x, y, width, size * 1.7, { rx: 6, fill }) +
  text(x + width / 2, y + size * 1.2, words, { size, weight: 700, fill: ink, anchor: 'middle' })

/** Signal panel: the safety sign and the signal word. @source ANSI Z535.4, from memory: warning orange, caution yellow */
export const signal = (x, y, word, words) =>
  [
    rect(x, y, 230, 44, { rx: 4, fill: word === 'WARNING' ? C.warning : C.caution }),
    path(`M${x + 26} ${y + 8} l15 27 h-30 z`, solid(C.ink, { 'stroke-width': 1 })),
    rect(x + 24.5, y + 17, 3, 9, { fill: C.white }),
    rect(x + 24.5, y + 28.5, 3, 3, { fill: C.white }),
    text(x + 54, y + 32, word, { size: 27, weight: 700 }),
    ...words.map((one, i) => text(x, y + 74 + i * 27, one, { size: 22, weight: 700 })),
  ].join('')

/** Share of the way from a to b, 0 to 1. */
export const part = (value, a, b) => Math.max(0, Math.min(1, (value - a) / (b - a)))
/** The same, starting and stopping softly. */
export const soft = (value, a, b) => {
  const p = part(value, a, b)
  return p * p * (3 - 2 * p)
}
export const mix = (a, b, p) => a + (b - a) * p

/** A point on a circle, angle in degrees clockwise from the right. */
export const polar = (cx, cy, r, degrees) => {
  const a = (degrees * Math.PI) / 180
  return [cx + r * Math.cos(a), cy + r * Math.sin(a)]
}

/** An arc as path data, clockwise. */
export const arc = (cx, cy, r, from, to) => {
  const [x1, y1] = polar(cx, cy, r, from)
  const [x2, y2] = polar(cx, cy, r, to)
  return `M${x1} ${y1}A${r} ${r} 0 ${to - from > 180 ? 1 : 0} 1 ${x2} ${y2}`
}

/** A hexagon bolt head seen from above, turned by some degrees; a socket head shows its hexagon inside. */
export const bolt = (x, y, r, turn = 0, isSocket = false) => {
  const hexagon = radius =>
    `M${[0, 60, 120, 180, 240, 300]
      .map(a =>
        polar(x, y, radius, a + turn)
          .map(n => n.toFixed(1))
          .join(' '),
      )
      .join('L')}Z`
  return isSocket
    ? circle(x, y, r, solid(C.steelDark)) + path(hexagon(r * 0.55), solid(C.ink, { 'stroke-width': 1 }))
    : path(hexagon(r), solid(C.steelDark)) + circle(x, y, r * 0.45, stroke(C.ink, 1.5))
}

/** A whole picture. */
export const picture = (...parts) =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}">${rect(0, 0, WIDTH, HEIGHT, { fill: C.paper })}${parts.join('')}</svg>`
