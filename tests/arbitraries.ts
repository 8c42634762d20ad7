import fc from 'fast-check'
import { BASES, KINDS, LEVELS } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'

const moment = fc.integer({ min: 0, max: 36_000_00 }).map(hundredths => hundredths / 100)
const words = fc.string({ maxLength: 40, unit: 'grapheme' })

/** Leaves out the fields that are undefined. */
const present = <T extends object>(value: T): T =>
  Object.fromEntries(Object.entries(value).filter(([, field]) => field !== undefined)) as T

const quantity = fc
  .record({
    low: fc.option(fc.integer({ min: -50, max: 50 }), { nil: undefined }),
    width: fc.option(fc.integer({ min: 0, max: 50 }), { nil: undefined }),
    unit: fc.constantFrom('N.m', 'mm', '[psi]', undefined),
  })
  .map(({ low, width, unit }) => present({ low, high: width === undefined ? undefined : (low ?? 0) + width, unit }))

/** Any mark, fields of its kind filled or not. */
export const anyMark = (id: string): fc.Arbitrary<Mark> =>
  fc
    .record({
      kind: fc.constantFrom(...KINDS),
      start: moment,
      length: fc.integer({ min: 1, max: 6000 }),
      text: words,
      said: words,
      level: fc.constantFrom(...LEVELS, undefined),
      basis: fc.constantFrom(...BASES, undefined),
      reference: fc.option(words, { nil: undefined }),
      quantity: fc.option(quantity, { nil: undefined }),
      confidence: fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined }),
    })
    .map(({ length, confidence, ...rest }) =>
      present({
        id,
        ...rest,
        end: Math.round((rest.start + length / 100) * 100) / 100,
        pencilled: confidence === undefined ? undefined : { confidence: confidence / 100, reason: 'drafted' },
      }),
    ) as fc.Arbitrary<Mark>

/** Any project with up to `most` marks. */
export const anyProject = (most = 12): fc.Arbitrary<Project> =>
  fc
    .integer({ min: 0, max: most })
    .chain(count =>
      fc.tuple(
        fc.record({ title: words, equipment: words }),
        ...Array.from({ length: count }, (_, i) => anyMark(`m${i}`)),
      ),
    )
    .map(([heading, ...marks]) => {
      const project = emptyProject()
      return { ...project, procedure: { ...project.procedure, ...heading }, marks }
    })
