import { describe, expect, it } from 'vitest'
import type { Units } from '../../src/figures.ts'
import { drawSmaller, openPictures } from '../../src/pictures/draw-pictures.ts'
import { type LaidDocument, layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { openTemplates } from '../../src/sheets/render-template.ts'
import { packetSets } from '../../src/sheets/sets.ts'
import { type Paper, TYPE } from '../../src/sheets/theme.ts'
import { titleBlock } from '../../src/sheets/title-block.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { demoPlan, templates, typeface } from './demo-packet.ts'

/**
 * Pages that a part may take, all sets of the floor, the inspector and the firms together, on A4 and on Letter, which is shorter.
 * What is reached, never raised, and not bought with type too small to read. Wanted: liner 18, sleeve 15, plated liner 13, pin 9, iron liner 7, piston 5.
 */
const BUDGETS: readonly (readonly [part: string, a4: number, letter: number])[] = [
  ['OX-098-21', 18, 22],
  ['OX-131-07', 17, 17],
  ['OX-105-02', 13, 13],
  ['OX-098-34', 11, 11],
  ['OX-112-03', 8, 8],
  ['OX-098-30', 5, 5],
]

const PAPERS: readonly (readonly [Paper, Units])[] = [
  ['a4', 'mm'],
  ['letter', 'mm'],
  ['a4', 'inch'],
  ['letter', 'inch'],
]

function laidOut(part: string, paper: Paper, units: Units): ReadonlyMap<string, LaidDocument> {
  const plan = demoPlan(part)
  const pictures = openPictures(plan, typeface.measure, units)
  const smaller = drawSmaller(plan, typeface.measure, units)
  const sets = packetSets(plan, pictures.names, paperFigures(units))
  return new Map(
    sets
      .filter(({ reader }) => reader === 'floor' || reader === 'inspection' || reader === 'orders')
      .map(({ name, title: set, way, sheets }) => {
        const document = { block: titleBlock(plan), set, way, sheets, pictures, smaller, paper }
        return [name, layOutDocument(document, openTemplates(templates), typeface)]
      }),
  )
}

describe.each(PAPERS)('on %s in %s', (paper, units) => {
  it.each(BUDGETS)('%s keeps its sheets: %i, or %i on Letter', (part, a4, letter) => {
    const pages = [...laidOut(part, paper, units).values()].flatMap(document => document.pages)
    expect(pages.length).toBeLessThanOrEqual(paper === 'a4' ? a4 : letter)
    // No room is bought with small type.
    for (const item of pages.flat()) {
      if (item.kind === 'text') expect(item.size).toBeGreaterThanOrEqual(TYPE.table)
      if (item.kind === 'picture') expect(item.scale).toBeGreaterThan(0.95)
    }
  })
})
