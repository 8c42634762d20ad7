import fc from 'fast-check'
import { BASES, KINDS, LEVELS } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { emptyProject, type Project } from '@/lib/procedure/project'

/** Texts that try to be something else: HTML, Markdown, YAML, XML, JSON, paths, direction marks, control characters. */
export const HOSTILE: readonly string[] = [
  '<script>alert(1)</script>',
  '</script><img src=x onerror=alert(1)>',
  '<!-- -->',
  '-->',
  ']]>',
  '&lt;b&gt; &amp; &#x41;',
  '# not a heading',
  '1. not a list',
  '- not a list',
  '[ ] not a task',
  '> not a quote',
  '| not | a | table |',
  '**not bold** _nor this_ ~~nor that~~',
  '[link](javascript:alert(1) "title")',
  '![picture](x.png)',
  '[^1]: footnote',
  '[^1]',
  '`code` ``` fence',
  '---',
  '***',
  'a\n---\nb',
  'Setext\n===',
  '    indented',
  'www.example.com and me@example.com http://example.com/a_b_c',
  'trailing backslash\\',
  '\\*escaped\\*',
  '{"json": true, "end": "}"}',
  'key: value # comment',
  '"quoted" and \'quoted\'',
  '../../etc/passwd',
  'C:\\windows\\system32',
  'CON',
  '\u202Eright to left override',
  '\u200Fשלום\u200E',
  'zero\u0000byte',
  'bell\u0007 and escape\u001B[31m',
  '00:00:01.000 --> 00:00:02.000',
  'NOTE not a note',
  'WEBVTT',
  ';not=a;comment\\',
  '<?xml version="1.0"?><!DOCTYPE x>',
  '%s%n %20 %zz',
  'Check: not a check',
  'DANGER (fuel): not a danger',
  ', (step 4)',
  '(in brackets)',
  '25 N·m',
  '😀👩‍🔧 e\u0301',
  'x'.repeat(10_000),
  '',
  ' ',
  '\n',
]

const text = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.constantFrom('Loosen the drain plug', 'oil pan, 5 L', 'Torque: both bolts', 'M8 × 20 (left-hand)'),
  },
  { weight: 3, arbitrary: fc.string({ unit: 'grapheme-ascii', maxLength: 20 }) },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  { weight: 2, arbitrary: fc.constantFrom(...HOSTILE.filter(each => each.length < 100)) },
)

const number = fc.oneof(fc.integer({ min: 0, max: 500 }), fc.double({ min: 0, max: 1e6, noNaN: true })).map(n => n + 0)
const seconds = fc
  .oneof(
    fc.integer({ min: 0, max: 4000 }),
    fc.integer({ min: 0, max: 4_000_000 }).map(ms => ms / 1000),
    fc.double({ min: 0, max: 4000, noNaN: true }),
  )
  .map(n => n + 0)

const optional = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(arbitrary, { nil: undefined, freq: 2 })

/** Leaves out what is undefined, as the file format does. */
const tidy = <T extends object>(value: T): T =>
  Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined)) as T

const quantity = fc
  .record({
    low: optional(number),
    high: optional(number),
    nominal: optional(number),
    unit: optional(fc.oneof(fc.constantFrom('N.m', 'mm', '[psi]', 'min', 'circ', 'Cel', 'L', '[ft_i].[lbf_av]'), text)),
  })
  .map(tidy)

const markOf = (id: string): fc.Arbitrary<Mark> =>
  fc
    .record({
      id: fc.constant(id),
      kind: fc.constantFrom(...KINDS),
      start: seconds,
      length: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 60, noNaN: true }), fc.integer({ min: 1, max: 30 })),
      text,
      pencilled: optional(
        fc
          .record({
            confidence: fc.double({ min: 0, max: 1, noNaN: true }).map(n => n + 0),
            reason: text,
            question: optional(text),
          })
          .map(tidy),
      ),
      place: optional(fc.oneof(fc.integer({ min: 1, max: 9 }), number)),
      step: optional(fc.constantFrom('m0', 'm1', 'm2', 'm3', 'gone')),
      level: optional(fc.constantFrom(...LEVELS)),
      hazard: optional(text),
      quantity: optional(quantity),
      equivalent: optional(quantity),
      reference: optional(text),
      basis: optional(fc.constantFrom(...BASES)),
      citation: optional(text),
      price: optional(text),
      still: optional(fc.record({ time: seconds, alt: text, file: optional(text) }).map(tidy)),
      capability: optional(fc.record({ range: quantity, deviation: optional(number) }).map(tidy)),
    })
    .map(({ length, ...mark }) => tidy({ ...mark, end: mark.start + length, said: '' }) as Mark)

const heading = fc
  .record({
    title: text,
    equipment: text,
    scope: fc.oneof(
      text,
      fc.array(text, { maxLength: 3 }).map(parts => parts.join('\n\n')),
    ),
    interval: optional(
      fc
        .record({
          hours: optional(fc.integer({ min: 1, max: 5000 })),
          months: optional(fc.integer({ min: 1, max: 60 })),
        })
        .map(tidy),
    ),
    revision: text,
    author: text,
    references: fc.array(fc.record({ title: text, part: text }), { maxLength: 3 }),
  })
  .map(tidy)

/** Any valid project: every field of every kind, tidy or hostile. Texts are well-formed Unicode, as a file can hold. */
export const anyProject: fc.Arbitrary<Project> = fc
  .record({
    heading,
    marks: fc
      .uniqueArray(
        fc.oneof(
          fc.constantFrom('step-7', 'a;b=c', '"quoted" id', 'ü 1'),
          fc.integer({ min: 0, max: 12 }).map(n => `m${n}`),
        ),
        { maxLength: 6 },
      )
      .chain(ids => fc.tuple(...ids.map(markOf))),
    footage: fc.option(fc.record({ name: text, seconds, bytes: fc.constant(1), fingerprint: fc.constant('ab') }), {
      nil: null,
    }),
  })
  .map(({ heading: procedure, marks, footage }) => ({
    ...emptyProject(),
    procedure: procedure as Project['procedure'],
    marks,
    recording: { footage, transcript: null },
  }))
