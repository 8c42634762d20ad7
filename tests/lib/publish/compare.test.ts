import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyEdit } from '@/lib/procedure/edit'
import type { Mark } from '@/lib/procedure/mark'
import { stepsInOrder } from '@/lib/procedure/place'
import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { type Comparison, compareSheet } from '@/lib/publish/compare'
import { toSheetMarkdown } from '@/lib/publish/markdown'
import { moves } from '@/lib/publish/moves'
import { markdown } from '@/lib/publish/processor'
import { parseSheetMarkdown } from '@/lib/publish/read-markdown'
import { anyProject } from './arbitrary'
import { exampleProject } from './example'

const compared = (project: Project, text: string): Comparison => {
  const read = parseSheetMarkdown(text)
  if (!read.ok) throw new Error(read.problems.map(problem => problem.message).join('\n'))
  return compareSheet(project, read.value)
}

const apply = (project: Project, { changes }: Comparison): Project =>
  changes.reduce((state, { edit }) => applyEdit(state, edit), project)

/** Edits a sheet as a hand would: this text becomes that, which must be there. */
const edited = (project: Project, ...swaps: readonly (readonly [string, string])[]): string =>
  swaps.reduce(
    (text, [from, to]) => {
      if (!text.includes(from)) throw new Error(`the sheet does not hold: ${from}`)
      return text.replace(from, to)
    },
    toSheetMarkdown(toSheet(project)),
  )

const edits = (project: Project, ...swaps: readonly (readonly [string, string])[]) =>
  compared(project, edited(project, ...swaps)).changes.map(change => change.edit)

