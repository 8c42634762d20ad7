import { TellwrightError } from '@/lib/procedure/problem'

/** Something drawn on a still, or the part of it that is kept. Fractions of the picture: x and w of its width, y and h of its height. */
export type Shape = {
  readonly is: 'ring' | 'arrow' | 'crop'
  /** Upper left corner; for an arrow the tail. */
  readonly x: number
  readonly y: number
  /** Size, above 0; for an arrow the way to its head, either sign. */
  readonly w: number
  readonly h: number
}

/** Quality of the JPEG, 0 to 1. */
const QUALITY = 0.92

/** Stroke width as a share of the picture's longer side: visible on a phone and in print. */
const STROKE = 0.008

type Pen = OffscreenCanvasRenderingContext2D

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value))

/** @returns the shape inside the picture; rings and crops at least 2 % wide and high. */
export const insidePicture = (shape: Shape): Shape => {
  if (shape.is === 'arrow') {
    const [x, y] = [clamp(shape.x, 0, 1), clamp(shape.y, 0, 1)]
    return { ...shape, x, y, w: clamp(shape.w, -x, 1 - x), h: clamp(shape.h, -y, 1 - y) }
  }
  const [w, h] = [clamp(shape.w, 0.02, 1), clamp(shape.h, 0.02, 1)]
  return { ...shape, w, h, x: clamp(shape.x, 0, 1 - w), y: clamp(shape.y, 0, 1 - h) }
}

/** Lines of an arrow in pixels: shaft and the two barbs, from the tail (x, y) to the head. */
export const arrowLines = (
  x: number,
  y: number,
  w: number,
  h: number,
  barb: number,
): readonly (readonly [number, number])[] => {
  const angle = Math.atan2(h, w)
  const [hx, hy] = [x + w, y + h]
  const end = (turn: number): readonly [number, number] => [
    hx - barb * Math.cos(angle + turn),
    hy - barb * Math.sin(angle + turn),
  ]
  return [[x, y], [hx, hy], end(Math.PI / 6), [hx, hy], end(-Math.PI / 6)]
}

const trace = (pen: Pen, shape: Shape, width: number, height: number): void => {
  const [x, y, w, h] = [shape.x * width, shape.y * height, shape.w * width, shape.h * height]
  pen.beginPath()
  if (shape.is === 'ring') pen.ellipse(x + w / 2, y + h / 2, w / 2, h / 2, 0, 0, 2 * Math.PI)
  else
    for (const [i, [px, py]] of arrowLines(x, y, w, h, STROKE * 5 * Math.max(width, height)).entries())
      if (i === 0) pen.moveTo(px, py)
      else pen.lineTo(px, py)
  pen.stroke()
}

/**
 * Draws rings and arrows on a picture and cuts it to its crop. Each line is dark inside a light border, so that it shows on
 * any ground and in black and white.
 *
 * @param picture any image the browser reads; not changed
 * @param shapes in order; the last crop counts
 * @returns a JPEG
 * @throws TellwrightError `picture-unreadable`
 */
export const drawOn = async (picture: Blob, shapes: readonly Shape[]): Promise<Blob> => {
  const image = await createImageBitmap(picture).catch((cause: unknown) => {
    throw new TellwrightError('picture-unreadable', 'the still could not be read as a picture; take it again', {
      cause,
    })
  })
  const { width, height } = image
  const whole = { x: 0, y: 0, w: 1, h: 1 }
  const crop = shapes.findLast(shape => shape.is === 'crop') ?? whole
  const canvas = new OffscreenCanvas(Math.max(1, Math.round(crop.w * width)), Math.max(1, Math.round(crop.h * height)))
  const pen = canvas.getContext('2d')
  if (pen === null) throw new TellwrightError('picture-unreadable', 'this browser gives no room to draw the still')
  pen.translate(-crop.x * width, -crop.y * height)
  pen.drawImage(image, 0, 0)
  image.close()
  pen.lineCap = 'round'
  pen.lineJoin = 'round'
  for (const [colour, factor] of [
    ['#fffdf9', 2.2],
    ['#17457a', 1],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = STROKE * Math.max(width, height) * factor
    for (const shape of shapes) if (shape.is !== 'crop') trace(pen, shape, width, height)
  }
  return canvas.convertToBlob({ type: 'image/jpeg', quality: QUALITY })
}
