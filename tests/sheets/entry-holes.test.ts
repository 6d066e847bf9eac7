import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { drawPortMap } from '../../src/pictures/port-map.ts'
import { DASH, paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { portsView } from '../../src/sheets/views/ports-view.ts'
import { wholePlanOf } from '../nc/general-reader.ts'

const plan = wholePlanOf(readFileSync('parts/OX-098-21.yaml', 'utf8'))
const drilled = plan.setUps.flatMap(({ windows }) =>
  windows.filter(({ cuts }) => cuts.some(({ kind }) => kind === 'drill')),
)
const view = portsView(plan, paperFigures('mm'), [])

it('the setting sheet has an entry hole only for windows that are drilled', () => {
  const holes = view.settings.filter(({ hole }) => hole !== DASH)
  expect(drilled.length).toBeGreaterThan(0)
  expect(view.settings.length).toBeGreaterThan(drilled.length)
  expect(holes).toHaveLength(drilled.length)
  expect(holes.every(({ holeX, holeY }) => holeX !== DASH && holeY !== DASH)).toBe(true)
})

it('the map has a hole to punch only in windows that are drilled, and the plan a drill in its holder only there', () => {
  const { marks } = drawPortMap({ plan, kind: 'outside at true size', width: 510, measure: () => 10 })
  expect(marks.filter(({ kind }) => kind === 'circle')).toHaveLength(drilled.length)
  const held = plan.ports.flatMap(({ windows }) => windows.filter(({ drillHeld }) => drillHeld !== undefined))
  expect(held).toHaveLength(drilled.length)
})

it('every cutter that mills a window is on the setting sheet, in the order of the set-ups, with what it cuts', () => {
  for (const { window, mills: lines } of view.settings) {
    const mills = plan.setUps.filter(
      ({ work, windows }) =>
        work !== 'drill entry holes' && windows.some(({ name }) => name.replace(', window', '') === window),
    )
    expect(lines.map(line => line.split(', sticks out ')[0])).toEqual(mills.map(({ tool }) => tool))
    const rows = view.depths.filter(row => row.window === window)
    expect(rows.map(({ tool }) => tool)).toEqual(mills.map(({ tool }) => tool))
    expect(rows.map(({ reach }) => Number(reach.split(' / ')[1]))).toEqual(mills.map(({ stickOut }) => stickOut))
  }
  expect(view.depths.map(({ does }) => does)).toEqual(
    expect.arrayContaining(['all', 'all but the corners', 'the corners', 'roughs', 'finishes']),
  )
})
