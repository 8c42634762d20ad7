import { emptyProject, type Project } from '@/lib/procedure/project'
import { caution, check, material, reason, spec, step, symptom, tool } from '../../builders'

/** An invented job: the yearly service of a bench drill's belt drive. */
export const exampleProject = (): Project => ({
  ...emptyProject(),
  procedure: {
    title: 'Yearly service of the pillar drill',
    equipment: 'Belt-driven pillar drill, 16 speed',
    scope: 'Covers belts, quill and chuck.\n\nThe motor itself is not opened.',
    interval: { hours: 500, months: 12 },
    revision: 'B',
    author: 'Workshop 2',
    references: [
      { title: 'Maker’s manual', part: 'section 6' },
      { title: 'Belt maker’s leaflet', part: '' },
    ],
  },
  recording: {
    footage: { name: 'drill service.mp4', bytes: 1, seconds: 754.32, fingerprint: 'ab' },
    transcript: {
      name: 'drill.vtt',
      form: 'webvtt',
      cues: [
        { start: 0, end: 6, text: 'Right, this is the yearly service on the pillar drill.', speaker: 'Ana' },
        {
          start: 7,
          end: 18.5,
          text: 'First pull the plug, and I mean pull it, because the no volt release has been known to stick in.',
          speaker: 'Ana',
        },
        { start: 75, end: 92, text: 'Then slack off the motor lock and lift the belts out, one after the other.' },
        {
          start: 120,
          end: 131.25,
          text: 'Push with your thumb, you want ten to twelve mil in the middle of the long run.',
        },
        { start: 140, end: 150, text: 'Now nip the lock bolts up to 25 newton metres.' },
      ],
    },
  },
  marks: [
    step(7, 18.5, 'Pull the mains plug', { id: 'step-1', place: 1 }),
    caution(
      9,
      15,
      'The switch can stick in; the spindle starts by itself when power returns. Pull the plug before you reach in.',
      {
        id: 'caution-1',
        level: 'warning',
        hazard: 'entanglement',
        step: 'step-1',
      },
    ),
    step(75, 92, 'Slacken the motor lock and lift out both belts', { id: 'step-2', place: 2 }),
    tool(76, 78, '13 mm spanner', { id: 'tool-1', step: 'step-2' }),
    reason(85, 92, 'A tight belt cannot be lifted over the pulley rim', { id: 'reason-1', step: 'step-2' }),
    step(120, 131.25, 'Fit new belts and tension them', {
      id: 'step-3',
      place: 3,
      pencilled: { confidence: 0.62, reason: 'imperative after a pause' },
    }),
    material(121, 122, 'V-belt, 660 mm', { id: 'material-1', step: 'step-3', price: '9.50 each' }),
    spec(124, 131.25, 'belt deflection', {
      id: 'spec-1',
      step: 'step-3',
      quantity: { low: 10, high: 12, unit: 'mm' },
      reference: 'firm thumb pressure at mid-span',
      basis: 'manual',
      citation: 'section 6.2',
    }),
    check(126, 131, 'Belts run without flutter', { id: 'check-1', step: 'step-3' }),
    symptom(128, 131, 'A slack belt squeals on start-up', { id: 'symptom-1', step: 'step-3' }),
    step(140, 150, 'Tighten the motor lock bolts', { id: 'step-4', place: 4 }),
    tool(141, 142, '13 mm spanner', { id: 'tool-2', step: 'step-4' }),
    tool(142, 143, 'torque wrench', { id: 'tool-3', step: 'step-4' }),
    spec(144, 150, 'lock bolt torque', {
      id: 'spec-2',
      step: 'step-4',
      quantity: { nominal: 25, unit: 'N.m' },
      basis: 'spoken',
    }),
    spec(146, 150, 'belt guard screws', { id: 'spec-3', step: 'step-4', reference: 'hand tight' }),
    caution(146, 149, 'Too tight and the casting cracks', { id: 'caution-2', level: 'notice', step: 'step-4' }),
  ],
})
