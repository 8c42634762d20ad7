import type { Mark } from '@/lib/procedure/mark'
import type { Project } from '@/lib/procedure/project'
import type { FindingPlace } from '@/lib/review/rule'
import { sheetOrder } from './sheet-order'
import type { Note, Sound } from './sound/notation'

/** One fault put into a sound procedure: what was done, which rules may find it, and at which places. */
export type Fault = {
  readonly what: string
  readonly kind: string
  readonly project: Project
  readonly rules: readonly string[]
  readonly isPlace: (place: FindingPlace, project: Project) => boolean
}

const EMPTY: Note = { undoes: [], restores: [], before: [], after: [], proves: [] }
const note = ({ notes }: Sound, mark: Mark): Note => notes.get(mark.id) ?? EMPTY

const at =
  (...ids: readonly string[]) =>
  (place: FindingPlace): boolean =>
    place.at === 'mark' && ids.includes(place.mark)
const anywhere = (): boolean => true
const over =
  (start: number, end: number) =>
  (place: FindingPlace, project: Project): boolean => {
    if (place.at === 'talk') return place.start < end && place.end > start
    const mark = place.at === 'mark' ? project.marks.find(({ id }) => id === place.mark) : undefined
    return mark !== undefined && mark.start < end && mark.end > start
  }

const without = (project: Project, ...ids: readonly string[]): Project => {
  const gone = new Set(ids)
  const kept = project.marks.filter(({ id }) => !gone.has(id))
  const steps = sheetOrder(kept)
  return {
    ...project,
    marks: kept.map(mark =>
      mark.step !== undefined && gone.has(mark.step)
        ? { ...mark, step: steps.findLast(({ start }) => start <= mark.start)?.id ?? steps[0]?.id ?? '' }
        : mark,
    ),
  }
}
const changed = (
  project: Project,
  id: string,
  change: Partial<Mark>,
  ...cleared: readonly (keyof Mark)[]
): Project => ({
  ...project,
  marks: project.marks.map(mark => {
    if (mark.id !== id) return mark
    const rest: Partial<Mark> = { ...mark }
    for (const field of cleared) delete rest[field]
    return { ...rest, ...change } as Mark
  }),
})
const saying = (project: Project, text: string): Project => {
  const { transcript } = project.recording
  const end = Math.max(...project.marks.map(mark => mark.end)) + 1
  if (transcript === null) return project
  return {
    ...project,
    recording: {
      ...project.recording,
      transcript: { ...transcript, cues: [...transcript.cues, { start: end, end: end + 5, text }] },
    },
  }
}
const endOf = (project: Project): number => Math.max(...project.marks.map(mark => mark.end)) + 1
const reordered = (project: Project, from: Mark, to: Mark): Project => {
  const steps = sheetOrder(project.marks).filter(({ id }) => id !== from.id)
  steps.splice(steps.findIndex(({ id }) => id === to.id) + 1, 0, from)
  const places = new Map(steps.map(({ id }, i) => [id, i + 1]))
  return {
    ...project,
    marks: project.marks.map(mark => ({
      ...mark,
      ...(places.has(mark.id) ? { place: places.get(mark.id) as number } : {}),
    })),
  }
}

/** Rules of what was undone and not made good. */
export const RESTORE = [
  'not-refitted',
  'not-closed',
  'not-reopened',
  'not-refilled',
  'not-reconnected',
  'not-tightened',
  'power-not-restored',
  'lock-not-removed',
  'not-lowered',
  'aid-left-in',
]
const ORDER = ['preparation-late', 'step-late', 'needs-later', 'run-unready', 'caution-late']
const PROOF: Readonly<Record<string, readonly string[]>> = {
  leak: ['no-leak-test'],
  function: ['no-function-test'],
  rotation: ['no-rotation-check'],
  brake: ['brakes-not-tested'],
  device: ['safety-device-not-tested'],
  retorque: ['no-retorque'],
  waste: ['no-disposal'],
}

