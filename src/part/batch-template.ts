import schema from './batch.schema.json' with { type: 'json' }
import { keysWithText } from './commented.ts'
import { asWritten, schemaLine } from './part-template.ts'

/** A commented batch file to start from, dated. */
export const batchTemplate = (number: string, date: string, schemaAt?: string): string =>
  `${schemaLine(schemaAt)}# One batch of a part: give it to a command with --batch. To say what stands behind a # take the # away.
batch:
${keysWithText(schema.properties.batch, {
  filled: { number: asWritten(number), quantity: '12', date },
  offered: { begins: date, heat: '7745A' },
}).join('\n')}
`
