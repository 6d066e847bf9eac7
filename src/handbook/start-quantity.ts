import { type Formula, formula } from '../formula.ts'

export const yieldAfter: Formula<{ Y: ''; y: '' }, ''> = formula({
  symbol: 'Y',
  meaning: 'yield of the route, up to and with this operation',
  unit: '',
  expression: 'Y * y',
  inputs: {
    Y: { meaning: 'yield of the operations before', unit: '', over: 0, upTo: 1 },
    y: { meaning: 'yield of this operation: good pieces out of pieces in', unit: '', over: 0, upTo: 1 },
  },
  source: 'derived: the pieces lost at one operation do not depend on the others',
  example: { given: { Y: 0.9702, y: 0.95 }, gives: 0.92169 },
  value: ({ Y, y }) => Y * y,
})

/**
 * The binomial sum, counted by the pieces lost. A furnace load that goes wrong takes all its pieces with it: the formula
 * knows nothing of that.
 */
export const chanceOfEnough: Formula<{ Q: 'pieces'; s: 'pieces'; Y: '' }, ''> = formula({
  symbol: 'P',
  meaning: 'chance that no more than the spare pieces are lost',
  unit: '',
  expression: 'sum(map(0:s, lost(k) = combinations(Q + s, k) * (1 - Y)^k * Y^(Q + s - k)))',
  inputs: {
    Q: { meaning: 'good pieces wanted', unit: 'pieces', from: 1, upTo: 1000, whole: true },
    s: { meaning: 'spare pieces started', unit: 'pieces', from: 0, upTo: 200, whole: true },
    Y: { meaning: 'yield of the whole route', unit: '', over: 0, upTo: 1 },
  },
  source: 'derived: binomial distribution of the pieces lost, each independent of the others',
  example: { given: { Q: 20, s: 5, Y: 0.89402 }, gives: 0.9573, digits: 4 },
  value: ({ Q, s, Y }) => {
    if (Y === 1) return 1
    // By logarithms: the yield to the power of a large batch is too small for a number of the machine.
    const started = Q + s
    let logarithm = started * Math.log(Y)
    let sum = Math.exp(logarithm)
    for (let lost = 0; lost < s; lost++) {
      logarithm += Math.log((((started - lost) / (lost + 1)) * (1 - Y)) / Y)
      sum += Math.exp(logarithm)
    }
    return sum
  },
})