type Seeder = (sound: Sound) => readonly Fault[]
const steps = (project: Project): readonly Mark[] => sheetOrder(project.marks)
const ofKind = (project: Project, kind: Mark['kind']): readonly Mark[] =>
  project.marks.filter(mark => mark.kind === kind)

const unrestored: Seeder = sound =>
  steps(sound.project).flatMap(step =>
    note(sound, step).restores.map(thing => {
      const undone = steps(sound.project).find(other => note(sound, other).undoes.includes(thing))
      return {
        what: `drop "${step.text}"`,
        kind: 'unrestored',
        project: without(sound.project, step.id),
        rules: RESTORE,
        isPlace: at(undone?.id ?? ''),
      }
    }),
  )

const unproved: Seeder = sound =>
  Object.entries(PROOF).flatMap(([proof, rules]) => {
    const own = sound.project.marks.filter(mark =>
      note(sound, mark).proves.some(word => word === proof || (proof === 'function' && word !== 'waste')),
    )
    return own.length === 0
      ? []
      : [
          {
            what: `drop ${proof}`,
            kind: `no-${proof}`,
            project: without(sound.project, ...own.map(({ id }) => id)),
            rules,
            isPlace: anywhere,
          },
        ]
  })

const outOfOrder: Seeder = sound =>
  steps(sound.project).flatMap(early =>
    note(sound, early).before.flatMap(word => {
      const late = steps(sound.project).find(step => note(sound, step).after.includes(word))
      if (late === undefined) return []
      return [
        {
          what: `move "${early.text}" after "${late.text}"`,
          kind: 'order',
          project: reordered(sound.project, early, late),
          rules: ORDER,
          isPlace: at(early.id, late.id, ...ofKind(sound.project, 'caution').map(({ id }) => id)),
        },
      ]
    }),
  )

/** Every fifth step put behind the next one, whatever they do: only the talk tells that they are the other way round. */
const moved: Seeder = ({ project }) =>
  steps(project).flatMap((early, i) => {
    const late = steps(project)[i + 1]
    if (project.recording.transcript === null || late === undefined || i % 5 !== 2) return []
    return [
      {
        what: `move "${early.text}" after "${late.text}", against the talk`,
        kind: 'moved',
        project: reordered(project, early, late),
        rules: ['order-unlike-talk'],
        isPlace: at(early.id, late.id),
      },
    ]
  })

const headless: Seeder = ({ project }) => {
  const { interval, ...heading } = project.procedure
  return [
    {
      what: 'no equipment',
      kind: 'no-equipment',
      project: { ...project, procedure: { ...project.procedure, equipment: '' } },
      rules: ['no-equipment'],
      isPlace: place => place.at === 'whole',
    },
    ...(interval !== undefined && /servic|oil|sharpen|clean/i.test(heading.title)
      ? [
          {
            what: 'no interval',
            kind: 'no-interval',
            project: { ...project, procedure: heading },
            rules: ['no-interval'],
            isPlace: (place: FindingPlace) => place.at === 'whole',
          },
        ]
      : []),
  ]
}

