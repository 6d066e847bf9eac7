import { describe, expect, it } from 'vitest'
import { drawPictures, drawSmaller } from '../../src/pictures/draw-pictures.ts'
import type { Picture } from '../../src/pictures/picture.ts'
import { drawPortMap } from '../../src/pictures/port-map.ts'
import { HARDENING_PROCESSES } from '../../src/process.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { sizeRows } from '../../src/sheets/views/size-rows.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { faultsOf } from './legibility.ts'
import { measure } from './measure.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

// The inch is 25.4 mm exactly: ISO 80000-3.
const INCH = 25.4

const wordsOf = ({ marks }: Picture): readonly string[] =>
  marks.flatMap(mark => (mark.kind === 'text' ? mark.text : []))
const limitsIn = (words: readonly string[]): ReadonlySet<string> =>
  new Set(words.flatMap(text => [...text.matchAll(/\d+\.\d+ \/ \d+\.\d+/g)].map(([limits]) => limits)))

const plan = demoPlan()
const pictures = drawPictures(plan, measure, 'inch')
const inMillimetres = drawPictures(plan, measure)
const named = (name: string): readonly string[] => wordsOf(pictures.get(name) ?? { ...EMPTY })
const EMPTY: Picture = { width: 0, height: 0, alternative: '', marks: [] }

describe.each(['OX-098-21', 'OX-098-30', 'OX-098-31', 'OX-098-34', 'OX-105-02', 'OX-112-03', 'OX-131-07'])(
  '%s on sheets in inches',
  name => {
    const each = name === 'OX-098-21' ? plan : demoPlan(name)
    const drawn = name === 'OX-098-21' ? pictures : drawPictures(each, measure, 'inch')
    const smaller = drawSmaller(each, measure, 'inch')

    it.each([
      ['as large as there is room', (at: string) => drawn.get(at)],
      ...smaller.map((again, index) => [`drawn again with less room, ${index + 1}`, again] as const),
    ] as const)('has the limits of its tables, %s', (_, pictureAt) => {
      for (const operation of each.operations) {
        const at = `operation-${operation.number}`
        const picture = pictureAt(at)
        // Smaller than can be seen it is not drawn again.
        if (!picture) continue
        const rows = sizeRows(operation, paperFigures('inch'))
        const inTable = new Set(rows.map(({ limits }) => limits.replaceAll('\u00a0', ' ')))
        const words = wordsOf(picture)
        const leftOut = words.join(' ').includes('Not shown')
        for (const limits of limitsIn(words)) expect(inTable, at).toContain(limits)
        // What a furnace leaves is foretold: its drawing holds nobody to it.
        const furnace = HARDENING_PROCESSES.has(operation.process)
        if (!leftOut) expect(limitsIn(words), at).toEqual(furnace ? new Set() : inTable)
      }
    })

    it('can be read: no line through a figure, nothing off the picture', () => {
      for (const [at, picture] of drawn) expect(faultsOf(picture, measure), at).toEqual([])
    })
  },
)

describe('pictures in inches', () => {
  it('can be read for the sample plan too', () => {
    for (const [at, picture] of drawPictures(SAMPLE_PLAN, measure, 'inch')) {
      expect(faultsOf(picture, measure), at).toEqual([])
    }
  })

  it('print no millimetre but what the drawing says, the bar, and areas', () => {
    for (const [at, picture] of pictures) {
      for (const text of wordsOf(picture)) {
        const rest = text
          .replaceAll('mm²', '')
          .replace(/drawing [^,]+ mm( finished)?/, '')
          .replaceAll(/\d+ mm \(\d\.\d{3} in\)/g, '')
          .replace(/0\.1 mm is \d+\.\d+° of crank/, '')
        expect(rest, at).not.toMatch(/\bmm\b/)
      }
    }
  })

  it('mark the millimetres of a size written on the drawing, and the micrometres of a roughness', () => {
    const words = [...pictures.keys()].flatMap(name => (name.startsWith('operation') ? named(name) : []))
    const drawings = words.filter(text => text.startsWith('drawing '))
    expect(drawings.length).toBeGreaterThan(3)
    for (const text of drawings) {
      expect(text).toMatch(/^drawing \S.* mm(, | finished| chord|$)/)
      if (text.includes('Ra')) expect(text).toMatch(/Ra [\d.]+ µm$/)
    }
  })

  it('stand where they stand in millimetres: only the lettering differs', () => {
    expect([...pictures.keys()]).toEqual([...inMillimetres.keys()])
    for (const name of ['map', 'ladder', 'hardness', 'edges'])
      expect(named(name)).not.toEqual(wordsOf(inMillimetres.get(name) ?? EMPTY))
    for (const name of ['timing', 'plan-view', 'areas', 'strip-10'])
      expect(pictures.get(name)).toEqual(inMillimetres.get(name))
  })
})

