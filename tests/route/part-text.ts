import type { Part } from '../../src/part/part.ts'
import { readPart } from '../../src/part/read-part.ts'

/** Invented: the ported liner that most tests start from. */
export const LINER_TEXT = `part: {number: OX-098-90, title: Test liner, revision: A, kind: liner}
engine: {stroke: 54, rod: 100, crown-below-top: 0.4}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: 92 ±0.05
  outside:
    - {to: 4, size: 62 h9, name: flange}
    - {to: 92, size: 55 g6, Ra: 0.8, name: seat}
  bore: {size: 48 H6, Ra: 0.3, cylindricity: 0.006}
  top: {Ra: 0.8, flatness: 0.01}
hardening: {process: gas nitriding, hardness: min 500 HV, depth: min 0.20}
ports:
  - {name: exhaust, at: 0, opens: 106, height: 16.1, width: 27, corner: 3, bridge: 2.6}
`

/** Invented: a plain sleeve of the given sizes, nitrided, left open where the planner chooses. */
export const sleeveText = (size: {
  readonly outside: string
  readonly bore: string
  readonly length?: number
  readonly stock?: string
}): string => `part: {number: OX-098-91, title: Test sleeve, revision: A, kind: sleeve}
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}
body:
  length: ${size.length ?? 80} ±0.05
  outside: {size: ${size.outside}, Ra: 0.8, name: seat}
  bore: {size: ${size.bore}, Ra: 0.3}
hardening: {process: gas nitriding, depth: min 0.15}
${size.stock === undefined ? '' : `stock: ${size.stock}\n`}`

export function partFrom(text: string): Part {
  const { part, findings } = readPart(text, 'test.yaml')
  if (!part) throw new Error(findings.map(({ message }) => message).join('\n'))
  return part
}
