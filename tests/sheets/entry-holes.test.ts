import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { DASH, paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { portsView } from '../../src/sheets/views/ports-view.ts'
import { wholePlanOf } from '../nc/general-reader.ts'

it('the setting sheet has an entry hole only for windows that are drilled', () => {
  const plan = wholePlanOf(readFileSync('parts/OX-098-21.yaml', 'utf8'))
  const drilled = plan.setUps.flatMap(({ windows }) =>
    windows.filter(({ cuts }) => cuts.some(({ kind }) => kind === 'drill')),
  )
  const { settings } = portsView(plan, paperFigures('mm'), [])
  const holes = settings.filter(({ hole }) => hole !== DASH)
  expect(drilled.length).toBeGreaterThan(0)
  expect(settings.length).toBeGreaterThan(drilled.length)
  expect(holes).toHaveLength(drilled.length)
  expect(holes.every(({ holeX, holeY }) => holeX !== DASH && holeY !== DASH)).toBe(true)
})
