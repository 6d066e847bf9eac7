import { describe, expect, it } from 'vitest'
import type { Units } from '../../src/figures.ts'
import { drawPictures, drawSmaller } from '../../src/pictures/draw-pictures.ts'
import { type LaidDocument, layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { openTemplates } from '../../src/sheets/render-template.ts'
import { packetSets } from '../../src/sheets/sets.ts'
import { type Paper, TYPE } from '../../src/sheets/theme.ts'
import { titleBlock } from '../../src/sheets/title-block.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { demoPlan, templates, typeface } from './demo-packet.ts'

/**
 * Pages that a part may take: of the floor on A4 and on Letter, which is shorter, and of the inspector. What is reached, never
 * raised, and not bought with drawings too small to see. Wanted of all sets together: liner 18, sleeve 15, plated liner 13, pin 9, iron liner 7, piston 5.
 */
const BUDGETS: readonly (readonly [part: string, a4: number, letter: number, inspection: number])[] = [
  ['OX-098-21', 12, 13, 5],
  ['OX-131-07', 11, 11, 3],
  ['OX-105-02', 5, 5, 3],
  ['OX-098-34', 8, 8, 2],
  ['OX-112-03', 5, 5, 2],
  ['OX-098-30', 5, 5, 2],
]

const PAPERS: readonly (readonly [Paper, Units])[] = [
  ['a4', 'mm'],
  ['letter', 'mm'],
  ['a4', 'inch'],
  ['letter', 'inch'],
]

function laidOut(part: string, paper: Paper, units: Units): ReadonlyMap<string, LaidDocument> {
  const plan = demoPlan(part)
  const pictures = drawPictures(plan, typeface.measure, units)
  const smaller = drawSmaller(plan, typeface.measure, units)
  const sets = packetSets(plan, [...pictures.keys()], paperFigures(units))
  return new Map(
    sets
      .filter(({ reader }) => reader === 'floor' || reader === 'inspection')
      .map(({ name, title: set, way, sheets }) => {
        const document = { block: titleBlock(plan), set, way, sheets, pictures, smaller, paper }
        return [name, layOutDocument(document, openTemplates(templates), typeface)]
      }),
  )
}

describe.each(PAPERS)('on %s in %s', (paper, units) => {
  it.each(BUDGETS)(
    '%s keeps its sheets: on the floor %i, or %i on Letter, and %i at inspection',
    (part, a4, letter, inspection) => {
      const floor = paper === 'a4' ? a4 : letter
      const laid = laidOut(part, paper, units)
      const pages = (name: string) => laid.get(name)?.pages ?? []
      expect([pages('floor').length, pages('inspection').length]).toEqual([
        Math.min(floor, pages('floor').length),
        Math.min(inspection, pages('inspection').length),
      ])
      // No room is bought with small type.
      for (const item of [...pages('floor'), ...pages('inspection')].flat()) {
        if (item.kind === 'text') expect(item.size).toBeGreaterThanOrEqual(TYPE.table)
        if (item.kind === 'picture') expect(item.scale).toBeGreaterThan(0.95)
      }
    },
  )
})
