import { describe, expect, it } from 'vitest'
import { CUTTING_FAMILY, type HardnessRow, rowAt, STEELS, USUAL_HARDNESS } from '../../src/handbook/cutting-grades.ts'
import { DRILLING_ROWS } from '../../src/handbook/drilling-speeds.ts'
import { materialOf } from '../../src/handbook/materials.ts'
import { MILLING_ROWS } from '../../src/handbook/milling-speeds.ts'
import { SPECIFIC_FORCE_ROWS, TEXTBOOK_FORCE } from '../../src/handbook/specific-force.ts'
import { TURNING_ROWS, turningSpeed } from '../../src/handbook/turning-speeds.ts'
import { HSS_DRILLING } from './second-models/drilling.ts'
import { END_MILL_GUIDE_ROWS } from './second-models/end-milling.ts'
import { POWER_CONSTANTS } from './second-models/specific-force.ts'

const TABLES: readonly (readonly [string, readonly HardnessRow[]])[] = [
  ['specific force', SPECIFIC_FORCE_ROWS],
  ['turning', TURNING_ROWS],
  ['drilling', DRILLING_ROWS],
  ['milling', MILLING_ROWS],
]
const FAMILIES = [...new Set(Object.values(CUTTING_FAMILY))]

describe('shape of the tables', () => {
  it.each(TABLES)('%s: the ranges of a family meet without gap or overlap', (_, rows) => {
    for (const family of FAMILIES) {
      const own = rows.filter(row => row.family === family)
      expect(own.length).toBeGreaterThan(0)
      for (const [index, { over }] of own.entries()) expect(over).toBe(index === 0 ? 0 : own[index - 1]?.upTo)
      for (const { over, upTo } of own) expect(upTo).toBeGreaterThan(over)
    }
  })

  it('knows every grade by its European name', () => {
    for (const grade of Object.keys(CUTTING_FAMILY)) expect(materialOf(grade)?.grade).toBe(grade)
    for (const grade of Object.keys(TEXTBOOK_FORCE)) expect(grade in CUTTING_FAMILY).toBe(true)
  })

  it('has a usual hardness for all but steel, and a row of every table at it', () => {
    for (const [grade, family] of Object.entries(CUTTING_FAMILY)) {
      const usual = USUAL_HARDNESS[grade]
      expect(usual === undefined).toBe(STEELS.has(family))
      if (usual) for (const [, rows] of TABLES) expect(rowAt(rows, family, usual.HB)).toBeDefined()
    }
  })

  it('turns no faster when the steel is harder or the cut deeper', () => {
    for (const family of FAMILIES.filter(known => known !== 'free-cutting steel')) {
      const own = TURNING_ROWS.filter(row => row.family === family)
      for (const depth of [0.3, 1, 2, 5, 9]) {
        const speeds = own.map(row => turningSpeed(row, depth))
        expect(speeds).toEqual(speeds.toSorted((a, b) => b - a))
      }
    }
  })

  it('starts every end mill inside its own range of speed', () => {
    for (const { speed } of MILLING_ROWS) {
      expect(speed.start).toBeGreaterThanOrEqual(speed.least)
      expect(speed.start).toBeLessThanOrEqual(speed.most)
    }
  })
})

describe('cells of The Ferrous Metals Data Book, ch. 9, coated carbide at depths of 1.0, 3.8 and 7.6 mm', () => {
  it.each([
    ['low-alloy steel', 200, [198, 160, 122]],
    ['low-alloy steel', 250, [183, 145, 114]],
    ['low-alloy steel', 300, [175, 137, 107]],
    ['case-hardening steel', 200, [221, 175, 137]],
    // 0.85 of the row above it in the book: bearing steel wears the edge more (common practice, no source).
    ['bearing steel', 200, [168, 136, 104]],
    ['unalloyed steel', 200, [239, 160, 126]],
    ['unalloyed steel', 250, [229, 152, 122]],
    ['unalloyed steel', 300, [213, 137, 114]],
    ['free-cutting steel', 125, [396, 259, 206]],
    ['free-cutting steel', 175, [411, 274, 221]],
  ] as const)('%s of %d HB', (family, HB, speeds) => {
    const row = rowAt(TURNING_ROWS, family, HB)
    if (!row) throw new Error('no row')
    expect([1, 3.8, 7.6].map(depth => turningSpeed(row, depth))).toEqual(speeds)
    expect(turningSpeed(row, 0.2)).toBe(speeds[0])
    expect(turningSpeed(row, 12)).toBe(speeds[2])
    expect(turningSpeed(row, 2.4)).toBeCloseTo((speeds[0] + speeds[1]) / 2, 9)
  })
})

describe('cells of the material groups after VDI 3323 (ISCAR turning catalogue 2017, p. 558)', () => {
  it.each([
    ['free-cutting steel', 125, 1, 1350, 0.21],
    ['unalloyed steel', 190, 2, 1500, 0.22],
    ['unalloyed steel', 250, 3, 1675, 0.24],
    ['low-alloy steel', 200, 6, 1775, 0.24],
    ['low-alloy steel', 275, 7, 1675, 0.24],
    ['low-alloy steel', 300, 8, 1725, 0.24],
    ['low-alloy steel', 350, 9, 1800, 0.24],
    ['grey iron', 180, 15, 1150, 0.2],
    ['grey iron', 260, 16, 1350, 0.28],
    ['ductile iron', 160, 17, 1225, 0.25],
    ['ductile iron', 250, 18, 1350, 0.28],
    ['aluminium', 100, 22, 800, 0.25],
    ['bronze', 90, 26, 700, 0.27],
  ] as const)('%s of %d HB is group %d', (family, HB, group, kc11, mc) => {
    expect(rowAt(SPECIFIC_FORCE_ROWS, family, HB)).toMatchObject({ group, kc11, mc })
  })
})

describe('other published cells', () => {
  it("power constants of Machinery's Handbook, 31st ed., p. 1147, in 20 HB steps", () => {
    expect(POWER_CONSTANTS.map(({ Kp }) => Kp)).toEqual([
      1.69, 1.77, 1.88, 1.97, 2.07, 2.18, 2.29, 2.38, 2.48, 2.62, 2.73,
    ])
    for (const { over, upTo } of POWER_CONSTANTS) expect(upTo - over).toBe(20)
  })

  it('our feed in a slot lies in the range of an end-mill guide (ISCAR 2022, p. 92), which starts at 0.004 of the diameter', () => {
    for (const { feed } of MILLING_ROWS.filter(row => STEELS.has(row.family))) {
      for (const guide of END_MILL_GUIDE_ROWS.filter(({ work }) => work.startsWith('low-alloy'))) {
        expect(feed).toBeGreaterThanOrEqual(guide.feed[0])
        expect(feed).toBeLessThanOrEqual(guide.feed[2])
      }
    }
  })

  it('is never bolder in speed than the guide, which is for stiffer machines', () => {
    const hard = MILLING_ROWS.find(({ family, over }) => family === 'low-alloy steel' && over === 250)
    expect(hard?.speed.start).toBeLessThan(END_MILL_GUIDE_ROWS[2].speed[0])
  })

  it('carbide drills run faster than high-speed steel in the same work (HSS charts after Metcut)', () => {
    for (const { work, HB, speed } of HSS_DRILLING) {
      const family = work === 'alloy steel' ? 'low-alloy steel' : (work as HardnessRow['family'])
      const row = rowAt(DRILLING_ROWS, family, HB[0])
      expect(row?.speed).toBeGreaterThan(2 * speed)
    }
  })
})
