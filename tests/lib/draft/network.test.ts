import { describe, expect, it } from 'vitest'
import { type Network, type Packed, toNetwork } from '@/lib/draft/network'
import { fitNetwork, type NetworkSettings } from '@/scripts/fit-draft/network'
import { packNetwork } from '@/scripts/fit-draft/pack-network'

const packed = (bytes: readonly number[], scales: readonly number[]): Packed => ({
  bytes: Buffer.from(Int8Array.from(bytes).buffer).toString('base64'),
  scales,
})

describe('the network that weighs sentences', () => {
  // One outcome, one number a sentence, one of its surroundings, a sentence on either side; worked out by hand.
  const network: Network = {
    outcomes: ['step'],
    features: packed([2, 10, -4, 20, 1, -30], [0.5, 0.1]),
    bias: [-1],
    around: packed([10, 0, 20], [0.1]),
    aroundBias: [0.5],
    out: packed([4, -2], [0.25]),
  }
  const weigh = toNetwork(network)

  it('adds a sentence up and heeds those beside it', () => {
    // Features 0, 1, 2: log odds 1, -2, 0.5; numbers 1, 2, -3 (nothing below 0 counts).
    const odds = weigh([[0], [1], [2]])
    // Surroundings: the one before once, itself not, the one after twice, and 0.5.
    expect(odds[0]).toBeCloseTo(-1 + 1 + 1 * 1 + -0.5 * (0.5 + 2 * 2), 6)
    expect(odds[1]).toBeCloseTo(-1 - 2 + 2 * 1 + -0.5 * (0.5 + 1 + 0), 6)
    expect(odds[2]).toBeCloseTo(-1 + 0.5 + 0 + -0.5 * (0.5 + 2), 6)
  })

  it('adds up several features before it drops what is below nothing', () => {
    const [odds] = weigh([[1, 2]])
    // 2 - 3 is below 0.
    expect(odds).toBeCloseTo(-1 - 2 + 0.5 + -0.5 * 0.5, 6)
  })

  it('weighs no sentences without an error', () => {
    expect(weigh([])).toHaveLength(0)
  })
})

describe('fitting the network', () => {
  const settings: NetworkSettings = {
    width: 8,
    context: 8,
    reach: 1,
    rounds: 60,
    rate: 0.02,
    penalty: 0.001,
    dropFeature: 0,
    dropUnit: 0,
  }
  // Features 0 and 1 come and go; the first outcome is that just one of them holds, the second that feature 0 held before.
  // Neither can be told by a sum over the features of the sentence.
  const bits = (seed: number): readonly (readonly [boolean, boolean])[] =>
    Array.from({ length: 40 }, (_, i) => [((seed * 31 + i * i * 7 + i) & 2) > 0, ((seed * 17 + i * i * 3) & 4) > 0])
  const talks = Array.from({ length: 30 }, (_, seed) => bits(seed)).map(talk => ({
    rows: talk.map(([a, b]) => Int32Array.from([...(a ? [0] : []), ...(b ? [1] : []), 2])),
    truths: talk.map(([a, b], i) => Uint8Array.from([a === b ? 0 : 1, talk[i - 1]?.[0] ? 1 : 0])),
    weight: 1,
  }))
  const learn = () => fitNetwork(talks, 2, new Float32Array(3).fill(1), settings)
  const weights = learn()

  it('learns what only two features together tell, and what the sentence before tells', () => {
    const weigh = toNetwork(packNetwork(weights, ['one', 'before']))
    let right = 0
    let all = 0
    for (const { rows, truths } of talks) {
      const odds = weigh(rows.map(row => [...row]))
      truths.forEach((truth, i) => {
        for (const o of [0, 1]) {
          all++
          if ((odds[i * 2 + o] as number) > 0 === (truth[o] === 1)) right++
        }
      })
    }
    expect(right / all).toBeGreaterThan(0.99)
  })

  it('gives the same weights each time', () => {
    expect(learn()).toEqual(weights)
  })
})
