import type { Characteristic } from '../inspection/characteristic.ts'
import type { Reading } from '../part/results.ts'
import type { PlanToJudge } from '../record/characteristic-of.ts'
import { judgeResults } from '../record/judge-results.ts'
import type { Verdict } from '../record/verdict.ts'

/** As typed, with a point or a comma; nothing where it is no number. */
export function numberOf(typed: string): number | undefined {
  const plain = typed.trim().replace(',', '.').replace('\u2212', '-')
  return /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(plain) ? Number(plain) : undefined
}

/** Unit in which a characteristic is read on a sheet of these units. */
export const unitOn = (units: 'mm' | 'inch', { unit }: Pick<Characteristic, 'unit'>): string =>
  unit === 'mm' && units === 'inch' ? 'in' : unit

/** Judged by the same function as when the batch is recorded, so that page and record cannot differ. */
export function verdictOf(
  plan: PlanToJudge,
  of: Characteristic,
  value: number,
  { units, temperature }: { readonly units: 'mm' | 'inch'; readonly temperature?: number | undefined },
): Verdict | undefined {
  if (of.lower === undefined && of.upper === undefined) return undefined
  const reading: Reading = {
    serial: '-',
    of: String(of.number),
    after: of.operation,
    value: unitOn(units, of) === 'in' ? value * 25.4 : value,
    places: of.places,
    at: { file: '', line: 0, column: 0 },
    ...(temperature !== undefined && { temperature }),
  }
  return judgeResults(plan, [reading])[0]?.verdict
}
