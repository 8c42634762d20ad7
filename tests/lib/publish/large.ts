import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'

const ACTIONS = ['Loosen', 'Lift out', 'Clean', 'Fit', 'Tighten', 'Wipe down', 'Line up', 'Check']
const PARTS = [
  'the guard screws',
  'the upper belt',
  'the quill collar',
  'the motor plate',
  'the spindle pulley',
  'the depth stop',
]

/** A project of `count` steps, each with a spec and a check, every third with a tool, every fifth with a caution. Same every time. */
export const largeProject = (count: number): Project => {
  const marks = Array.from({ length: count }, (_, i): Mark[] => {
    const [start, step] = [i * 15 + 2.25, `step-${i + 1}`]
    const base = { said: '', step, start, end: start + 4 }
    const name = PARTS[i % PARTS.length] ?? ''
    return [
      {
        id: step,
        kind: 'step',
        start,
        end: start + 12.5,
        said: '',
        place: i + 1,
        text: `${ACTIONS[i % ACTIONS.length]} ${name}`,
      },
      {
        ...base,
        id: `spec-${i}`,
        kind: 'spec',
        text: `${name} torque`,
        quantity: { low: 10 + (i % 20), high: 12 + (i % 20), unit: 'N.m' },
        basis: 'manual',
        citation: `table ${i + 1}`,
      },
      { ...base, id: `check-${i}`, kind: 'check', text: `${name} sit flat` },
      ...(i % 3 === 0 ? [{ ...base, id: `tool-${i}`, kind: 'tool' as const, text: `${6 + (i % 9)} mm spanner` }] : []),
      ...(i % 5 === 0
        ? [
            {
              ...base,
              id: `caution-${i}`,
              kind: 'caution' as const,
              level: 'warning' as const,
              hazard: 'pinching',
              text: 'Keep fingers clear of the pulley; it can turn when the belt lets go.',
            },
          ]
        : []),
    ]
  }).flat()
  const cues = Array.from({ length: count * 3 }, (_, i) => ({
    start: i * 5,
    end: i * 5 + 4.5,
    text: `Now we take ${PARTS[i % PARTS.length]} and turn them by about ten to twelve newton metres, all right.`,
    speaker: 'Ana',
  }))
  return {
    ...emptyProject(),
    procedure: {
      ...emptyProject().procedure,
      title: 'Overhaul of the pillar drill',
      equipment: 'Pillar drill',
      interval: { months: 24 },
    },
    recording: {
      footage: { name: 'overhaul.mp4', bytes: 1, seconds: count * 15 + 10, fingerprint: 'cd' },
      transcript: { name: 'overhaul.vtt', form: 'webvtt', cues },
    },
    marks,
  }
}
