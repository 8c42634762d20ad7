import type { Sheet, SheetStep } from '@/lib/procedure/sheet'
import { sayingThat } from '@/lib/procedure/shorten'
import { DISPOSAL, WASTES, type Waste } from '@/lib/trade/waste'
import { actionsOf } from '../action'
import { atSteps, inSteps } from '../chunks'
import { leftByMarks } from '../coverage'
import { isDisposing, tellsDisposal } from '../disposing'
import { quote } from '../late'
import { listedThing } from '../listed'
import { onceForText } from '../memo'
import { addStep } from '../remedy'
import { atMark, type FindingLevel, type Found, type Rule, WHOLE } from '../rule'
import { sample } from '../sample'
import { stemIndex } from '../stem-index'
import type { Subject } from '../subject'
import { undoneBy } from '../undone'
import { stemOf, stemSet } from '../words'

const wastesIn = onceForText((text: string): readonly Waste[] =>
  WASTES.filter(({ arises, not }) => arises.test(text) && not?.test(text) !== true),
)

/** Kinds of waste a line about disposal speaks of; empty where it names none and so stands for every kind. */
const namedIn = onceForText(
  (text: string): ReadonlySet<Waste> => new Set(WASTES.filter(({ named }) => named.test(text))),
)
const speaksOfDisposal = onceForText((text: string): boolean => DISPOSAL.test(text) || isDisposing(text))
const OTHER = /\b(?:condensate|water|rinse|swarf|packaging|drained water)\b/i

const OLD_PART = WASTES.find(({ id }) => id === 'old-part')
/** Too small to ask about, or used up in the work. */
const SMALL =
  /^(?:screw|bolt|nut|washer|pin|clip|ring|o-ring|seal|gasket|grommet|tie|rag|cloth|glove|oil|grease|tape|label|cap|plug|key|ring|card|wipe|swab|spray|cleaner|thread|wire|cotter|circlip|paper|fuse|jaw)$/

const CHANGES = /\b(?:chang|replac|renew|swap|new)\w*\b/i

/** The first step that takes off what the list of materials brings anew. */
const renewedIn = (sheet: Sheet): SheetStep | undefined => {
  const heads = new Set(
    sheet.materials.map(({ text }) => listedThing(text).head).filter(head => head !== '' && !SMALL.test(head)),
  )
  const named = CHANGES.test(sheet.heading.title) ? stemSet(sheet.heading.title) : new Set<string>()
  const titled = [...heads].find(head => named.has(stemOf(head)))
  const first = titled === undefined ? undefined : stemIndex(sheet.steps).get(stemOf(titled))?.[0]
  if (first !== undefined) return sheet.steps[first - 1]
  return heads.size === 0
    ? undefined
    : sheet.steps.find(({ mark }) =>
        actionsOf(mark.text).some(action =>
          action.things.some(thing => heads.has(thing.head) && undoneBy(action, thing) === 'removed'),
        ),
      )
}

/** Sprayed on and gone; wiped off with a listed rag, a cleaner leaves that. */
const withRag = (text: string, { tools, materials }: Pick<SheetStep, 'tools' | 'materials'>): string =>
  CLEANER.test(text) && [...tools, ...materials].some(own => RAG.test(own.text)) ? `${text}, rag` : text
const CLEANER = /\bwith (?:[a-z]+ )?(?:cleaner|degreaser)\b/i
const RAG = /\b(?:rags?|cloths?)\b/i

/** What is only measured out is not spent yet. */
const MEASURES = /^(?:measure|weigh|dose|meter)\b/i
const arisingIn = atSteps(step =>
  [step.mark, ...step.checks, ...(MEASURES.test(step.mark.text) ? [] : step.materials)]
    .filter(({ text }) => !isDisposing(text))
    .flatMap(({ text }) => wastesIn(withRag(text, step)))
    .map(waste => ({ waste })),
)
const saidIn = inSteps(({ mark, checks, cautions }) =>
  [mark, ...checks, ...cautions].map(({ text }) => text).filter(speaksOfDisposal),
)

/** Where the talk says something spent goes: "the old oil goes in the jar for the oil bank". */
const toldIn = (subject: Subject): string | undefined =>
  leftByMarks(subject).find(({ text }) => tellsDisposal(text))?.text

/** Told in the talk and on no mark: whatever the sheet says of other waste, this is missing. */
const told = (subject: Subject): readonly Found[] => {
  const text = toldIn(subject)
  return text === undefined
    ? []
    : [
        {
          place: WHOLE,
          message: `The talk says where waste goes and no step does: ${sayingThat(text)} Mark it as a step.`,
        },
      ]
}

const check = (subject: Subject): readonly Found[] => {
  const found = unsaid(subject)
  // What the talk says of waste is more than that an old part came out.
  const inTalk = found.every(({ level }) => level === 'consider') ? told(subject) : []
  return inTalk.length > 0 ? inTalk : found
}

/** A drain plug lets out oil only where something runs in oil. */
const OILY =
  /\b(?:oils?|oily|engines?|gear\w*|hydraul\w*|sump|crankcase|transmission|differential|axle|compressor|lubric\w*|motor(?:cycle|bike))\b/i
const isOily = ({ heading, steps }: Sheet): boolean =>
  OILY.test(`${heading.title} ${heading.equipment}`) ||
  steps.some(({ mark, materials }) => OILY.test(mark.text) || materials.some(({ text }) => OILY.test(text)))

const unsaid = ({ sheet }: Subject): readonly Found[] => {
  const first = new Map<Waste, SheetStep>()
  for (const { waste, step } of arisingIn(sheet)) if (!first.has(waste)) first.set(waste, step)
  const renewed = renewedIn(sheet)
  if (OLD_PART !== undefined && renewed !== undefined && !first.has(OLD_PART)) first.set(OLD_PART, renewed)
  if (first.size === 0) return []
  const said = [
    ...saidIn(sheet),
    ...[...sheet.loose.map(({ text }) => text), sheet.heading.scope].filter(speaksOfDisposal),
  ]
  const isHandled = (waste: Waste) =>
    (waste.id === 'old-part' && said.length > 0) ||
    said.some(text => namedIn(text).has(waste) || (namedIn(text).size === 0 && !OTHER.test(text)))
  return [...first].flatMap(([waste, step]): Found[] => {
    if (isHandled(waste) || (waste.id === 'oil' && !isOily(sheet))) return []
    const level: FindingLevel = waste.isHazardous ? 'fix' : 'consider'
    const message = `Step ${step.number}, ${quote(step.mark)}, leaves waste behind and nothing says where it goes. ${waste.advice}.`
    return [
      {
        place: atMark(step.mark),
        level,
        message,
        remedy: addStep(`disposal-${waste.id}`, waste.step, sheet.steps.length, step.mark, waste.question),
      },
    ]
  })
}

/** Waste oil has an address. */
export const noDisposal: Rule = {
  id: 'no-disposal',
  level: 'fix',
  about: 'Waste fluid, battery, filter, solvent or worn parts come about with no word on where they go.',
  why: 'What the sheet does not say goes down the drain.',
  source: 'IEC/IEEE 82079-1:2019 on disposal (from memory); local rules decide',
  trips: sample([
    ['step', 'Drain the engine oil'],
    ['step', 'Refit the drain plug'],
    ['step', 'Fill with new oil'],
  ]),
  passes: sample([
    ['step', 'Drain the engine oil'],
    ['step', 'Refit the drain plug'],
    ['step', 'Fill with new oil'],
    ['step', 'Take the used oil to a collection point'],
  ]),
  check,
}
