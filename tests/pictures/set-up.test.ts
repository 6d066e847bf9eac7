import { describe, expect, it } from 'vitest'
import { inMachine, placesOf, setUpsOf } from '../../src/pictures/set-up.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { SAMPLE_PLAN } from './sample-plan.ts'

// derived: matrix products of the fixture's turns, checked by ray and cylinder; up is r cos(back) above the centre line
const CASES = [
  { name: 'boost, head toward -X', head: '-X', face: 85, tilt: -50, depth: 18.5, up: 10, x: 12.90541, z: 124.28073 },
  {
    name: 'main, head toward -X',
    head: '-X',
    face: 85,
    tilt: -10,
    depth: 18,
    up: 10 * Math.cos((25 * Math.PI) / 180),
    x: 89.44252,
    z: 85.89962,
  },
  {
    name: 'main, head toward +X',
    head: '+X',
    face: 130,
    tilt: 10,
    depth: 18,
    up: 10 * Math.cos((25 * Math.PI) / 180),
    x: 122.29115,
    z: 48.56526,
  },
] as const

describe('the elevation against fixture settings worked by matrices', () => {
  it.each(CASES)('$name', ({ head, face, tilt, depth, up, x, z }) => {
    const fixture = { ...BUILT_IN_SHOP.fixture, headFaces: head, faceDistance: face, pivotHeight: 60 }
    const point = inMachine({ fixture, tilt, shape: { top: 0 } }, depth, up)
    expect(point.x).toBeCloseTo(x, 5)
    expect(point.z).toBeCloseTo(z, 5)
  })
})

it('the top face as it stands is at the face distance, not the finished one below it', () => {
  const fixture = { ...BUILT_IN_SHOP.fixture, faceDistance: 80, pivotHeight: 50 }
  const standing = { fixture, tilt: 0, shape: { top: -0.069 } }
  expect(inMachine(standing, -0.069, 0)).toEqual({ x: 80, z: 50 })
  expect(inMachine(standing, 0, 0).x).toBeCloseTo(79.931, 9)
})

describe('set-ups', () => {
  const setUps = setUpsOf(SAMPLE_PLAN)

  it('are one a tilt, with every window in one of them', () => {
    expect(setUps.map(({ tilt }) => tilt)).toEqual([0, 15, 50])
    expect(setUps.flatMap(({ windows }) => windows)).toHaveLength(5)
  })

  it('draw a mirrored pair once, under both names', () => {
    const places = setUps.map(placesOf)
    expect(places[1]?.map(({ names }) => names)).toEqual([['main transfer', 'main transfer, right']])
  })
})
