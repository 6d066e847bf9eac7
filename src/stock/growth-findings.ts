import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { toleranceOf } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import { type Millimetre, micrometres } from '../units.ts'
import { type SolvedChain, TURNED_TO, toleranceLeft } from './solve-chain.ts'

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

/**
 * A surface left as turned must have a tolerance left when growth has had its share. A spread that is only reckoned may not
 * come: it is a warning, unless the least that hardening ever spreads eats the tolerance too.
 */
export function turnedFindings(part: Part, solved: SolvedChain): readonly Finding[] {
  const { chain, growth, soft } = solved
  const left = toleranceLeft({ final: chain.final, growth })
  if (!chain.hard || left > TURNED_TO) return []
  const certain = growth.from === 'measured' || toleranceOf(chain.final) <= 2 * LEAST_SPREAD
  const µm = (value: number): string => fixed(micrometres(value), 1)
  const reckoned = left <= toleranceOf(chain.final) / 2 && !certain
  return [
    {
      severity: left > 0 || reckoned ? 'warning' : 'error',
      code: 'stock/growth-over-tolerance',
      message: `${chain.surface} is not finished after hardening: ${
        reckoned
          ? `${µm(growth.least)} to ${µm(growth.most)} µm of growth a side, reckoned and not measured, ${left > 0 ? `leaves ${fixed(left, 3)} mm of` : 'is more than'} its tolerance of ${fixed(toleranceOf(chain.final), 3)} mm${left > 0 ? '' : ' takes'}`
          : `growth leaves ${fixed(left, 3)} mm of its tolerance to the turner`
      }`,
      at: placeOf(part, chain.path),
      hint: reckoned
        ? `measure a first article before the batch is turned; until then turn to ${fixed(soft.lower, 3)} to ${fixed(soft.upper, 3)} mm, for ${µm(growth.nominal)} µm a side; or grind it after hardening, or mask it`
        : 'grind it after hardening, widen its tolerance, or mask it',
    },
  ]
}

/**
 * A side, over a whole load of eighteen, however many quiet loads have been measured: ±3.1 µm where pieces spread by 1.0 and
 * loads by 0.3 (derived: tolerance band of a normal spread; the two spreads estimate).
 */
const LEAST_SPREAD: Millimetre = 2 * 0.0031