describe('a sheet edited by hand', () => {
  const project = exampleProject()

  test('[P3] unchanged, says nothing changed', () => {
    expect(compared(project, edited(project))).toEqual({ changes: [], unread: [] })
  })

  test('[P3] gives a changed text as an edit of that mark', () => {
    expect(edits(project, ['1. Pull the mains plug', '1. Pull the mains plug and keep it in sight'])).toEqual([
      { do: 'change-mark', id: 'step-1', to: { text: 'Pull the mains plug and keep it in sight' } },
    ])
  })

  test('[P3] says from what to what a value was changed', () => {
    const written = edited(project, ['25 N·m', '30 N·m'])
    expect(compared(project, written).changes.map(change => change.about)).toEqual([
      'Change the value of the spec “lock bolt torque” from 25 N·m to 30 N·m',
    ])
  })

  test('[P3] says to what a text was changed, and from what where that stands far behind', () => {
    const long = 'Slacken the two nuts of the motor plate and push it back until the belt hangs loose by'
    const other = {
      ...project,
      marks: project.marks.map(mark => (mark.id === 'step-1' ? { ...mark, text: `${long} 8 mm` } : mark)),
    }
    const about = (from: string, to: string, of = project) =>
      compared(of, edited(of, [from, to])).changes.map(change => change.about)
    expect(about('1. Pull the mains plug', '1. Pull the plug')).toEqual([
      'Change the text of the step “Pull the mains plug” to “Pull the plug”',
    ])
    expect(about('loose by 8 mm', 'loose by 9 mm', other)).toEqual([
      'Change the text of the step “Slacken the two nuts of the motor plate and push it back…” from “… hangs loose by 8 mm” to “… hangs loose by 9 mm”',
    ])
  })

  test('[P3] says where a line stood that was taken out: after the last one before it that is still there', () => {
    const lines = toSheetMarkdown(toSheet(project)).split('\n')
    const at = lines.findIndex(line => line.includes('Fit new belts and tension them'))
    const text = [...lines.slice(0, at), ...lines.slice(at + 1)].join('\n')
    const drop = compared(project, text).changes.find(({ edit }) => edit.do === 'drop-marks')
    expect(drop?.mark).toBe('step-3')
    const before = lines.findIndex(line => line.includes('2. Slacken the motor lock')) + 1
    expect(drop?.line).toBeGreaterThanOrEqual(before)
    expect(drop?.line).toBeLessThanOrEqual(at + 1)
  })

  test('[P3] takes a taken-away pencil flag for keeping the mark', () => {
    expect(edits(project, [' *pencilled*', ''])).toEqual([{ do: 'keep-marks', ids: ['step-3'] }])
  })

  test('[P3] reads a signal word and hazard changed in the safety summary', () => {
    expect(edits(project, ['**NOTICE:** Too tight', '**CAUTION (crushing):** Too tight'])).toEqual([
      { do: 'change-mark', id: 'caution-2', to: { level: 'caution' } },
      { do: 'change-mark', id: 'caution-2', to: { hazard: 'crushing' } },
    ])
  })

  test('[P3] reads a value changed at the step', () => {
    expect(edits(project, ['torque **25 N·m**', 'torque **27 N·m**'])).toEqual([
      { do: 'change-mark', id: 'spec-2', to: { quantity: { nominal: 27, unit: 'N.m' } } },
    ])
  })

  test('[P3] reads a basis filled in in the table of specs', () => {
    expect(edits(project, ['| hand tight | | |', '| hand tight | | common practice |'])).toEqual([
      { do: 'change-mark', id: 'spec-3', to: { basis: 'common-practice' } },
    ])
  })

  test('[P3] reads a time written over the link’s words', () => {
    expect(edits(project, ['[0:07–0:18]', '[0:05–0:20]'])).toEqual([
      { do: 'change-mark', id: 'step-1', to: { start: 5, end: 20 } },
    ])
  })

  test('[P3] reads a line added under a step and a new step', () => {
    const text = edited(project, [
      '(drill%20service.mp4#t=7,18.5 "step-1")',
      '(drill%20service.mp4#t=7,18.5 "step-1")\n   - Check: the lamp is out\n2. Hang a tag on the plug',
    ])
    const after = apply(project, compared(project, text))
    const steps = stepsInOrder(after.marks).map(mark => mark.text)
    expect(steps.slice(0, 3)).toEqual([
      'Pull the mains plug',
      'Hang a tag on the plug',
      'Slacken the motor lock and lift out both belts',
    ])
    expect(after.marks.find(mark => mark.text === 'the lamp is out')).toMatchObject({ kind: 'check', step: 'step-1' })
  })

  test('[P3] reads deleted marks and heading fields', () => {
    const text = edited(project, ['revision: B', 'revision: C'], ['hours: 500', 'hours: 400']).replace(
      /^ {3}- \*\*Symptom:.*\n/m,
      '',
    )
    expect(compared(project, text).changes.map(change => change.edit)).toEqual([
      { do: 'change-heading', to: { revision: 'C' } },
      { do: 'change-heading', to: { interval: { hours: 400, months: 12 } } },
      { do: 'drop-marks', ids: ['symptom-1'] },
    ])
  })

  test('[P3] loses nothing it did not understand: it comes back with its line', () => {
    const text = edited(
      project,
      ['## Scope', 'Note to self: ask Ana.\n\n## My own notes\n\nBuy belts.\n\n## Scope'],
      ['revision: B', 'revision: B\ncolour: green'],
      ['| Checked | | | |', '| Checked | Jo | today | |'],
    )
    const { changes, unread } = compared(project, text)
    expect(changes).toEqual([])
    expect(unread.map(each => each.text)).toEqual([
      'colour: green',
      'Note to self: ask Ana.',
      '## My own notes',
      'Buy belts.',
      'Checked, Jo, today',
    ])
    for (const { line, text: words } of unread.slice(0, 4)) expect(text.split('\n')[line - 1]).toBe(words)
  })

  test('[P3] leaves alone the pencilled marks that a kept-only sheet left out', () => {
    const text = toSheetMarkdown(toSheet(project), { pencilled: 'leave-out' })
    expect(compared(project, text).changes.filter(change => change.edit.do === 'drop-marks')).toEqual([])
  })
})

