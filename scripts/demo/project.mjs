import { HEADING, toMarks, WAIVERS } from './marks.mjs'

/**
 * The finished project of the demo, checked by the project's own reader.
 *
 * @param footage name, content and length in seconds
 * @param captions content of demo.vtt
 */
export const toProjectFile = async (ours, footage, captions) => {
  const read = ours.readTranscript(new TextEncoder().encode(captions), 'demo.vtt')
  if (!read.ok || read.value.problems.length > 0) throw new Error(JSON.stringify(read))
  const { transcript } = read.value
  const file = new Blob([footage.content])
  const project = {
    format: 'tellwright',
    version: 1,
    procedure: HEADING,
    recording: {
      footage: {
        name: footage.name,
        bytes: file.size,
        seconds: footage.seconds,
        fingerprint: await ours.fingerprintOf(file),
      },
      transcript,
    },
    marks: toMarks(ours.toSentences(transcript)),
    waivers: WAIVERS,
  }
  const text = ours.formatProject(project)
  const back = ours.parseProject(text)
  if (!back.ok) throw new Error(JSON.stringify(back.problems))
  return text
}
