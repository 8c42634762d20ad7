import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { isForeign } from '@/lib/draft/language'
import type { Transcript } from '@/lib/procedure/recording'

const talk = (text: string): Transcript => ({ name: 'a.txt', form: 'untimed', cues: [{ start: 0, end: 0, text }] })

/** Invented; each says to take a lid off, undo screws and mind the heat. */
const FOREIGN: Readonly<Record<string, string>> = {
  German: 'Zuerst den Deckel abnehmen und die Schrauben lösen. Mit 20 bis 25 Newtonmeter anziehen. Vorsicht, heiß!',
  Dutch: 'Eerst halen we het deksel eraf en dan draaien we de bouten los. Pas op, het water is heet. Test de motor.',
  French: 'D’abord on enlève le couvercle, ensuite on desserre les vis. Attention, c’est chaud. Serrez à vingt.',
  Spanish: 'Primero quitamos la tapa y aflojamos los tornillos. Cuidado, está caliente. Apriete a veinte.',
  Danish: 'Først tager vi dækslet af og løsner skruerne. Pas på, det er varmt. Du skal have en nøgle til det her.',
  Polish: 'Najpierw zdejmujemy pokrywę i odkręcamy śruby. Uwaga, gorące. Dokręć momentem dwudziestu niutonometrów.',
  Russian: 'Сначала снимаем крышку и откручиваем болты. Осторожно, горячо.',
  Arabic: 'قم بإزالة الغطاء أولاً ثم فك البراغي. شد البراغي إلى 20 نيوتن متر',
  Chinese: '首先取下盖子，然后松开螺丝。小心，很烫。',
  Greek: 'Πρώτα βγάζουμε το καπάκι και ξεβιδώνουμε τις βίδες.',
}

test.each(Object.entries(FOREIGN))('[D13] %s is told as another language', (_, text) => {
  expect(isForeign(talk(text))).toBe(true)
})

test.each([
  [
    'accents',
    'Naïve café owners, remove the façade screws; the jalapeño tap and the Müller valve stay where they are.',
  ],
  [
    'raw captions',
    'okay so um we are gonna take the lid off and uh put the two screws right here so they dont get lost',
  ],
  ['a short talk', 'Drain oil. Refit plug. Torque 30 Nm.'],
  [
    'a terse list',
    'Loosen bolt. Remove cover. Drain oil. Replace filter. Refit cover. Torque bolts 25 Nm. Fill oil. Check level.',
  ],
  ['one word', 'lift'],
  ['no words', '20 25 30'],
  [
    'a speaker of English with foreign names',
    'Jürgen and Małgorzata from Łódź hold the beam while you tighten the nuts.',
  ],
])('[D13] English is not: %s', (_, text) => {
  expect(isForeign(talk(text))).toBe(false)
})

test('[D13] none of the talks the draft is fitted on is doubted', () => {
  const folder = 'scripts/fit-draft/talks'
  const files = readdirSync(folder).filter(name => name.endsWith('.talk'))
  const doubted = files.filter(name => isForeign(talk(readFileSync(`${folder}/${name}`, 'utf8'))))
  expect(files.length).toBeGreaterThan(100)
  expect(doubted).toEqual([])
})
