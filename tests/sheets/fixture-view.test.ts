import { describe, expect, it } from 'vitest'
import type { SettingStep } from '../../src/ports/fixture-plan.ts'
import { fixtureView, inOrder } from '../../src/sheets/views/fixture-view.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { SAMPLE_PLAN } from '../pictures/sample-plan.ts'
import { ERRORS, EVERY_FIXTURE_FIELD } from '../plan/every-fixture-field.ts'

const steps: readonly SettingStep[] = SAMPLE_PLAN.ports.flatMap(({ name, at, windows }) =>
  windows.map(({ tilt, rotary, cutter }, i) => ({
    port: name,
    at,
    window: i + 1,
    tilt,
    rotary,
    cutter,
    clock: 'about half past 9',
    errors: ERRORS,
  })),
)
const plan = {
  ...SAMPLE_PLAN,
  fixture: {
    ...EVERY_FIXTURE_FIELD,
    provingMoves: ['Tilt by +5: the head end must go down.'],
    order: steps.toReversed(),
    tiltChanges: 1,
    rotaryReversals: 0,
    assumed: [],
  },
}

describe('the setting sheet', () => {
  it('is marked where nobody measured what every figure rests on', () => {
    const assumed = ['face-distance', 'chuck'] as const
    const { notMeasured } = fixtureView({ ...plan, fixture: { ...plan.fixture, assumed } }, paperFigures('mm'))
    expect(notMeasured).toBe('Not for use: nobody measured the fixture: face-distance.')
    expect(fixtureView(plan, paperFigures('mm')).notMeasured).toBe('')
  })

  it('names the windows in the order of setting, each once', () => {
    const names = inOrder(plan).map(({ name }) => name)
    expect(names).toEqual(
      inOrder(SAMPLE_PLAN)
        .map(({ name }) => name)
        .toReversed(),
    )
    expect(new Set(names).size).toBe(steps.length)
  })
  it('gives stack and pick-up of every tilt, and how often something turns back', () => {
    const { tilts, sineBar, changes } = fixtureView(plan, paperFigures('mm'))
    expect(tilts).toMatchObject([
      {
        tilt: '+15.000',
        stack: '25.900',
        under: 'chuck end',
        x: '+24.000',
        z: '+73.900',
        move: '+40.000',
        fall: '−10.718',
      },
    ])
    expect([sineBar, changes]).toEqual(['100 mm', '1 change of tilt, 0 reversals of the rotary.'])
  })
})
