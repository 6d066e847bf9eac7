import { errorAt, type Finding, type Place, warningAt } from '../finding.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import { BOW, type Reading, type Results } from '../part/results.ts'
import { soakFrom, soakTime } from './at-twenty.ts'
import { characteristicOf, type IssuedPlan, measuredAfter } from './characteristic-of.ts'
import { isFine, wholeColumns } from './whole-columns.ts'

/** Further from the middle than so many tolerances is a slip, a unit or another piece. */
const FAR = 5
/** A length below this where the plan has a larger one is a deviation. */
const DEVIATION = 1
const WARM = 5
const APART = 2

/** What is wrong with results before they are judged: nothing is guessed, and what can be kept is kept. */
export function checkResults(plan: IssuedPlan, results: Results, gauges: readonly string[]): readonly Finding[] {
  const { part, batch } = plan
  const { at } = results
  const head: Finding[] = []
  if (results.part !== undefined && results.part !== part.number)
    head.push(errorAt('results/other-batch', `the file is of part ${results.part}, the plan of ${part.number}`, at))
  if (results.batch !== undefined && results.batch !== batch.number)
    head.push(errorAt('results/other-batch', `the file is of batch ${results.batch}, the plan of ${batch.number}`, at))
  if (results.revision !== undefined && results.revision !== part.revision)
    head.push(
      warningAt(
        'results/other-revision',
        `the file says revision ${results.revision}, the plan as issued ${part.revision}`,
        at,
        'the pieces are judged by the plan as issued',
      ),
    )
  if (results.date !== undefined && results.date < plan.date)
    head.push(
      warningAt(
        'results/too-early',
        `measured on ${results.date}, before the plan was issued on ${plan.date}`,
        at,
        'correct the date',
      ),
    )
  return [
    ...head,
    ...results.readings.flatMap(reading => checkReading(plan, reading, gauges)),
    ...results.lost.flatMap(({ serial, at, operation }) => [
      ...checkSerial(plan, serial, at),
      ...(operation !== undefined && !plan.operations.some(({ number }) => number === operation)
        ? [errorAt('results/unknown-operation', `the plan has no operation ${operation}`, at, numbers(plan))]
        : []),
    ]),
    ...twice(results),
    ...wholeColumns(plan, results),
  ]
}

const numbers = ({ operations }: IssuedPlan): string => `one of ${operations.map(({ number }) => number).join(', ')}`

/** Pieces go by number; the set-up piece and the coupon by S and C. */
const isSerial = ({ batch }: Pick<IssuedPlan, 'batch'>, serial: string): boolean =>
  /^[SC]\d*$/.test(serial) || (/^\d+$/.test(serial) && Number(serial) >= 1 && Number(serial) <= batch.numbered)

function checkSerial(plan: IssuedPlan, serial: string, at: Place): readonly Finding[] {
  if (isSerial(plan, serial)) return []
  const hint = `1 to ${plan.batch.numbered}, S for a set-up piece, C for a coupon`
  return [errorAt('results/unknown-serial', `the batch has no piece ${serial}`, at, hint)]
}

function checkReading(plan: IssuedPlan, reading: Reading, gauges: readonly string[]): readonly Finding[] {
  const { at, of, after } = reading
  const serial = checkSerial(plan, reading.serial, at)
  if (after !== undefined && !plan.operations.some(({ number }) => number === after))
    return [...serial, errorAt('results/unknown-operation', `the plan has no operation ${after}`, at, numbers(plan))]
  if (of === BOW) return serial
  const characteristic = characteristicOf(plan, reading)
  if (!characteristic) {
    if (after === undefined) {
      const hint = 'add after: {operation: …}, the column operation, or --operation'
      return [...serial, errorAt('results/no-operation', `${of}: nobody says which operation left it so`, at, hint)]
    }
    const known = measuredAfter(plan, after)
    const hint = known.length > 0 ? `one of ${known.join(', ')}` : 'nothing is measured there'
    return [...serial, errorAt('results/unknown-feature', `${of} is not measured after operation ${after}`, at, hint)]
  }
  const gauge = reading.gauge?.gauge
  const unknown =
    gauge !== undefined && !gauges.includes(gauge) && !isPlanned(plan, gauge)
      ? [
          warningAt(
            'results/unknown-gauge',
            `the shop file has no gauge "${gauge}"`,
            at,
            `it is judged as by ${characteristic.gauge}, or give its uncertainty`,
          ),
        ]
      : []
  return [
    ...serial,
    ...unitFindings(characteristic, reading),
    ...sizeFindings(characteristic, reading),
    ...temperatureFindings(plan, characteristic, reading),
    ...unknown,
  ]
}