const abouts = (project: Project, text: string) =>
  compared(project, text).changes.map(({ about, line, doubt }) => ({ about, line, ...(doubt && { doubt }) }))

describe('a sheet whose syntax a hand broke', () => {
  const project = exampleProject()
  const text = toSheetMarkdown(toSheet(project))
  const line = (words: string, from = text): number => from.split('\n').findIndex(each => each.includes(words)) + 1

  test('[P3] without front matter, or with front matter that is no YAML, takes nothing of the head away and says why', () => {
    const none = compared(project, text.replace(/^---\n[\s\S]*?\n---\n/, ''))
    expect(none.changes).toEqual([])
    expect(none.unread[0]).toMatchObject({ line: 1, text: 'front matter', why: expect.stringContaining('none stands') })
    const broken = compared(project, text.replace('revision: B', 'revision: "B'))
    expect(broken.changes).toEqual([])
    expect(broken.unread).toMatchObject([
      { line: line('revision: B'), text: 'revision: "B', why: expect.stringContaining('not valid YAML') },
    ])
  })

  test('[P3] with a section under another name, or bullets for numbers, drops nothing that still stands there', () => {
    const renamed = compared(project, text.replace('## Tools', '## To have at hand'))
    expect(renamed.changes).toEqual([])
    expect(renamed.unread.map(({ why }) => why)).toEqual([
      expect.stringContaining('a sheet has no section "To have at hand"; it has Scope'),
      'it stands under "To have at hand", which is no section of a sheet',
    ])
    expect(compared(project, text.replace('## Steps', '## STEPS'))).toEqual({ changes: [], unread: [] })
    const bulleted = compared(project, text.replace(/^\d+\. /gm, '* '))
    expect(bulleted.changes.filter(({ edit }) => edit.do === 'drop-marks')).toEqual([])
    expect(bulleted.unread[0]?.why).toContain('expected numbered steps')
  })

  test('[P3] knows the steps and the table of specs by what they hold where their headings were translated', () => {
    const translated = text.replace('## Steps', '## Schritte').replace('## Specs', '## Werte')
    expect(compared(project, translated)).toEqual({ changes: [], unread: [] })
    const more = translated.replace('1. Pull the mains plug', '1. Pull the plug').replace('| 25 N·m', '| 27 N·m')
    expect(compared(project, more).changes.map(({ edit }) => edit)).toEqual([
      { do: 'change-mark', id: 'step-1', to: { text: 'Pull the plug' } },
      expect.objectContaining({ do: 'change-mark', id: 'spec-2' }),
    ])
  })

  test('[P3] takes no ratio at the end of a line for its time where links went with their words', () => {
    const mixed = {
      ...project,
      marks: project.marks.map(mark => (mark.kind === 'material' ? { ...mark, text: 'two-stroke mix 1:50' } : mark)),
    }
    const sheet = toSheetMarkdown(toSheet(mixed))
    const gone = sheet.replace(/ ?\[[^\]]*\]\([^)]*#t=[^)]*\)/g, '')
    expect(gone).not.toContain('#t=')
    expect(gone).toMatch(/two-stroke mix 1:50(?: \*\([^)]*\)\*)?$/m)
    expect(compared(mixed, gone)).toEqual({ changes: [], unread: [] })
    const words = sheet.replace(/\[([^\]]*)\]\([^)]*#t=[^)]*\)/g, '$1')
    expect(compared(mixed, words)).toEqual({ changes: [], unread: [] })
  })

  test('[P3] knows every line by its text and the time written where a text processor took all links out', () => {
    const bare = text.replace(/\[([^\]]*)\]\([^)]*\)/g, '$1')
    expect(bare).not.toContain('#t=')
    expect(compared(project, bare)).toEqual({ changes: [], unread: [] })
    const more = bare.replace('1. Pull the mains plug', '1. Pull the plug').replace('| 25 N·m', '| 27 N·m')
    expect(compared(project, more).changes.map(({ edit }) => edit)).toEqual([
      { do: 'change-mark', id: 'step-1', to: { text: 'Pull the plug' } },
      expect.objectContaining({ do: 'change-mark', id: 'spec-2' }),
    ])
  })

  test('[P3] with the curly quotation marks of a text processor says nothing changed', () => {
    expect(compared(project, text.replaceAll('"', '”'))).toMatchObject({ changes: [], unread: [] })
  })

  test('[P3] knows a line by its text where its time link was taken out or lost its end', () => {
    const link = '[0:07–0:18](drill%20service.mp4#t=7,18.5 "step-1")'
    expect(text).toContain(link)
    for (const left of ['', '[0:07–0:18]', '[0:07–0:18](drill%20service.mp4#t=7,18.5 "step-1'])
      expect(compared(project, text.replace(link, left))).toEqual({ changes: [], unread: [] })
    expect(abouts(project, text.replace(link, '[0:05–0:18]'))).toEqual([
      { about: expect.stringContaining('from 0:07–0:18 to 0:05–0:18'), line: line(link) },
    ])
  })

  test('[P3] with a time that is none, or ends before it starts, says so and leaves the time', () => {
    for (const time of ['0:99–x', '0:18–0:07']) {
      const { changes, unread } = compared(project, text.replace('[0:07–0:18]', `[${time}]`))
      expect(changes).toEqual([])
      expect(unread).toMatchObject([{ line: line('[0:07–0:18]'), text: time }])
    }
  })

  test('[P3] doubts figures that are no value, so that they are not taken for words unasked', () => {
    const doubt = expect.stringContaining('No value can be read here')
    const found = compared(project, text.replace('torque **25 N·m**', 'torque **26 to 22 flurbs**'))
    expect(found.changes).toMatchObject([{ doubt }, { doubt }])
    expect(compared(project, text.replace('| 25 N·m', '| 26 to 22 flurbs')).changes).toMatchObject([{ doubt }])
    expect(compared(project, text.replace('torque **25 N·m**', 'torque **27 N·m**')).changes[0]?.doubt).toBe(undefined)
  })

  test('[P3] doubts that most marks are to be dropped', () => {
    const steps = text.slice(text.indexOf('## Steps'), text.indexOf('## ', text.indexOf('## Steps') + 3))
    const { changes } = compared(project, text.replace(steps, ''))
    expect(changes.length).toBeGreaterThan(3)
    for (const { doubt } of changes) expect(doubt).toContain('see that it is a sheet of this recording')
  })

  test('[P3] doubts a sheet of other footage', () => {
    const { footage } = project.recording
    if (footage === null) throw new Error('the example has footage')
    const other = { ...project, recording: { ...project.recording, footage: { ...footage, name: 'lathe.mp4' } } }
    const { changes } = compared(other, text.replace('revision: B', 'revision: C'))
    expect(changes).toMatchObject([
      { doubt: expect.stringContaining('of “drill service.mp4”, but this recording is “lathe.mp4”') },
    ])
  })

  test('[P3] refuses show notes: they are no sheet', () => {
    expect(parseSheetMarkdown('# Drill\n\n## Tools\n\n- a belt\n')).toMatchObject({
      ok: false,
      problems: [{ code: 'not-a-sheet' }],
    })
  })

  test('[P3] says of the head from what to what, and where', () => {
    const at = (words: string) => line(words)
    const changed = text.replace('revision: B', 'revision: C').replace('hours: 500', 'hours: 400')
    expect(abouts(project, changed)).toEqual([
      { about: 'Change the revision from “B” to “C”', line: at('revision: B') },
      {
        about:
          'Change the interval from every 500 h or 12 months, whichever comes first to every 400 h or 12 months, whichever comes first',
        line: at('interval:'),
      },
    ])
  })

  test('[P3] reads a basis and where it stands, parted by a comma, and names steps by their text', () => {
    const { changes } = compared(
      project,
      text
        .replace('torque **25 N·m**', 'torque **25 N·m** *(plate, rear cover)*')
        .replace(/(\*\(plate, rear cover\)\*) \*\([^)]*\)\*/, '$1'),
    )
    expect(changes.map(({ edit }) => edit)).toEqual(
      expect.arrayContaining([{ do: 'change-mark', id: 'spec-2', to: { citation: 'rear cover' } }]),
    )
  })
})