describe('the figures of a picture in inches', () => {
  it('a ladder counts in inches, one place more than in millimetres', () => {
    const words = named('ladder')
    expect(words.filter(text => /^(Ø )?mm$|takes, mm/.test(text))).toEqual([])
    expect(words).toContain('Ø in')
    const last = plan.ladders.find(({ surface }) => surface === 'bore')?.states.at(-1)
    const shown = [...limitsIn(words)].map(text => text.split(' / ').map(Number))
    const held = shown.some(
      ([low = 0, high = 0]) =>
        low * INCH >= (last?.lower ?? 0) - 1e-6 && high * INCH <= (last?.upper ?? 0) + 1e-6 && high > low,
    )
    expect(held).toBe(true)
  })

  it('a port map keeps its bar of 50 mm and says what that is in inches', () => {
    for (const name of ['map-true-size', 'map-outside-true-size']) {
      expect(named(name)).toContain('50 mm (1.969 in)')
      expect(named(name).join(' ')).toContain('Depths in inches')
    }
    expect(named('map')).toContain('10 mm (0.394 in)')
    const [window] = plan.ports[0]?.windows ?? []
    const top = named('map').flatMap(text => /^finished (\d\.\d{3}) to/.exec(text)?.[1] ?? [])
    expect(top.some(text => Math.abs(Number(text) * INCH - (window?.edges.finished.highest ?? 0)) < 0.0127)).toBe(true)
  })

  it('the depth scale stands at quarters and halves of an inch', () => {
    const { marks } = drawPortMap({ plan, kind: 'bore at true size', width: 510, measure, units: 'inch' })
    const figures = marks.flatMap(mark => (mark.kind === 'text' && mark.anchor === 'end' ? [mark] : []))
    const at = (text: string) => figures.find(mark => mark.text === text)?.y ?? Number.NaN
    // Half an inch of paper is 36 points at true size.
    expect(at('1.0') - at('0.5')).toBeCloseTo(36, 6)
    expect(at('0.5') - at('0.0')).toBeCloseTo(36, 6)
  })

  it('the fixture stands at the X, Z and cutter of the table', () => {
    for (const { windows } of plan.ports) {
      for (const { tilt, x, z, cutter } of windows) {
        const words = named(`fixture-${Number(tilt.toFixed(3))}`)
        expect(words).toContain(`X ${paperFigures('inch').length(x)}`)
        expect(words).toContain(`Z ${paperFigures('inch').length(z)}`)
        expect(words.some(text => text.startsWith(`cutter Ø${paperFigures('inch').length(cutter, 2)},`))).toBe(true)
      }
    }
  })

  it('a hardness curve has round inches below the surface, where they are', () => {
    const marks = pictures.get('hardness')?.marks ?? []
    const texts = marks.flatMap(mark => (mark.kind === 'text' && mark.anchor === 'middle' ? [mark] : []))
    expect(texts.map(({ text }) => text)).toContain('inches below the surface as hardened')
    const ticks = texts.flatMap(({ text, x }) => (/^0\.\d+$/.test(text) ? [{ value: Number(text), x }] : []))
    const metric = (inMillimetres.get('hardness')?.marks ?? []).flatMap(mark =>
      mark.kind === 'text' && mark.anchor === 'middle' && /^0\.\d+$/.test(mark.text)
        ? [{ value: Number(mark.text), x: mark.x }]
        : [],
    )
    const pitch = (of: typeof ticks) =>
      ((of.at(-1)?.x ?? 0) - (of[0]?.x ?? 0)) / ((of.at(-1)?.value ?? 0) - (of[0]?.value ?? 0))
    expect(pitch(ticks) / pitch(metric)).toBeCloseTo(INCH, 6)
  })
})
