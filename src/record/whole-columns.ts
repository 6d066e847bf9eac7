import { type Finding, warningAt } from '../finding.ts'
import { isGrade, standardTolerance } from '../handbook/standard-tolerance.ts'
import type { Reading, Results } from '../part/results.ts'
import { characteristicOf, type IssuedPlan } from './characteristic-of.ts'

const FINE_GRADE = 6
/** So many readings that are all alike were not read one by one. */
const ALIKE = 5

/** IT6 and finer by its width: the size says it, whoever chose the limits. */
export const isFine = (lower: number, upper: number): boolean => {
  const middle = (lower + upper) / 2
  return (
    middle > 0 && middle <= 250 && isGrade(FINE_GRADE) && upper - lower <= standardTolerance(middle, FINE_GRADE) + 1e-9
  )
}

/** What only a whole column shows. */
export function wholeColumns(plan: IssuedPlan, { readings, at }: Results): readonly Finding[] {
  const columns = new Map<string, Reading[]>()
  for (const reading of readings) {
    const key = `${reading.of}\n${reading.after ?? ''}`
    columns.set(key, [...(columns.get(key) ?? []), reading])
  }
  return [...columns.values()].flatMap(column => {
    const [first] = column
    const characteristic = first && characteristicOf(plan, first)
    if (!first || !characteristic) return []
    const alike =
      column.length >= ALIKE && column.every(({ value }) => value === first.value) && characteristic.unit === 'mm'
        ? [
            warningAt(
              'results/all-alike',
              `${first.of}: all ${column.length} readings are ${first.value}`,
              first.at,
              'were they read one by one?',
            ),
          ]
        : []
    const { lower, upper, unit } = characteristic
    const places = Math.max(...column.map(reading => (reading.gauge ? 0 : reading.places)))
    const tooFine =
      unit === 'mm' && places > characteristic.places + 1
        ? [
            warningAt(
              'results/too-fine',
              `${first.of}: readings with ${places} places; ${characteristic.gauge} reads ${characteristic.places}`,
              first.at,
              'say which gauge was used',
            ),
          ]
        : []
    const fine = unit === 'mm' && lower !== undefined && upper !== undefined && isFine(lower, upper)
    const cold =
      fine && column.some(({ temperature }) => temperature === undefined)
        ? [
            warningAt(
              'results/no-temperature',
              `${first.of}: a tolerance of IT6 or finer, and no temperature is given`,
              first.at,
              'add temperature: to the head of the file',
            ),
          ]
        : []
    const pieces = new Set(column.map(({ serial }) => serial)).size
    // Of every piece, or of a sample drawn among the numbered: what is set up with or cut up is asked for by nobody.
    const asked = Math.min(characteristic.sample, plan.batch.numbered)
    const short =
      pieces < asked
        ? [
            {
              code: 'results/missing' as const,
              severity: 'note' as const,
              message: `${first.of}: ${pieces} of ${asked} pieces are measured`,
              at,
            },
          ]
        : []
    return [...alike, ...tooFine, ...cold, ...short]
  })
}
