import { describe, expect, it } from 'vitest'
import { cautionsFor } from '../../src/handbook/residual-hazards.ts'
import type { Process } from '../../src/process.ts'

const PROCESSES: readonly Process[] = [
  'saw',
  'turn',
  'drill',
  'mill',
  'deburr',
  'stress-relieve',
  'nitride',
  'case-harden',
  'induction-harden',
  'plate',
  'grind',
  'hone',
  'lap',
  'inspect',
  'mark',
]

describe('cautions (common practice, no source, but where the table says)', () => {
  it.each(PROCESSES)('%s has some, and ends by deferring to manual and local rules', process => {
    const cautions = cautionsFor(process)
    expect(cautions.length).toBeGreaterThan(1)
    expect(cautions.at(-1)).toMatch(/manual and local safety rules come first/)
  })

  it('warn of what maims: thrown parts, burst wheels, jammed hones, hot parts, breakthrough', () => {
    const said = (process: Process) => cautionsFor(process).join(' ')
    expect(said('turn')).toMatch(/flies/)
    expect(said('grind')).toMatch(/bursts.*marked speed/)
    expect(said('grind')).toMatch(/plane of the wheel/)
    expect(said('hone')).toMatch(/collapsed/)
    expect(said('nitride')).toMatch(/qualified firm/)
    expect(said('drill')).toMatch(/breaks through/)
    expect(said('mill')).toMatch(/brake/)
  })
})
