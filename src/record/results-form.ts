import { inwardLimits, roundedDown, roundedUp } from '../figures.ts'
import type { Characteristic } from '../inspection/characteristic.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import { characteristicOf, type IssuedPlan } from './characteristic-of.ts'

/** One thing to read, by the key that it goes by. */
type Asked = { readonly key: string; readonly of: Characteristic }

/** Operations after which something is measured on the pieces, with how many things. */
export const stagesMeasured = (
  plan: IssuedPlan,
): readonly { readonly operation: number; readonly name: string; readonly keys: number }[] =>
  plan.operations.flatMap(({ number, name }) => {
    const keys = askedAfter(plan, number).length
    return keys > 0 ? [{ operation: number, name, keys }] : []
  })

/** What is read on pieces after an operation, each by the shortest key that means it. */
function askedAfter(plan: IssuedPlan, after: number): readonly Asked[] {
  const { operations, inspection } = plan
  const operation = operations.find(({ number }) => number === after)
  const judges = operation?.sizes.map(({ judge }) => judge) ?? []
  return inspection.characteristics
    .filter(({ operation: at, number, unit, feature, sample, stage }) => {
      const ours = judges.includes(number) || (at === after && stage !== 'before-sending')
      return ours && unit !== '-' && feature !== 'coupon' && feature !== 'bar' && sample > 0
    })
    .flatMap((of): readonly Asked[] => {
      const meant = (key: string): boolean => characteristicOf(plan, { of: key, after })?.number === of.number
      const key = [of.feature, of.name, String(of.number)].find(meant)
      return key === undefined ? [] : [{ key, of }]
    })
}

/** A results file to fill in: the characteristics of one stage, a line each for every piece that is measured. No reading stands in it. */
export function resultsForm(
  plan: IssuedPlan,
  after: number,
  { date, schemaLine }: { readonly date: string; readonly schemaLine: string },
): string {
  const asked = askedAfter(plan, after)
  const operation = plan.operations.find(({ number }) => number === after)
  const hardened = operation !== undefined && HARDENING_PROCESSES.has(operation.process)
  const pieces = Array.from({ length: plan.batch.numbered }, (_, index) => String(index + 1))
  const quoted = (text: string): string => (/^[\w .-]+$/.test(text) ? text : JSON.stringify(text))
  const { part, batch } = plan
  return `${schemaLine}# What is measured after operation ${after}${operation ? `, ${operation.name}` : ''}. Write what the gauge reads, the full size; what is left empty is not measured.
results: {part: ${quoted(part.number)}, revision: ${quoted(part.revision)}, batch: ${quoted(batch.number)}, date: ${date}}
# Beside them: by: who measured, temperature: of the part in °C where it is not 20, gauge-temperature: where the gauge's is another.
after: {operation: ${after}}

# A diameter may be a list by direction, and either by its depth below the top face: seat: {20: [55.1012, 55.1008], 60: [55.1021, 55.1015]}
# Azimuths of such lists, degrees: four at 45° show an oval exactly, two do not.
#directions: [0, 45, 90, 135]

# Gauges, where another is used than planned, or what its master is certified to:
#gauges:
${asked.map(({ key, of }) => `#  ${quoted(key)}: {gauge: ${JSON.stringify(of.gauge)}${of.unit === 'mm' ? `, uncertainty: ${of.uncertainty}` : ''}}`).join('\n')}

# In the order in which they were made. note: a remark${hardened ? ', bow: axis off straight, mm' : ''}.
pieces:
${pieces.map(serial => pieceText(serial, asked, hardened, quoted)).join('\n')}
${hardened ? HARDNESS : ''}
# Pieces that are lost: which, at which operation, why.
#lost:
#  - {serial: 1, operation: ${after}, why: dropped}
`
}

const HARDNESS = `
# On the coupon: HV readings of the surface, and the depth certified, mm.
#hardness: {coupon: C1, load: HV0.5, surface: [600, 600, 600], depth: 0.40}
`

const COLUMN = 44

/** The first piece has beside every key what it is and its limits. */
function pieceText(
  serial: string,
  asked: readonly Asked[],
  hardened: boolean,
  quoted: (text: string) => string,
): string {
  const lines = asked
    .filter(({ of }) => Number(serial) <= of.sample)
    .map(({ key, of }) => {
      const line = `    ${quoted(key)}:`
      return serial === '1' ? `${line.padEnd(COLUMN)} # ${saysOf(of)}` : line
    })
  return [`  - serial: ${serial}`, ...lines, ...(hardened ? ['    bow:'] : [])].join('\n')
}

function saysOf({ number, name, lower, upper, unit, places, gauge }: Characteristic): string {
  const written = (value: number, round: typeof roundedUp): string =>
    unit === 'mm' ? round(value, places) : String(value)
  const limits =
    lower !== undefined && upper !== undefined
      ? unit === 'mm'
        ? inwardLimits(lower, upper, places).join(' to ')
        : `${lower} to ${upper}`
      : upper !== undefined
        ? `not over ${written(upper, roundedDown)}`
        : lower !== undefined
          ? `not under ${written(lower, roundedUp)}`
          : ''
  return `${number} ${name}${limits === '' ? '' : `, ${limits} ${unit}`}, ${gauge}`
}