const plain = (marks: readonly Mark[]) => [...marks].sort((a, b) => (a.id < b.id ? -1 : 1))

describe('a sheet that another program rewrote', () => {
  const project = exampleProject()
  const stills = new Map([['step-2', 'stills/001.jpg']])
  const withStill = {
    ...project,
    marks: project.marks.map(mark =>
      mark.id === 'step-2' ? { ...mark, still: { time: 80, alt: 'Both [belts] off', file: 'a.jpg' } } : mark,
    ),
  }
  const text = toSheetMarkdown(toSheet(withStill), {}, stills)

  test('[P3] with other bullets, emphasis, padding and numbers says nothing changed', () => {
    const rewritten = markdown()
      .data('settings', {
        bullet: '*',
        emphasis: '_',
        listItemIndent: 'tab',
        incrementListMarker: false,
        closeAtx: true,
      })
      .processSync(text)
    expect(String(rewritten)).not.toBe(text)
    expect(compared(withStill, String(rewritten))).toEqual({ changes: [], unread: [] })
  })

  test('[P3] with the line ends and byte order mark of Windows says nothing changed', () => {
    expect(compared(withStill, `\uFEFF${text.replaceAll('\n', '\r\n')}`)).toEqual({ changes: [], unread: [] })
  })

  test('[P3] with another alternative text changes the picture of the step', () => {
    const read = compared(withStill, text.replace('Both \\[belts\\] off', 'The belts'))
    expect(read.changes.map(change => change.edit)).toEqual([
      { do: 'change-mark', id: 'step-2', to: { still: { time: 80, alt: 'The belts', file: 'a.jpg' } } },
    ])
  })
})

