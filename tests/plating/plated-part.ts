import type { Part } from '../../src/part/part.ts'
import { partFrom } from '../route/part-text.ts'

/** Invented: a plain liner whose bore is plated. The lines are those of the part file. */
export const platedPart = ({
  plating = '{process: NiSiC, thickness: 0.075}',
  bore = '60 +0.013/0',
  material = '{grade: 42CrMo4, hardness: 320 HV, temper: 620}',
  more = '',
}: Readonly<Partial<Record<'plating' | 'bore' | 'material' | 'more', string>>> = {}): Part =>
  partFrom(`part: {number: OX-105-90, title: Test liner, revision: A, kind: liner}
material: ${material}
body:
  length: 100 ±0.1
  outside: {size: 70 h7, name: seat}
  bore: {size: ${bore}, Ra: 0.4, cylindricity: 0.01}
plating: ${plating}
${more}`)
