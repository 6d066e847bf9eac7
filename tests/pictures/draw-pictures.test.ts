import { describe, expect, it } from 'vitest'
import { drawPictures } from '../../src/pictures/draw-pictures.ts'
import { isPictureName } from '../../src/pictures/picture-name.ts'
import { faultsOf, showsLimits } from './legibility.ts'
import { measure } from './measure.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

const pictures = drawPictures(SAMPLE_PLAN, measure)

describe('every picture of a plan', () => {
  it.each([...pictures])('%s can be read: no line through a figure, nothing off the picture', (_, picture) => {
    expect(faultsOf(picture, measure)).toEqual([])
  })

  it.each([...pictures])('%s says in a sentence what it shows', (_, { alternative }) => {
    expect(alternative).toMatch(/^\S.{20,}\.$/)
  })

  it.each([...pictures.keys()])('%s is a name that a template may ask for', name => {
    expect(isPictureName(name)).toBe(true)
  })

  it('fits between the margins of A4', () => {
    for (const { width } of pictures.values()) expect(width).toBeLessThanOrEqual(((210 - 30) * 72) / 25.4 + 1e-9)
  })

  it('is there for every operation, every tilt, and every kind of sheet', () => {
    for (const { number } of SAMPLE_PLAN.operations) {
      expect(pictures.has(`strip-${number}`)).toBe(true)
      expect(pictures.has(`operation-${number}`)).toBe(true)
    }
    const others = [...pictures.keys()].filter(name => !/^(strip|operation)-/.test(name))
    expect(others.toSorted()).toEqual([
      'areas',
      'edges',
      'fixture-0',
      'fixture-15',
      'fixture-50',
      'hardness',
      'ladder',
      'map',
      'map-outside-true-size',
      'map-true-size',
      'plan-view',
      'timing',
    ])
  })

  it('is the same when drawn again', () => {
    expect([...drawPictures(SAMPLE_PLAN, measure)]).toEqual([...pictures])
  })

  it('shows every size of every operation by its limits', () => {
    for (const { number, sizes } of SAMPLE_PLAN.operations) {
      const texts =
        pictures.get(`operation-${number}`)?.marks.flatMap(mark => (mark.kind === 'text' ? [mark.text] : [])) ?? []
      for (const { lower, upper, feature } of sizes) {
        const shown = texts.some(text => showsLimits(text, lower, upper))
        expect(shown, `${number} ${feature} ${lower} ${upper}`).toBe(true)
      }
    }
  })
})

describe('a part without ports, case or finishing', () => {
  const { case: _, ...plain } = SAMPLE_PLAN
  const few = drawPictures(
    { ...plain, ports: [], ladders: [], stock: [], operations: plain.operations.slice(0, 4) },
    measure,
  )
  it('has its operations drawn and nothing else', () => {
    expect([...few.keys()].every(name => /^(strip|operation)-/.test(name))).toBe(true)
    for (const picture of few.values()) expect(faultsOf(picture, measure)).toEqual([])
  })
})