describe('all changes applied', () => {
  test('[P3] bring any project to what any sheet says', () => {
    fc.assert(
      fc.property(anyProject, anyProject, (one, other) => {
        const settle = (project: Project) => applyEdit(project, { do: 'add-marks', marks: [] })
        const [from, to] = [settle(one), settle(other)]
        const after = apply(from, compared(from, toSheetMarkdown(toSheet(to))))
        const strays = new Set(to.marks.map(mark => mark.id))
        // A name that leads to no step, or a step's own, says nothing: it may fall away.
        const named = ({ step, ...mark }: Mark) =>
          step === undefined || strays.has(step) === false || mark.kind === 'step' ? mark : { ...mark, step }
        expect(plain(after.marks).map(named)).toEqual(plain(to.marks).map(named))
        expect(after.procedure).toEqual(to.procedure)
      }),
      { numRuns: 250 },
    )
  }, 600_000)

  test('[P3] moves bring any order into any other', () => {
    const ids = fc.uniqueArray(fc.integer({ min: 0, max: 30 }).map(String), { maxLength: 12 })
    fc.assert(
      fc.property(
        ids.chain(now => fc.tuple(fc.constant(now), fc.shuffledSubarray(now, { minLength: now.length }))),
        ([now, wanted]) => {
          const order = [...now]
          for (const { id, place } of moves(now, wanted)) {
            order.splice(order.indexOf(id), 1)
            order.splice(place - 1, 0, id)
          }
          expect(order).toEqual(wanted)
        },
      ),
    )
  })
})