const specs: Seeder = ({ project }) =>
  ofKind(project, 'spec').flatMap((mark): Fault[] => {
    const { quantity } = mark
    if (quantity?.unit === undefined || quantity.unit === '1') return []
    const { unit, ...bare } = quantity
    const value = quantity.high ?? quantity.low ?? 1
    const twice = (factor: number) => ({
      ...(quantity.low === undefined ? {} : { low: quantity.low * factor }),
      ...(quantity.high === undefined ? {} : { high: quantity.high * factor }),
      unit,
    })
    const other: Mark = { ...mark, id: `${mark.id}-again`, start: mark.end, end: mark.end + 0.5, quantity: twice(1.3) }
    const fault = (kind: string, next: Project, ...rules: string[]): Fault => ({
      what: `${kind}: ${mark.text}`,
      kind,
      project: next,
      rules,
      isPlace: at(mark.id, other.id),
    })
    return [
      fault('no-unit', changed(project, mark.id, { quantity: bare }), 'spec-no-unit'),
      fault('no-tolerance', changed(project, mark.id, { quantity: { nominal: value, unit } }), 'spec-no-tolerance'),
      fault('spoken', changed(project, mark.id, { basis: 'spoken' }), 'spec-no-basis'),
      fault('no-basis', changed(project, mark.id, {}, 'basis', 'citation'), 'spec-no-basis'),
      fault('conflict', { ...project, marks: [...project.marks, other] }, 'spec-conflict'),
      fault('crossed', changed(project, mark.id, { quantity: { low: 9, high: 3, unit } }), 'spec-implausible'),
      fault(
        'equivalent',
        changed(project, mark.id, {
          quantity: { nominal: 20, unit: 'N.m' },
          equivalent: { nominal: 20, unit: '[ft_i].[lbf_av]' },
        }),
        'spec-equivalent',
      ),
      ...(unit === 'N.m'
        ? [
            fault(
              'torque',
              changed(project, mark.id, { text: `M6 ${mark.text}`, quantity: { low: 150, high: 170, unit } }),
              'spec-torque',
            ),
          ]
        : []),
      ...(unit === 'N.m' || unit === 'mm'
        ? [
            fault(
              'coarse',
              {
                ...project,
                marks: [
                  ...project.marks,
                  {
                    id: 'tool-coarse',
                    kind: 'tool',
                    start: 0,
                    end: 1,
                    text: 'torque wrench',
                    said: '',
                    capability: { range: { low: 5 * value, high: 50 * value, unit } },
                  },
                ],
              },
              'tool-cannot-verify',
            ),
          ]
        : []),
      fault('vague', changed(project, mark.id, { reference: 'snug' }, 'quantity'), 'spec-vague'),
      fault('not-said', changed(project, mark.id, { basis: 'spoken', quantity: twice(3.7) }), 'number-not-said'),
    ]
  })

/** The step says another value than its spec, in the words of the trade. */
const contradicted: Seeder = ({ project }) =>
  ofKind(project, 'spec').flatMap((mark): Fault[] => {
    const { quantity } = mark
    const step = steps(project).find(({ id }) => id === mark.step)
    const names = { 'N.m': 'newton metres', bar: 'bar', L: 'litres', V: 'volts', A: 'amps', Cel: '°C' } as const
    const unit = Object.entries(names).find(([code]) => code === quantity?.unit)?.[1]
    const value = quantity?.low === undefined ? 2.5 * (quantity?.high ?? 0) : 0.4 * quantity.low
    if (step === undefined || unit === undefined || value === 0) return []
    const text = `${step.text} to ${Number(value.toPrecision(3))} ${unit}`
    return [
      {
        what: `contradicted: ${text}`,
        kind: 'contradicted',
        project: changed(project, step.id, { text }),
        rules: ['text-contradicts-spec'],
        isPlace: at(step.id),
      },
    ]
  })

const cautions: Seeder = ({ project }) =>
  ofKind(project, 'caution').flatMap((mark): Fault[] => {
    const order = steps(project)
    const own = order.findIndex(({ id }) => id === mark.step)
    const fault = (kind: string, next: Project, rules: readonly string[], place = at(mark.id)): Fault => ({
      what: `${kind}: ${mark.text}`,
      kind,
      project: next,
      rules,
      isPlace: place,
    })
    const [hazard = '', rest = ''] = mark.text.split(';')
    const injures = mark.level !== 'notice'
    return [
      ...(injures
        ? [
            fault(
              'caution-dropped',
              without(project, mark.id),
              ['hazard-no-caution', 'licensed-work', 'no-lockout', 'warning-not-marked'],
              (place: FindingPlace) =>
                place.at === 'talk'
                  ? place.start < mark.end && place.end > mark.start
                  : at(...[-2, -1, 0, 1, 2, 3, 4].map(i => order[own + i]?.id ?? ''))(place),
            ),
          ]
        : []),
      ...(injures && own >= 0 && own + 2 < order.length
        ? [fault('caution-late', changed(project, mark.id, { step: order.at(-1)?.id ?? '' }), ['caution-late'])]
        : []),
      fault('caution-blunt', changed(project, mark.id, { text: 'Be careful with this' }), ['caution-incomplete']),
      fault('caution-no-avoidance', changed(project, mark.id, { text: hazard }), ['caution-incomplete', 'signal-word']),
      fault(
        'caution-no-consequence',
        changed(project, mark.id, { text: rest.trim() === '' ? 'Mind it' : rest.trim() }),
        ['caution-incomplete', 'signal-word'],
      ),
      fault('no-signal-word', changed(project, mark.id, {}, 'level'), ['signal-word']),
      fault('wrong-signal-word', changed(project, mark.id, { level: injures ? 'notice' : 'danger' }), ['signal-word']),
    ]
  })

