import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { bandAt, nearestBandAt, overlap } from '../../src/band.ts'
import { thinnestWall, wallAt, wallsOf } from '../../src/wall.ts'

const drawn = (name: string, from: number, to: number, diameter: number) => {
  const at = (nominal: number) => ({ nominal, lower: nominal, upper: nominal, written: String(nominal) })
  return { name, from, to: at(to), size: at(diameter), path: '' }
}
const shaped = (name: string, from: number, to: number, diameter: number) => ({ name, from, to, diameter })

const DRAWN = [drawn('flange', 0, 4, 62), drawn('seat', 4, 92, 55)]
const SHAPED = [shaped('flange', -0.15, 4, 62), shaped('seat', 4, 92.2, 55.2)]

describe.each([
  ['as drawn', DRAWN],
  ['as they stand', SHAPED],
] as const)('bands %s', (_, bands) => {
  it('have a depth at a shoulder in the band below', () => {
    expect(bandAt<(typeof bands)[number]>(bands, 4)?.name).toBe('seat')
    expect(bandAt<(typeof bands)[number]>(bands, 3.999)?.name).toBe('flange')
  })
  it('have their last depth in the last band, and none beyond', () => {
    const end = bands === DRAWN ? 92 : 92.2
    expect(bandAt<(typeof bands)[number]>(bands, end)?.name).toBe('seat')
    expect(bandAt<(typeof bands)[number]>(bands, end + 0.01)).toBeUndefined()
    expect(bandAt<(typeof bands)[number]>(bands, -1)).toBeUndefined()
  })
  it('are taken by the nearest where the part stands proud of them', () => {
    expect(nearestBandAt<(typeof bands)[number]>(bands, -1)?.name).toBe('flange')
    expect(nearestBandAt<(typeof bands)[number]>(bands, 99)?.name).toBe('seat')
  })
})

it('finds no band where there is none', () => {
  expect(bandAt([], 3)).toBeUndefined()
  expect(nearestBandAt([], 3)).toBeUndefined()
})

it('does not take bands that share an end for bands over each other', () => {
  const [flange, seat] = DRAWN
  expect(flange && seat && overlap(flange, seat)).toBe(false)
  expect(flange && overlap(flange, { from: 3.9, to: 10 })).toBe(true)
})

describe('the wall', () => {
  const liner = { outside: DRAWN, bore: [drawn('recess', 0, 2, 51), drawn('bore', 2, 92, 48)] }

  it('is half of what the outside is larger than the bore at the depth', () => {
    expect(wallAt(liner, 1)).toBe(5.5)
    expect(wallAt(liner, 3)).toBe(7)
    expect(wallAt(liner, 4)).toBe(3.5)
    expect(wallAt({ outside: DRAWN, bore: [] }, 4)).toBeUndefined()
  })
  it('is listed once for every two bands that lie over each other', () => {
    expect(wallsOf(liner).map(({ outside, bore, wall }) => [outside.name, bore.name, wall])).toEqual([
      ['flange', 'recess', 5.5],
      ['flange', 'bore', 7],
      ['seat', 'bore', 3.5],
    ])
  })
  it('is thinnest of the whole part, or of a stretch of it', () => {
    expect(thinnestWall(liner)).toBe(3.5)
    expect(thinnestWall(liner, { from: 0, to: 4 })).toBe(5.5)
    expect(thinnestWall(liner, { from: 2, to: 4 })).toBe(7)
    expect(thinnestWall({ outside: DRAWN, bore: [] })).toBe(27.5)
  })
})

it('is searched for by depth in one file', () => {
  const search = /\.find\([^\n]*[^=][<>]=? (\w+\.)?to\b/
  const files = readdirSync('src', { recursive: true })
    .map(String)
    .filter(file => !file.startsWith('handbook/'))
  const searching = files.filter(file => file.endsWith('.ts') && search.test(readFileSync(`src/${file}`, 'utf8')))
  expect(searching).toEqual([])
})
