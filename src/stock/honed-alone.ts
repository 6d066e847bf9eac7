import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { HONED_ALONE } from '../handbook/honing-data.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type Millimetre, micrometres } from '../units.ts'
import type { SolvedChain } from './solve-chain.ts'

/** The layer that plasma is ordered with: no process that is honed alone has a thinner one. */
const THINNEST: Millimetre = 0.01

/**
 * A hardened bore that is honed and not ground: a hone follows the bore, so the case must come nearly true from the furnace,
 * with a thin layer, in a bore that is not long. Each limit that is passed is told with its figure.
 */
export function honedAloneFindings(part: Part, { chain, stocks }: SolvedChain): readonly Finding[] {
  const [finish] = chain.finishes
  if (!finish || chain.kind !== 'bore' || !chain.hard || finish.operation.process !== 'hone') return []
  const { ovality: o, stock, lengthOverBore, source } = HONED_ALONE
  const ovality: Millimetre = Number(finish.rests.find(({ figure }) => figure === 'ovality')?.value ?? 0)
  const layer: Millimetre = Number(finish.rests.find(({ figure }) => figure === 'compound layer')?.value ?? 0)
  const side = (stocks[0] ?? 0) / 2
  const slender = part.length.nominal / chain.final.nominal
  const passed = [
    ...(ovality > o + 1e-9
      ? [
          `it comes ${fixed(micrometres(ovality), 0)} µm oval from the furnace, and ${fixed(micrometres(o), 0)} are the most`,
        ]
      : []),
    ...(side > stock + 1e-9
      ? [`${fixed(side, 3)} mm a side would have to be honed off, and ${fixed(stock, 2)} are the most`]
      : []),
    ...(slender > lengthOverBore + 1e-9
      ? [`it is ${fixed(slender, 1)} times as long as wide, and ${lengthOverBore} times are the most`]
      : []),
  ]
  if (passed.length === 0) return []
  return [
    {
      severity: 'error',
      code: 'stock/honed-alone',
      message: `${chain.surface} cannot be honed alone: ${passed.join('; ')} (${source})`,
      at: placeOf(part, chain.path),
      hint: `grind it first: leave the waiver of ground-before-honing out; or ${layer > THINNEST ? 'choose a process with a thinner layer, plasma or two stages' : 'have it come truer from the furnace, and write the ovality and bow of pieces measured in the shop file'}`,
    },
  ]
}
