import { describe, expect, it } from 'vitest'
import { REMOVAL_SHARE, WALL_LIMITS, wallLimit } from '../../src/handbook/case-limits.ts'
import { DEPTH_TOLERANCES, upperTolerance } from '../../src/handbook/case-tolerance.ts'
import { CHOICE_COLUMNS, CHOICE_ROWS, hardeningChoice } from '../../src/handbook/hardening-choice.ts'
import { HARDENING_WINDOWS } from '../../src/handbook/hardening-processes.ts'
import { hardeningSafety } from '../../src/handbook/hardening-safety.ts'
import { STOP_OFFS, stopOffsFor } from '../../src/handbook/stop-off.ts'

describe('tolerance of an ordered depth (memory: DIN 6773 and ISO 15787)', () => {
  it.each([
    ['NHD', 0.1, 0.05],
    ['NHD', 0.2, 0.1],
    ['NHD', 0.25, 0.1],
    ['NHD', 0.3, 0.1],
    ['NHD', 0.35, 0.1],
    ['NHD', 0.4, 0.2],
    ['NHD', 0.5, 0.25],
    ['NHD', 0.05, 0.05],
    ['CHD', 0.3, 0.2],
    ['CHD', 0.7, 0.3],
    ['CHD', 0.8, 0.4],
    ['CHD', 1.2, 0.5],
    ['SHD', 1, 1],
    ['SHD', 2.5, 1.6],
    ['SHD', 3, 2],
  ] as const)('%s %d +%d', (term, depth, upper) => {
    expect(upperTolerance(term, depth)).toBe(upper)
  })
  it('never tightens with depth, and lists no row twice', () => {
    DEPTH_TOLERANCES.slice(1).forEach((row, index) => {
      const before = DEPTH_TOLERANCES[index]
      if (before?.term !== row.term) return
      expect(row.from).toBeGreaterThan(before.from)
      expect(row.upper).toBeGreaterThanOrEqual(before.upper)
    })
  })
})

describe('limits of case in the wall (ISO 18669 limits of pins; for liners an estimate)', () => {
  it('has rows that meet, with a smaller share for a thicker wall', () => {
    WALL_LIMITS.slice(1).forEach((row, index) => {
      expect(row.over).toBe(WALL_LIMITS[index]?.upTo)
      expect(row.share).toBeLessThan(WALL_LIMITS[index]?.share ?? 1)
    })
  })
  it.each([
    [1.5, 0.65],
    [3, 0.65],
    [3.01, 0.5],
    [5, 0.5],
    [5.01, 0.35],
    [40, 0.35],
  ])('%d mm: %d of the wall', (wall, share) => {
    expect(wallLimit(wall)?.share).toBe(share)
  })
  it('lets a thicker wall bear no less than a thinner one', () => {
    const bears = (wall: number) => Math.max((wallLimit(wall)?.share ?? 0) * wall, wallLimit(wall)?.notUnder ?? 0)
    for (let wall = 1.5; wall < 12; wall += 0.01) expect(bears(wall + 0.01)).toBeGreaterThanOrEqual(bears(wall) - 1e-9)
    // The source's rows alone would fall from 2.5 mm in a wall of 5 to 2.1 in one of 6.
    expect([bears(3), bears(3.5), bears(5), bears(6)]).toEqual([1.95, 1.95, 2.5, 2.5].map(c => expect.closeTo(c, 9)))
  })
  it('has no rule under 1.5 mm', () => {
    expect(wallLimit(1.49)).toBeUndefined()
  })
  it('warns before it refuses', () => {
    expect(REMOVAL_SHARE.warn).toBeLessThan(REMOVAL_SHARE.refuse)
  })
})

describe('material and process (common practice, no source)', () => {
  it('fills every cell, and lists no grade twice', () => {
    for (const { choices, grade } of CHOICE_ROWS)
      for (const column of CHOICE_COLUMNS) expect(['OK', 'LIM', 'NO'], `${grade} ${column}`).toContain(choices[column])
    expect(new Set(CHOICE_ROWS.map(({ grade }) => grade)).size).toBe(CHOICE_ROWS.length)
  })
  it.each([
    ['42CrMo4', 'nitride', 550, 'OK'],
    ['42CrMo4', 'carburise', undefined, 'NO'],
    ['C45', 'nitride', 451, 'NO'],
    ['C45', 'nitride', 450, 'LIM'],
    ['11SMn30', 'nitride', 401, 'NO'],
    ['S355', 'nitride', 401, 'NO'],
    ['EN AW-6082', 'nitride', undefined, 'NO'],
    ['EN AW-2618A', 'nitrocarburise', undefined, 'NO'],
    ['31CrMoV9', 'manganese phosphate', undefined, 'NO'],
    ['42CrMo4', 'manganese phosphate', undefined, 'LIM'],
    ['16MnCr5', 'carburise', undefined, 'OK'],
    ['100Cr6', 'through harden', undefined, 'OK'],
    ['EN-GJL-250', 'hard chrome', undefined, 'OK'],
  ] as const)('%s, %s, %s HV: %s', (grade, column, asked, choice) => {
    expect(hardeningChoice(grade, column, asked)?.choice).toBe(choice)
  })
  it('says nothing of a grade it does not list', () => {
    expect(hardeningChoice('unobtainium', 'nitride')).toBeUndefined()
  })
})

describe('processes', () => {
  it('have windows in order, and each its cautions', () => {
    for (const { temperature, hours, process } of HARDENING_WINDOWS) {
      expect(temperature.least).toBeLessThan(temperature.most)
      if (temperature.usual !== undefined) {
        expect(temperature.usual).toBeGreaterThanOrEqual(temperature.least)
        expect(temperature.usual).toBeLessThanOrEqual(temperature.most)
      }
      if (hours) expect(hours.least).toBeLessThan(hours.most)
      expect(hardeningSafety(process)[0]).toContain('licensed')
    }
  })
  it('never send tin into a salt bath', () => {
    expect(stopOffsFor('salt-bath nitriding').map(({ method }) => method)).toEqual(['copper plate'])
    for (const { thickness } of STOP_OFFS) if (thickness) expect(thickness.least).toBeLessThan(thickness.most)
  })
})