const language: Seeder = ({ project }) =>
  steps(project).flatMap((step, i, all): Fault[] => {
    const fault = (kind: string, text: string, rule: string): Fault => ({
      what: `${kind}: ${text}`,
      kind,
      project: changed(project, step.id, { text }),
      rules: [rule],
      isPlace: at(step.id),
    })
    const next = all[i + 3] ?? all[i - 3]
    const lower = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
    return [
      fault('no-verb', `The mechanic will now ${lower(step.text)}`, 'no-verb-first'),
      fault(
        'long',
        `${step.text} so that you have a clear view of what is behind it and can get at it with both hands later in the day`,
        'too-long',
      ),
      fault(
        'this-guy',
        `${step.text.split(' ')[0] ?? ''} this guy ${i % 2 === 0 ? 'here' : 'with care'}`,
        'vague-thing',
      ),
      fault('that-thing', `${step.text.split(' ')[0] ?? ''} that little thing carefully`, 'vague-thing'),
      ...(next === undefined
        ? []
        : [
            fault(
              'two-actions',
              `${step.text}, ${lower(all[i + 1]?.text ?? '')} and ${lower(next.text)}`,
              'two-actions',
            ),
          ]),
      ...(/anticlockwise/.test(step.text)
        ? [fault('direction', step.text.replace('anticlockwise', 'clockwise'), 'direction-disagrees')]
        : []),
      fault('short-form', `${step.text} at the QZX`, 'unexplained-short-form'),
    ]
  })

const talk: Seeder = ({ project }) => {
  const [from, to] = [endOf(project), endOf(project) + 5]
  const fault = (kind: string, text: string, ...rules: string[]): Fault => ({
    what: `${kind}: ${text}`,
    kind,
    project: saying(project, text),
    rules,
    isPlace: over(from, to),
  })
  return [
    ...[
      'Disconnect the earth strap.',
      'Now grease the hinge pins.',
      'Then unscrew the breather cap.',
      'You want to loosen the clamp bolt.',
      'Go ahead and remove the retaining ring.',
    ].map(text => fault('order-not-marked', text, 'order-not-marked')),
    ...[
      'The clamp bolt must be torqued to between 61 and 67 newton metres.',
      'The gap should be no more than 0.85 millimetres.',
      'You need at least 77 psi there.',
    ].map(text => fault('limit-not-marked', text, 'limit-not-marked', 'order-not-marked')),
    ...[
      'Mind your fingers round that flywheel, it will have them before you can shout.',
      'Never put your face over the vent, the steam will blind you.',
      'Keep everybody back when you let go of that, it could kill somebody.',
    ].map(text => fault('warning-not-marked', text, 'warning-not-marked')),
  ]
}

const corrected: Seeder = ({ project }) =>
  ofKind(project, 'spec').flatMap((mark): Fault[] => {
    const unit = mark.quantity?.unit
    if (unit !== 'N.m' && unit !== 'mm') return []
    const [from, to] = [endOf(project), endOf(project) + 5]
    const spoken = unit === 'N.m' ? 'newton metres' : 'millimetres'
    const own: Mark = {
      ...mark,
      id: `${mark.id}-c`,
      start: from,
      end: to,
      basis: 'spoken',
      quantity: { nominal: 40, unit },
    }
    const next = saying(project, `The ${mark.text} is 40, no, sorry, 30 ${spoken}.`)
    return [
      {
        what: `corrected: ${mark.text}`,
        kind: 'corrected',
        project: { ...next, marks: [...next.marks.filter(({ id }) => id !== mark.id), own] },
        rules: ['corrected-value'],
        isPlace: at(own.id),
      },
    ]
  })

