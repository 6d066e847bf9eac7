import { keysExplained, keysWithText, toRead } from './commented.ts'
import { schemaLine } from './part-template.ts'
import schema from './results.schema.json' with { type: 'json' }

const { properties } = schema

/** A commented results file to start from. It holds no reading: one that nobody took must not come into a record. */
export const resultsTemplate = (date: string, schemaAt?: string): string =>
  `${schemaLine(schemaAt)}# What was measured of a batch, for the command \`record\`. To say what stands behind a # take the # away. The readings
# behind it are examples: write your own.
results:
${keysWithText(properties.results, {
  filled: { part: 'NEW-1', batch: '1', date },
  offered: { revision: 'A', by: 'R. Tarn', temperature: '20.5', 'gauge-temperature': '20.5' },
}).join('\n')}

# ${properties.after.description} operation: ${properties.after.properties.operation.description}
#after: {operation: 40}

# ${properties.directions.description}
#directions: [0, 45, 90, 135]

# ${properties.gauges.description}
${keysExplained(properties.gauges.additionalProperties).join('\n')}
#gauges:
#  bore: {gauge: two-point bore gauge set on a ring, id: 14, set-on: 47.998}

${toRead(properties.pieces.description).join('\n')}
${keysExplained(properties.pieces.items).join('\n')}
#pieces:
#  - {serial: 1, seat: {20: [55.102, 55.102, 55.104, 55.103]}, bore: {20: [47.850, 47.850, 47.851, 47.851]}}
#  - {serial: 2, seat: 55.107, bore: 47.846, note: one reading each}

# ${properties.hardness.description}
${keysExplained(properties.hardness).join('\n')}
#hardness: {coupon: C1, load: HV0.5, surface: [612, 618, 609], depth: 0.41}

# ${properties.lost.description}
${keysExplained(properties.lost.items).join('\n')}
#lost:
#  - {serial: 3, operation: 40, why: bore over size}
`
