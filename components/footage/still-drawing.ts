/** A point of the picture as shares of its width and height, 0 to 1. */
export type Point = { readonly x: number; readonly y: number }

/** What is drawn on a still, from one point to another. */
export type Sign = { readonly shape: 'arrow' | 'ring'; readonly from: Point; readonly to: Point }

/** What was made of a frame: a part of it, with signs. Points are shares of the whole frame. */
export type Drawing = { readonly crop?: { readonly from: Point; readonly to: Point }; readonly signs: readonly Sign[] }

export type Box = { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

/** Narrowest crop, share of the picture. */
const NARROWEST = 0.05

/** @returns the cropped part in pixels; the whole picture without a crop or with one too small to be meant */
export const cropBox = ({ crop }: Drawing, width: number, height: number): Box => {
  const whole = { left: 0, top: 0, width, height }
  if (crop === undefined) return whole
  const [x1, x2] = [crop.from.x, crop.to.x].sort((a, b) => a - b) as [number, number]
  const [y1, y2] = [crop.from.y, crop.to.y].sort((a, b) => a - b) as [number, number]
  if (x2 - x1 < NARROWEST || y2 - y1 < NARROWEST) return whole
  const left = Math.round(x1 * width)
  const top = Math.round(y1 * height)
  return { left, top, width: Math.round(x2 * width) - left, height: Math.round(y2 * height) - top }
}

const line = (pen: CanvasRenderingContext2D, { shape, from, to }: Sign, width: number, height: number): void => {
  const [x1, y1, x2, y2] = [from.x * width, from.y * height, to.x * width, to.y * height]
  pen.beginPath()
  if (shape === 'ring') {
    pen.ellipse((x1 + x2) / 2, (y1 + y2) / 2, Math.abs(x2 - x1) / 2, Math.abs(y2 - y1) / 2, 0, 0, 2 * Math.PI)
  } else {
    const angle = Math.atan2(y2 - y1, x2 - x1)
    const head = Math.min(0.4 * Math.hypot(x2 - x1, y2 - y1), 0.05 * Math.max(width, height))
    pen.moveTo(x1, y1)
    pen.lineTo(x2, y2)
    for (const turn of [-0.5, 0.5]) {
      pen.moveTo(x2, y2)
      pen.lineTo(x2 - head * Math.cos(angle + turn), y2 - head * Math.sin(angle + turn))
    }
  }
  pen.stroke()
}

/**
 * Draws signs in picture coordinates: a light line in a dark one, so that they show on any picture and in black and white.
 *
 * @param width of the whole frame, pixels
 */
export const drawSigns = (
  pen: CanvasRenderingContext2D,
  signs: readonly Sign[],
  width: number,
  height: number,
): void => {
  const unit = Math.max(width, height) / 160
  pen.lineCap = 'round'
  pen.lineJoin = 'round'
  for (const [colour, thick] of [
    ['#16202b', 2],
    ['#ffd98a', 1],
  ] as const) {
    pen.strokeStyle = colour
    pen.lineWidth = unit * thick
    for (const sign of signs) line(pen, sign, width, height)
  }
}

/** @returns the finished still as JPEG, cropped, with its signs */
export const finishStill = async (picture: ImageBitmap, drawing: Drawing): Promise<Blob> => {
  const box = cropBox(drawing, picture.width, picture.height)
  const canvas = document.createElement('canvas')
  canvas.width = box.width
  canvas.height = box.height
  const pen = canvas.getContext('2d')
  if (pen === null) throw new Error('the browser gives no canvas to draw on')
  pen.translate(-box.left, -box.top)
  pen.drawImage(picture, 0, 0)
  drawSigns(pen, drawing.signs, picture.width, picture.height)
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      blob => (blob === null ? reject(new Error('the still could not be written')) : resolve(blob)),
      'image/jpeg',
      0.92,
    ),
  )
}