const tools: Seeder = ({ project }) => {
  const said = ofKind(project, 'tool').flatMap((mark): Fault[] => {
    const step = steps(project).find(({ text }) =>
      new RegExp(`\\b(?:with|using) (?:a |an |the |two )?(?:[\\w-]+ )?${mark.text.split(' ').at(-1)}s?\\b`, 'i').test(
        text,
      ),
    )
    if (step === undefined) return []
    const left = ofKind(project, 'tool')
      .filter(other => other.text.split(' ').at(-1) === mark.text.split(' ').at(-1))
      .map(({ id }) => id)
    return [
      {
        what: `unlisted: ${mark.text}`,
        kind: 'tool-not-listed',
        project: without(project, ...left),
        rules: ['tool-not-listed'],
        isPlace: at(step.id),
      },
    ]
  })
  const idle = ['bearing puller', 'refractometer', 'rivet gun'].map((text, i): Fault => {
    const own: Mark = { id: 'tool-idle', kind: 'tool', start: i, end: i + 1, text, said: '' }
    return {
      what: `idle: ${text}`,
      kind: 'tool-not-used',
      project: { ...project, marks: [...project.marks, own] },
      rules: ['tool-not-used'],
      isPlace: place => at(own.id)(place) || (place.at === 'list' && place.kind === 'tool'),
    }
  })
  const using = steps(project)
    .slice(0, 5)
    .map(
      (step): Fault => ({
        what: `with a strap wrench: ${step.text}`,
        kind: 'tool-not-listed',
        project: changed(project, step.id, { text: `${step.text} using a strap wrench` }),
        rules: ['tool-not-listed'],
        isPlace: at(step.id),
      }),
    )
  return [...said, ...idle, ...using]
}

const marks: Seeder = ({ project }) => {
  const seconds = project.recording.footage?.seconds ?? 0
  return steps(project).flatMap((step, i, all): Fault[] => {
    const next = all[i + 1]
    const fault = (kind: string, change: Partial<Mark>, rule: string, ...places: string[]): Fault => ({
      what: `${kind}: ${step.text}`,
      kind,
      project: changed(project, step.id, change),
      rules: [rule],
      isPlace: at(step.id, ...places),
    })
    const words = [{ start: step.start - 0.4, end: step.start + 0.4, text: 'unscrew' }]
    const { transcript } = project.recording
    return [
      fault('outside', { start: seconds + 5, end: seconds + 9 }, 'outside-footage'),
      fault('empty', { text: ' ' }, 'empty-mark'),
      fault('no-span', { end: step.start + 0.2 }, 'nothing-to-see'),
      ...(step.start > 0 ? [fault('no-time', { end: step.start }, 'empty-mark')] : []),
      ...(next === undefined ? [] : [fault('crossing', { end: next.start + 2 }, 'marks-cross', next.id)]),
      ...(transcript === null || step.start < 1
        ? []
        : [
            {
              what: `in word: ${step.text}`,
              kind: 'edge-in-word',
              project: { ...project, recording: { ...project.recording, transcript: { ...transcript, words } } },
              rules: ['edge-in-word'],
              isPlace: anywhere,
            },
          ]),
    ]
  })
}

/** Every way to spoil a procedure that is known here. */
export const SEEDERS: readonly Seeder[] = [
  unrestored,
  unproved,
  outOfOrder,
  moved,
  headless,
  specs,
  cautions,
  language,
  talk,
  corrected,
  contradicted,
  tools,
  marks,
]

/** @returns every fault of every seeder, one at a time. */
export const faultsOf = (sound: Sound): readonly Fault[] => SEEDERS.flatMap(seed => seed(sound))
