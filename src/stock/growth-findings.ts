import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { type Part, placeOf } from '../part/part.ts'
import { micrometres } from '../units.ts'
import { type SolvedChain, toleranceLeft } from './solve-chain.ts'

/** Turned past its finished size, a surface has metal to finish only if it grows as nobody has measured. */
export function restsOnGrowth(part: Part, { chain, soft, growth }: SolvedChain): readonly Finding[] {
  const { kind, final, surface } = chain
  const past = kind === 'bore' ? soft.upper - final.upper : final.lower - soft.lower
  if (kind === 'face' || growth.from === 'measured' || past <= 1e-9) return []
  return [
    {
      severity: 'warning',
      code: 'stock/rests-on-growth',
      message: `${surface} is turned ${fixed(past, 3)} mm past its finished size: only growth leaves it anything to finish, and ${fixed(micrometres(growth.least), 1)} to ${fixed(micrometres(growth.most), 1)} µm a side is reckoned, not measured`,
      at: placeOf(part, chain.path),
      hint: 'harden a first article, measure both sides before and after, and write it in the shop file under measured:',
    },
  ]
}

/** A surface left as turned must have a tolerance left when growth has had its share. */
export function turnedFindings(part: Part, solved: SolvedChain): readonly Finding[] {
  const left = toleranceLeft(solved)
  if (!solved.chain.cased || left > 0.01) return []
  return [
    {
      severity: left > 0 ? 'warning' : 'error',
      code: 'stock/growth-over-tolerance',
      message: `${solved.chain.surface} is not finished after hardening: growth leaves ${fixed(left, 3)} mm of its tolerance to the turner`,
      at: placeOf(part, solved.chain.path),
      hint: 'grind it after hardening, widen its tolerance, or mask it',
    },
  ]
}
