import { WebVTT } from 'vtt.js'

/** That parser adds hours, minutes and seconds as floats; a file has whole milliseconds. */
const milli = (seconds: number): number => Math.round(seconds * 1000) / 1000

/** The cues of a WebVTT file as another parser reads them. @source vtt.js 0.13 */
export const referenceCues = (text: string): readonly { start: number; end: number; text: string }[] => {
  const found: { start: number; end: number; text: string }[] = []
  class VTTCue {
    startTime: number
    endTime: number
    text: string
    constructor(startTime: number, endTime: number, held: string) {
      this.startTime = startTime
      this.endTime = endTime
      this.text = held
    }
  }
  const parser = new WebVTT.Parser({ VTTCue }, WebVTT.StringDecoder())
  parser.oncue = cue => void found.push({ start: milli(cue.startTime), end: milli(cue.endTime), text: cue.text })
  parser.parse(text)
  parser.flush()
  return found
}

/** Text of a cue without its tags, references decoded. */
export const plainCue = (text: string): string =>
  text
    .replace(/<[^>]*>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&amp;/g, '&')
