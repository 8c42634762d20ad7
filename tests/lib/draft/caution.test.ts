import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { wordCaution } from '@/lib/draft/caution-wording'
import { draftMarks } from '@/lib/draft/draft'
import { readSentence } from '@/lib/draft/feature'
import { readTranscript } from '@/lib/transcript/read'
import { draftOf } from './talks'

describe('[D9] a caution says how to avoid the harm, then what happens otherwise', () => {
  test.for([
    // every order, each with its condition
    [
      'First thing, pull the key out and disconnect the battery, you do not want that motor turning while your hands are in there.',
      'Pull the key out and disconnect the battery; you do not want that motor turning while your hands are in there.',
    ],
    [
      'Oh, and before you open the steam cap let it cool, the steam will burn you.',
      'Let it cool before you open the steam cap; the steam will burn you.',
    ],
    [
      'Hold a thumb over the spring while you pull the screw, it likes eyes.',
      'Hold a thumb over the spring while you pull the screw; it likes eyes.',
    ],
    [
      "Don't use a screwdriver, or you'll scratch the seal face.",
      "Do not use a screwdriver; otherwise you'll scratch the seal face.",
    ],
    // care is asked for once, and only where no order is said
    [
      'Careful, the press is heavy and the spring can fly out at your face.',
      'Take care: the press is heavy and the spring can fly out at your face.',
    ],
    ['Never by the cable, it tears.', 'Never by the cable, it tears.'],
    ['Switch off the power, not just at the wall.', 'Switch off the power; not just at the wall.'],
    ['Goggles, because what comes there is acid.', 'Put on goggles; what comes there is acid.'],
    // the talk about the talk goes
    [
      'Oh, and I should have said this before your hands went in there, put gloves on, because the edge will open your palm.',
      'Put gloves on; the edge will open your palm.',
    ],
    // what happens if one does is no order
    [
      'Push on the outer ring and you leave a row of dents.',
      'Take care: push on the outer ring and you leave a row of dents.',
    ],
  ] as const)('%s', ([said, text]) => {
    expect(wordCaution(readSentence(said))).toBe(text)
  })
})

describe('[D9] how harm is avoided is found where no clause orders it', () => {
  test.for([
    [
      '',
      'Never, ever go feeling around a hose for a leak, it goes into your hand like a needle.',
      'Do not go feeling around a hose for a leak; it goes into your hand like a needle.',
    ],
    ['', 'Never, lift it by the eye, it tears.', 'Do not lift it by the eye; it tears.'],
    ['', "Don't, touch the rotor, it burns.", 'Do not touch the rotor; it burns.'],
    ['', 'Never kitchen oil, it goes rotten in the heat.', 'Do not use kitchen oil; it goes rotten in the heat.'],
    ['', 'Not the steam lance, it strips the oil.', 'Do not use the steam lance; it strips the oil.'],
    ['', 'Fingers off the chain, it takes them off.', 'Keep your fingers off the chain; it takes them off.'],
    [
      '',
      'They are alive now and they can kill, so I keep my left hand in my pocket.',
      'Keep your left hand in your pocket; they are alive now and they can kill.',
    ],
    [
      '',
      'Nobody stays in the doorway, it can jump and give you a bloody nose.',
      'Nobody stays in the doorway; it can jump and give you a bloody nose.',
    ],
    ['', 'Nobody walks on the stage while it is in the air.', 'Nobody walks on the stage while it is in the air.'],
    // what a question asked and the answer refuses
    [
      'Can I grip the rod with pliers?',
      'Please never, you scratch the chrome.',
      'Do not grip the rod with pliers; you scratch the chrome.',
    ],
    [
      'Why not a little propane torch?',
      "Lord, no, there's foam behind that steel.",
      "Do not use a little propane torch; there's foam behind that steel.",
    ],
    ['Is that tight?', 'No, it strips the thread.', 'Take care: it strips the thread.'],
    // who is spoken to is not told the reader
    ['', "Oh, Mary, the spring is loaded, Mary, and it'll fly.", "Take care: the spring is loaded, and it'll fly."],
    // what things do, what was done and what one sees order nothing
    ['', "Those are knives, they don't stop for an arm.", "Take care: those are knives, they don't stop for an arm."],
    ['', 'I never used the hose, it floods the board.', 'Take care: I never used the hose, it floods the board.'],
    ['', 'You leave the fingers there.', 'Take care: you leave the fingers there.'],
    // what happens is not what to do, and what is lacking is not forbidden
    ['', 'You hold it wrong and it cuts you.', 'Take care: you hold it wrong and it cuts you.'],
    ['', 'You step on it and it tips.', 'Take care: you step on it and it tips.'],
    ['', 'You must stay back and the dog stays too.', 'Stay back; the dog stays too.'],
    ['', 'I keep burning my fingers on that pipe.', 'Take care: I keep burning my fingers on that pipe.'],
    ['', 'Your hand behind the blade gets cut.', 'Take care: your hand behind the blade gets cut.'],
    ['', 'No gloves and the acid burns you.', 'No gloves and the acid burns you.'],
    ['', 'No oil and it seizes.', 'No oil and it seizes.'],
    ['', 'No kitchen oil, it ruins the pads.', 'Do not use kitchen oil; it ruins the pads.'],
    ['', 'No matches, and open that window.', 'Do not use matches and open that window.'],
    ['', 'You have to wear gauntlets and it shows.', 'Wear gauntlets; it shows.'],
    ['', 'Put nothing on the bench.', 'Put nothing on the bench.'],
    ['', "Don't open it or lift it.", 'Do not open it and do not lift it.'],
    ['', 'Not just the hammer.', 'Not just the hammer.'],
    ['', 'Nobody checked the brake and it rolled away.', 'Take care: nobody checked the brake and it rolled away.'],
    // a no to what is seen, to which way, to "not", and one that grants
    ['Can you see the crack?', 'No, keep your hand out of there.', 'Keep your hand out of there.'],
    ['How far can I turn it?', 'No, stop at the mark.', 'Stop at the mark.'],
    ['Should I not wear gloves?', 'No, the acid burns.', 'Take care: the acid burns.'],
    ['Can I leave it on?', 'No, you can, it is safe.', 'Take care: you can, it is safe.'],
    [
      'Can I switch it off before I open it?',
      'No, the fan runs on.',
      'Do not switch it off before you open it; the fan runs on.',
    ],
  ] as const)('%s %s', ([before, said, text]) => {
    expect(wordCaution(readSentence(said), before === '' ? undefined : readSentence(before))).toBe(text)
  })
})

