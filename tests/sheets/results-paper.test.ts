import { describe, expect, it } from 'vitest'
import { drawReadingStrip } from '../../src/pictures/reading-strip.ts'
import { resultsPaper, resultsPictures, resultsReadersOf, resultsSets } from '../../src/sheets/results-paper.ts'
import { faceView, grindingView } from '../../src/sheets/views/grinding-view.ts'
import { pairsView } from '../../src/sheets/views/pairs-view.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { statementView } from '../../src/sheets/views/statement-view.ts'
import { demoPlan, templates, typeface } from './demo-packet.ts'
import { demoResults } from './demo-results.ts'

const mm = paperFigures('mm')
const back = demoResults('turned', 'milled', 'nitrided')
const done = demoResults('turned', 'milled', 'nitrided', 'honed')
const options = { templates, typeface, paper: 'a4', units: 'mm' } as const

describe('the grinding list', () => {
  const [list] = back.recorded.grinding
  if (!list) throw new Error('the demo has pieces to grind')
  const view = grindingView(list, mm, 'mm')

  it('has a line for every piece that is not lost, in the order to grind them', () => {
    expect(view.pieces.map(({ piece }) => piece)).toEqual(list.turns.map(({ serial }) => serial))
    expect([...view.pieces, ...view.lost].map(({ piece }) => piece)).not.toContain('9')
  })

  it('gives limits that never print outside themselves', () => {
    for (const [index, { make }] of view.pieces.entries()) {
      const { from, to } = list.turns[index]?.window ?? {}
      const [low, high] = make.split('\u00a0/\u00a0').map(Number)
      expect(low).toBeGreaterThanOrEqual((from ?? 0) - 1e-9)
      expect(high).toBeLessThanOrEqual((to ?? 0) + 1e-9)
    }
  })

  it('is empty once pieces are past that operation', () => {
    const waiting = done.recorded.grinding.flatMap(({ turns }) => turns.map(({ serial }) => serial))
    const honed = done.recorded.judged.filter(({ after }) => after === 100).map(({ serial }) => serial)
    expect(waiting.filter(serial => honed.includes(serial))).toEqual([])
    expect(done.recorded.standing.out.map(({ serial }) => serial)).not.toContain('5')
  })
})

describe('the take-off of the top face', () => {
  const list = back.recorded.face
  if (!list) throw new Error('the demo has edges to put right')

  // By hand from the chain -W1 + X1 - 54.865e + W3 of the plan: the face is ground lower by what the edge was milled too deep.
  it('brings the milled edge to where it is wanted, as far as the length allows', () => {
    const edge = demoPlan().ports.find(({ name }) => name === 'exhaust')?.edge
    const milled = demoPlan().axial?.dimensions.find(({ to }) => to === 'exhaust, top edge')?.limits.nominal ?? 0
    const [lowest, highest] = [91.99, 92.01]
    for (const [serial, read] of [
      ['1', 38.331],
      ['2', 38.302],
      ['13', 38.371],
    ] as const) {
      const turn = list.turns.find(one => one.serial === serial)
      const stands = (edge?.nominal ?? 0) + read - milled
      const asked = 92 + list.wanted - stands
      expect(turn?.length).toBeCloseTo(Math.min(highest, Math.max(lowest, asked)), 9)
      expect(turn?.comes).toBeCloseTo(stands + (turn?.length ?? 0) - 92, 9)
    }
    const verdictOf = (serial: string) => list.turns.find(one => one.serial === serial)?.verdict
    expect(['1', '2', '13'].map(verdictOf)).toEqual(['edge put right', 'held by the length', 'held by the length'])
  })

  it('says what it takes for granted, and with its sign how much sooner the port opens', () => {
    const { pieces } = faceView(list, mm)
    const soonerOf = (serial: string) => pieces.find(({ piece }) => piece === serial)?.sooner
    expect(['1', '2', '13'].map(soonerOf)).toEqual(['0.00', '+0.04', '−0.08'])
    expect(pieces[0]?.granted).toContain('length turned as planned')
  })
})

describe('the statement to the customer', () => {
  const view = statementView(done.plan, done.recorded, mm, done.dates)

  it('names no piece that is lost or out, and every characteristic without a reading', () => {
    const pieces = view?.tables[0]?.rows.map(({ piece }) => piece)
    expect(pieces).toHaveLength(14)
    expect(pieces).not.toContain('8')
    expect(pieces).not.toContain('9')
    expect(view?.unmeasured).toContain('seat run-out')
    expect(view?.unmeasured).not.toContain('bore diameter')
  })

  it('is not made of what is not finished', () => {
    expect(statementView(back.plan, back.recorded, mm, back.dates)).toBeUndefined()
    expect(resultsReadersOf(back)).not.toContain('customer')
    expect(resultsReadersOf(done)).toEqual(['inspection', 'fitter', 'customer', 'file'])
  })
})