/** Lengths are turned into each other; hardness into no length. */
function unitFindings({ unit: own, name }: Characteristic, { unit, at }: Reading): readonly Finding[] {
  if (unit === undefined || unit === own || (unit === 'mm' && own === 'µm')) return []
  const hint = own === '-' ? 'leave the unit out' : `write it in ${own}`
  return [errorAt('input/wrong-unit', `${name} is not measured in ${unit}`, at, hint)]
}

function sizeFindings({ lower, upper, unit, name }: Characteristic, { value, at }: Reading): readonly Finding[] {
  if (unit !== 'mm' || lower === undefined || upper === undefined) return []
  const middle = (lower + upper) / 2
  if (Math.abs(value) < DEVIATION && middle > 2 * DEVIATION)
    return [
      errorAt(
        'results/deviation',
        `${name}: ${value} is a deviation; the full size is wanted`,
        at,
        `write ${(middle + value).toFixed(4)} if it is from ${middle.toFixed(4)}`,
      ),
    ]
  if (Math.abs(value - middle) <= FAR * (upper - lower)) return []
  return [
    warningAt(
      'results/far-off',
      `${name}: ${value} lies ${(Math.abs(value - middle) / (upper - lower)).toFixed(0)} tolerances from the middle of ${lower.toFixed(4)} to ${upper.toFixed(4)}`,
      at,
      'a unit, a slip of the pen or another piece: measure again',
    ),
  ]
}

function temperatureFindings(
  plan: IssuedPlan,
  { lower, upper, unit, name }: Characteristic,
  reading: Reading,
): readonly Finding[] {
  if (unit !== 'mm' || lower === undefined || upper === undefined || !isFine(lower, upper)) return []
  const { temperature, gaugeTemperature, at } = reading
  if (temperature === undefined) return []
  if (Math.abs(temperature - 20) > WARM) {
    const minutes = soakFrom(
      soakTime({ wall: thickest(plan), ...STEEL_IN_AIR }),
      temperature,
      temperature > 20 ? 20.5 : 19.5,
    )
    const message = `${name}: read at ${temperature} °C; a tolerance of IT6 or finer is not judged more than ${WARM} K from 20 °C`
    const hint = `let it soak, about ${minutes.toFixed(0)} min in still air, a quarter of that on a plate, and measure again`
    return [errorAt('results/too-warm', message, at, hint)]
  }
  if (Math.abs((gaugeTemperature ?? temperature) - temperature) <= APART) return []
  const message = `${name}: part and gauge are more than ${APART} K apart`
  return [errorAt('results/too-warm', message, at, 'let both lie on one plate, and measure again')]
}

/** Density and heat of steel: memory, handbooks; transfer to still air: memory, half as much either way. */
const STEEL_IN_AIR = { density: 7850, heat: 460, transfer: 10 }

/** Thickest wall of the part as it is finished. */
function thickest({ operations }: IssuedPlan): number {
  const shape = operations.at(-1)?.shape
  const bore = Math.min(...(shape?.bore ?? []).map(({ diameter }) => diameter), Number.POSITIVE_INFINITY)
  const outside = Math.max(...(shape?.outside ?? []).map(({ diameter }) => diameter), 0)
  return Number.isFinite(bore) ? (outside - bore) / 2 : outside / 2
}

/** A serial that stands twice for one place of one surface in one file. */
function twice({ readings }: Results): readonly Finding[] {
  const seen = new Map<string, Reading>()
  return readings.flatMap(reading => {
    const { serial, of, after, depth, direction, at } = reading
    const key = [serial, of, after, depth, direction].join('\n')
    const before = seen.get(key)
    seen.set(key, reading)
    if (!before || direction === undefined)
      return before && before.at.line !== at.line ? [repeated(reading, before)] : []
    return [repeated(reading, before)]
  })
}

const repeated = ({ serial, of, at }: Reading, before: Reading): Finding =>
  warningAt(
    'results/twice',
    `${of} of piece ${serial} stands in line ${before.at.line} too: the mean of both counts`,
    at,
    'delete one if it is a slip',
  )

/** A gauge that the plan names, to get where the works has none. */
const isPlanned = ({ inspection }: IssuedPlan, gauge: string): boolean =>
  inspection.characteristics.some(characteristic => characteristic.gauge === gauge)