describe('[D9] harm to people said plainly is a caution', () => {
  const around = (said: string) => [
    'First, pull the plug.',
    'Torque those to 35 newton metres.',
    'And if I go tighter?',
    said,
    'So give it two minutes, and swing the hood back.',
  ]
  test.for([
    "The rotor runs on after you switch off, and it'll take fingers off without slowing down.",
    'Then the bolt stretches, and a blade that comes loose in there goes off like a grenade.',
  ])('%s', said => {
    expect(draftOf('caution', ...around(said)).map(({ level }) => level)).toEqual(['warning'])
    expect(draftOf('reason', ...around(said))).toEqual([])
  })

  test('never a step that orders nothing, in captions without points either', () => {
    const read = readTranscript(readFileSync('public/demo/demo.vtt'), 'demo.vtt')
    if (!read.ok) throw new Error('the demo’s talk is there')
    const { transcript } = read.value
    const bare = (text: string) => text.toLowerCase().replace(/[.,;?!](?!\d)/g, '')
    const cues = transcript.cues.map(({ start, end, text }) => ({ start, end, text: bare(text) }))
    const drafted = draftMarks({ ...transcript, cues }).filter(({ said }) => said.includes('grenade'))
    expect(drafted.map(({ kind, level }) => [kind, level])).toEqual([['caution', 'warning']])
  })

  test('harm to a part is none', () => {
    expect(readSentence('It will cut the seal and take the edge off.').own).not.toContain('harm')
    expect(readSentence("It'll cut your hand.").own).toContain('harm')
  })
})

describe('[D9] a short call for care that tells what hurts is a caution, whatever stands around it', () => {
  const between = (said: string) => ['Take the cover off.', said, 'Undo the two nuts.'] as const

  test.for([
    ['Careful, the spring is under tension.', 'Take care: the spring is under tension.', 'caution'],
    ['Watch out, the plate is hot.', 'Take care: the plate is hot.', 'caution'],
    ["Mind the blade, it's sharp.", "Mind the blade, it's sharp.", 'caution'],
    ["Careful with that flap, it'll snap shut.", "Take care with that flap, it'll snap shut.", 'caution'],
    ["Careful here, that's live.", "Take care: that's live.", 'warning'],
    [
      "Careful, that's heavy, get somebody to help you lift it.",
      "Get somebody to help you lift it; that's heavy.",
      'caution',
    ],
  ] as const)('%s', ([said, text, level]) => {
    expect(draftOf('caution', ...between(said))).toMatchObject([{ text, level }])
    expect(draftOf('step', ...between(said)).map(step => step.text)).toEqual([
      'Take the cover off.',
      'Undo the two nuts.',
    ])
  })

  test.for(['Mind your head on that beam, everybody does it once.', 'Careful, do not lose the shim.'])(
    'no hazard: %s',
    said => {
      expect(draftOf('caution', ...between(said)).filter(({ level }) => level !== 'notice')).toEqual([])
    },
  )
})
