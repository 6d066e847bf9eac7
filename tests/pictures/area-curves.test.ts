import { describe, expect, it } from 'vitest'
import { drawAreaCurves } from '../../src/pictures/area-curves.ts'
import type { Mark } from '../../src/pictures/picture.ts'
import { LINE, onPaper } from '../../src/pictures/picture.ts'
import { measure } from './measure.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

const gas = SAMPLE_PLAN.gasExchange
if (!gas) throw new Error('the sample has an engine')
const room = { width: onPaper(180), height: onPaper(80) }
const { marks, alternative } = drawAreaCurves(SAMPLE_PLAN, gas, room, measure)

const textAt = (words: string): { x: number; y: number } => {
  const found = marks.find(mark => mark.kind === 'text' && mark.text === words)
  if (found?.kind !== 'text') throw new Error(`no "${words}"`)
  return found
}
/** Back from the page to the chart, by the figures printed along its axes. */
const perDegree = (textAt('240').x - textAt('120').x) / 120
const degreesAt = (x: number): number => 120 + (x - textAt('120').x) / perDegree
const perArea = (textAt('100').y - textAt('300').y) / 200
/** The figures' baselines stand 3 points under their ticks. */
const areaAt = (y: number): number => 100 + (textAt('100').y - 3 - y) / perArea

type Path = Mark & { readonly kind: 'path' }
const places = ({ steps }: Path): readonly (readonly [number, number])[] =>
  steps.flatMap(step => (step.to === 'close' ? [] : [[degreesAt(step.x), areaAt(step.y)] as const]))
const paths = marks.filter((mark): mark is Path => mark.kind === 'path')
const curves = paths.filter(({ stroke, fill }) => stroke?.width === LINE.outline && !fill).map(places)

describe('uncovered area against crank angle', () => {
  it('draws every role from its opening to its closing, as high as the plan says', () => {
    expect(curves).toHaveLength(3)
    for (const [index, { uncovered = [] }] of gas.areas.entries()) {
      for (const [point, { angle, area }] of uncovered.entries()) {
        expect(curves[index]?.[point]?.[0]).toBeCloseTo(angle, 6)
        expect(curves[index]?.[point]?.[1]).toBeCloseTo(area, 6)
      }
    }
  })

  it('shades the exhaust from its opening to that of the transfers', () => {
    const [shaded] = paths.filter(({ fill }) => fill?.grey === 0.88).map(places)
    const angles = shaded?.map(([angle]) => angle) ?? []
    expect(Math.min(...angles)).toBeCloseTo(106, 6)
    expect(Math.max(...angles)).toBeCloseTo(121, 6)
    const edge = shaded?.find(([angle, area]) => angle > 120.999 && area > 1)
    expect(edge?.[1]).toBeCloseTo(380 * Math.sin((Math.PI * 15) / 148), 0)
  })

  it('stands bottom dead centre where the crank has it, also with a pin offset', () => {
    expect(degreesAt(textAt('BDC 180.0°').x)).toBeCloseTo(180, 6)
    const offset = drawAreaCurves(SAMPLE_PLAN, { ...gas, bottomDeadCentre: 180.9 }, room, measure)
    const moved = offset.marks.find(mark => mark.kind === 'text' && mark.text === 'BDC 180.9°')
    expect(moved?.kind === 'text' && degreesAt(moved.x)).toBeCloseTo(180.9, 6)
  })

  it('prints the angle-area, the time-area and the blowdown of the plan', () => {
    for (const words of ['37400 mm²·deg, 0.01520 s/m', '15.0°, 0.60 ms', 'opens 121.0°, closes 239.0°']) textAt(words)
    expect(alternative).toContain('exhaust opens 106.0°, closes 254.0°, most 380.0 mm²')
  })

  it('loses no label where there is no room: its words then stand in the caption, with a letter at the curve', () => {
    const narrow = drawAreaCurves(SAMPLE_PLAN, gas, { width: onPaper(74), height: onPaper(34) }, measure)
    const words = narrow.marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : []))
    const all = words.join(' ')
    for (const label of labels) expect(all, label).toContain(label)
    expect(words).toContain('A')
    expect(all).toMatch(/A: [a-z]/)
  })
})

/** The first line of every label. */
const labels = ['exhaust', 'main transfer', 'boost', 'blowdown']
