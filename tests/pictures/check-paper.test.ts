import { describe, expect, it } from 'vitest'
import { readPart } from '../../src/part/read-part.ts'
import { drawPictures } from '../../src/pictures/draw-pictures.ts'
import { listedLabels } from '../../src/pictures/listed-labels.ts'
import { measureText } from '../../src/pictures/measure-text.ts'
import type { Mark, Picture } from '../../src/pictures/picture.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { LINER_TEXT } from '../route/part-text.ts'

const POINT = 72 / 25.4
const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }
const LEVEL = '  - {name: boost, at: 180, opens: 123, height: 9, width: 12, corner: 2}\n'

function planOf(text: string): Plan {
  const part = readPart(text, 'test.yaml').part
  const { plan } = part
    ? makePlan({ part, shop: BUILT_IN_SHOP, batch: { number: '1', quantity: 10 }, issue: ISSUE })
    : { plan: undefined }
  if (!plan) throw new Error('no plan')
  return plan
}

const pictureOf = (plan: Plan, name: string): Picture => {
  const found = drawPictures(plan).get(name)
  if (!found) throw new Error(name)
  return found
}

const words = ({ marks }: Picture): readonly string[] =>
  marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
const said = (picture: Picture): string => words(picture).join(' ')
const heavy = ({ marks }: Picture): readonly Extract<Mark, { kind: 'line' }>[] =>
  marks.flatMap(mark => (mark.kind === 'line' && mark.y1 === mark.y2 && mark.x2 - mark.x1 > 200 ? [mark] : []))

describe('the check paper of the outside', () => {
  const plan = planOf(`${LINER_TEXT}${LEVEL}`)
  const paper = pictureOf(plan, 'map-outside-true-size')
  const shape = plan.operations.find(({ purpose }) => purpose === 'mill-ports')?.shape

  it('starts at the underside of the flange, which a paper cannot be wrapped past, and counts from the top face', () => {
    const [flange] = shape?.outside ?? []
    const below = (flange?.to ?? 0) - (shape?.top ?? 0)
    expect(said(paper)).toContain(`underside of the flange, ${below.toFixed(2)} mm below the top face`)
    // The depth scale has no figure above the edge: 10 is its first.
    const figures = words(paper).filter(word => /^\d+$/.test(word))
    expect(figures).not.toContain('0')
    const [edge] = heavy(paper)
    const ten = paper.marks.find(mark => mark.kind === 'text' && mark.text === '10')
    if (!edge || ten?.kind !== 'text') throw new Error('no scale')
    expect((ten.y - 3 - edge.y1) / POINT).toBeCloseTo(10 - below, 6)
  })

  it('is as long as the outside is round, in strips that the page holds, each with a tab to glue', () => {
    const round = Math.PI * (shape?.outside.find(({ name }) => name === 'seat')?.diameter ?? 0)
    const strips = words(paper).filter(word => word === 'glue').length
    expect(strips).toBe(Math.ceil(round / 170))
    const edges = heavy(paper).filter((_, index) => index % 2 === 0)
    const long = edges.reduce((sum, { x1, x2 }) => sum + x2 - x1, 0)
    expect(long / POINT).toBeCloseTo(round, 6)
  })

  it('has the entry hole where it is punched, at its size', () => {
    const holes = plan.ports.flatMap(({ windows }) => windows.map(({ entryHole }) => (entryHole.diameter / 2) * POINT))
    const circles = paper.marks.flatMap(mark => (mark.kind === 'circle' ? [mark.radius] : []))
    for (const hole of holes) expect(circles.some(radius => Math.abs(radius - hole) < 1e-9)).toBe(true)
  })

  it('lies level with the top face where nothing stands out above the ports', () => {
    const plain = LINER_TEXT.replace('    - {to: 4, size: 62 h9, name: flange}\n', '')
    expect(said(pictureOf(planOf(plain), 'map-outside-true-size'))).toContain('heavy edge level with the top face')
  })
})

describe('one page', () => {
  it('never uses "as cut" for two things: on the enlarged edges it is the edge before grinding', () => {
    const plan = planOf(`${LINER_TEXT}${LEVEL}`)
    expect(said(pictureOf(plan, 'edges'))).not.toContain('as cut')
    expect(said(pictureOf(plan, 'edges'))).toContain('before grinding')
    expect(said(pictureOf(plan, 'map'))).toContain('as cut')
  })

  it('says the angle round the liner or the clock where a machinist reads, never azimuth', () => {
    const plan = planOf(`${LINER_TEXT}${LEVEL}`)
    for (const [name, picture] of drawPictures(plan)) expect(said(picture), name).not.toMatch(/azimuth/i)
  })
})

describe('a drawn datum in the pictures', () => {
  const withDatum = (datum: string): Plan =>
    planOf(`${LINER_TEXT.replace('  top: {Ra', `  datum: ${datum}\n  top: {Ra`)}${LEVEL}`)
  const flat = withDatum('{kind: flat, on: flange, at: 30, depth: 0.5}')

  it('is dimensioned in plan, on the part as the ports are milled, and where it is milled first', () => {
    const width = Math.sqrt(0.5 * ((flat.clocking?.datum?.place?.diameter ?? 0) - 0.5)) * 2
    expect(said(pictureOf(flat, 'plan-view'))).toContain(`${width.toFixed(1)} mm wide, 0.50 mm deep at 11 o’clock`)
    const milling = flat.operations.find(({ purpose }) => purpose === 'mill-ports')?.number
    expect(said(pictureOf(flat, `operation-${milling}`))).toContain('flat on flange')
    expect(said(pictureOf(flat, 'fixture-0'))).toContain('flat on flange, first of all')
  })

  it('is a chord as wide as the flat in plan, its middle as deep as drawn', () => {
    const rim = (flat.clocking?.datum?.place?.diameter ?? 0) / 2
    const scales = [1, 0.5, 0.2, 2]
    const chords = pictureOf(flat, 'plan-view').marks.flatMap(mark => {
      if (mark.kind !== 'path' || mark.steps.length !== 2) return []
      const [a, b] = mark.steps
      return a && b && a.to !== 'close' && b.to !== 'close' ? [Math.hypot(a.x - b.x, a.y - b.y) / POINT] : []
    })
    const wide = 2 * Math.sqrt(rim ** 2 - (rim - 0.5) ** 2)
    expect(chords.some(chord => scales.some(scale => Math.abs(chord - wide * scale) < 1e-6))).toBe(true)
  })

  it('is said behind, not lost, where it cannot be seen', () => {
    const behind = withDatum('{kind: notch, on: flange, at: 200, depth: 2}')
    const milling = behind.operations.find(({ purpose }) => purpose === 'mill-ports')?.number
    expect(said(pictureOf(behind, `operation-${milling}`))).toContain('notch on flange')
  })
})

describe('labels that find no room', () => {
  it('have a letter at the thing and their words in a list', () => {
    const frame = { x: 0, y: 0, width: 40, height: 40 }
    const rows = [
      { lines: ['a name that is far too long for so small a picture'], bold: true },
      { lines: ['at 12 o’clock'] },
    ]
    const { marks, captions } = listedLabels([{ rows, anchor: { x: 20, y: 20 }, toward: 0 }], [], frame, measureText)
    expect(captions).toEqual(['A: a name that is far too long for so small a picture, at 12 o’clock.'])
    expect(marks.some(mark => mark.kind === 'text' && mark.text === 'A')).toBe(true)
  })
})