it('tags every pair once, with its clearance', () => {
  if (!done.pairing) throw new Error('the demo pairs')
  const { pairs, tags } = pairsView(done.plan, done.pairing, mm)
  expect(tags.flatMap(({ across }) => across).map(({ bore, piston }) => `${bore}-${piston}`)).toEqual(
    pairs.map(({ bore, piston }) => `${bore}-${piston}`),
  )
})

describe('a strip of readings', () => {
  const strip = {
    title: '93 bore diameter, mm',
    limits: { lower: 48, upper: 48.016 },
    written: { lower: '48.000', upper: '48.016' },
    guard: 0.0015,
    pieces: [
      { serial: '1', least: 48.004, most: 48.008, verdict: 'in limits' },
      { serial: '2', least: 48.0155, most: 48.0155, verdict: 'in doubt' },
      { serial: '3', least: 48.019, most: 48.021, verdict: 'out' },
    ],
  } as const
  const { marks, width, height } = drawReadingStrip(strip, 240, typeface.measure)

  it('stands higher the larger the reading, inside its own frame', () => {
    // One path for all marks in limits, one for those in doubt: the first step of a mark is its top.
    const tops = marks.flatMap(mark =>
      mark.kind === 'path' && mark.steps.length === 5 && mark.fill?.grey !== 0.88 ? [mark.steps[0]] : [],
    )
    const [inLimits = Number.NaN, inDoubt = Number.NaN] = tops.map(step => (step && 'y' in step ? step.y : Number.NaN))
    expect(tops).toHaveLength(2)
    expect(inDoubt).toBeLessThan(inLimits)
    for (const mark of marks) {
      if (mark.kind !== 'line') continue
      expect(Math.min(mark.x1, mark.x2)).toBeGreaterThanOrEqual(0)
      expect(Math.max(mark.x1, mark.x2)).toBeLessThanOrEqual(width)
      expect(Math.min(mark.y1, mark.y2)).toBeGreaterThanOrEqual(0)
      expect(Math.max(mark.y1, mark.y2)).toBeLessThanOrEqual(height)
    }
  })

  it('shades a guard band about each limit, as wide as the guard on either side', () => {
    const shades = marks.flatMap(mark => (mark.kind === 'path' && mark.fill?.grey === 0.88 ? [mark.steps] : []))
    expect(shades).toHaveLength(2)
    const limits = marks.filter(mark => mark.kind === 'line' && mark.x1 !== mark.x2 && mark.y1 === mark.y2)
    const scale =
      Math.abs((limits[0]?.kind === 'line' ? limits[0].y1 : 0) - (limits[1]?.kind === 'line' ? limits[1].y1 : 0)) /
      0.016
    for (const steps of shades) {
      const ys = steps.flatMap(step => ('y' in step ? [step.y] : []))
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(2 * 0.0015 * scale, 6)
    }
  })
})

describe('the paper of the results', () => {
  it('has a drawing for every one that a sheet asks for', () => {
    const pictures = resultsPictures(done.recorded, typeface.measure, 'mm')
    for (const { sheets } of resultsSets(done, mm, 'mm'))
      for (const [, name] of JSON.stringify(sheets.map(({ view }) => view)).matchAll(/"((?:readings|growth)-[^"]+)"/g))
        expect(pictures.has(name ?? '')).toBe(true)
  })

  it('is one PDF for each reader who wants one, and a page for the screen: the same bytes each time', async () => {
    const print = () => resultsPaper(done, { ...options, readers: ['inspection', 'customer', 'file'] })
    const [one, other] = [await print(), await print()]
    expect(one.documents.map(({ name }) => name)).toEqual(['results', 'statement'])
    expect(one.documents.map(({ pdf }) => Buffer.from(pdf).toString('latin1', 0, 5))).toEqual(['%PDF-', '%PDF-'])
    expect(one.html).toContain('What hardening did')
    expect(one.documents.map(({ pdf }) => Buffer.from(pdf).toString('base64'))).toEqual(
      other.documents.map(({ pdf }) => Buffer.from(pdf).toString('base64')),
    )
  })
})
