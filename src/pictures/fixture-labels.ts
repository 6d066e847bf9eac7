import { angle, length, type Units } from '../figures.ts'
import type { FixturePlan } from '../ports/fixture-plan.ts'
import type { Shape } from '../shape.ts'
import type { Fixture } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { DrawnDatum } from './datum-marks.ts'
import { heldLines } from './held-marks.ts'
import type { Labelled } from './label-marks.ts'
import type { XY } from './marks.ts'
import { inMachine, type MachinePoint, placesOf, type SetUp, tiltedPlace } from './set-up.ts'

export type OnPage = (point: MachinePoint) => XY

/** What stands beside the set-up: windows, pivot, centre line, face, and what the jaws hold. */
export function fixtureLabels({
  fixture,
  grip,
  shape,
  setUp,
  units,
  onPage,
}: {
  readonly fixture: Fixture
  readonly grip: FixturePlan['grip']
  readonly shape: Shape
  readonly setUp: SetUp
  readonly units: Units
  readonly onPage: OnPage
}): readonly Labelled[] {
  // Round in millimetres; in inches as many places as the tables beside it print.
  const round = (value: Millimetre, places: number): string =>
    length(value, units, units === 'mm' ? places : places + 1)
  const { tilt } = setUp
  const pivot = onPage({ x: 0, z: 0 })
  const foot = onPage(inMachine({ fixture, tilt, shape }, fixture.faceDistance / 2, 0))
  return [
    ...placesOf(setUp).map(({ names, x, z, window, rougher }) => ({
      rows: [
        { lines: names, bold: true },
        {
          lines: [
            `X ${length(x, units)}`,
            `Z ${length(z, units)}`,
            `cutter Ø${round(window.cutter, 1)}, through at Z ${length(window.plunge.zThrough, units, 2)}`,
            ...heldLines(window, units),
            ...(rougher
              ? [`roughed with Ø${round(rougher.diameter, 1)}, sticks out ${round(rougher.stickOut, 1)} (dashed)`]
              : []),
          ],
        },
      ],
      anchor: onPage({ x, z }),
      toward: -20,
      spread: 84,
      orFrom: [{ anchor: onPage({ x, z }), toward: 200 }],
      mayCross: true,
      end: 'dot' as const,
    })),
    ...(setUp.datum ? [firstCutLabel(setUp.datum, round, onPage)] : []),
    {
      rows: [{ lines: [`jaws hold ${length(grip.length, units, 1)} of ${grip.surface}`] }],
      anchor: onPage(tiltedPlace({ x: grip.chuckFace, z: fixture.pivotHeight - fixture.chuck.diameter / 2 }, tilt)),
      toward: 200,
      spread: 180,
      mayCross: true,
      end: 'dot',
    },
    {
      rows: [{ lines: ['tilt pivot', `X 0, Z 0${tilt === 0 ? '' : `, tilt ${angle(tilt)}°`}`] }],
      anchor: pivot,
      toward: 120,
      spread: 180,
      mayCross: true,
      end: 'dot',
    },
    {
      rows: [{ lines: ['rotary centre line', `${round(fixture.pivotHeight, 2)} from the pivot`] }],
      anchor: foot,
      toward: 60,
      spread: 180,
      mayCross: true,
      end: 'dot',
    },
    {
      rows: [
        {
          lines: [
            `top face, head toward ${fixture.headFaces}`,
            `${round(fixture.faceDistance, 2)} along from the pivot`,
          ],
        },
      ],
      anchor: onPage(inMachine({ fixture, tilt, shape }, shape.top, -fixture.pivotHeight / 4)),
      toward: fixture.headFaces === '+X' ? 20 : 160,
      spread: 120,
    },
  ]
}

/** Where the datum is milled, before any window. */
function firstCutLabel(
  { name, rotary, x = 0, floor = 0 }: DrawnDatum,
  round: (value: Millimetre, places: number) => string,
  onPage: OnPage,
): Labelled {
  const anchor = onPage({ x, z: floor })
  return {
    rows: [
      { lines: [`${name}, first of all`], bold: true },
      { lines: [`rotary ${angle(rotary)}°, X ${round(x, 2)}`, `floor at Z ${round(floor, 2)}`] },
    ],
    anchor,
    toward: -20,
    spread: 120,
    orFrom: [{ anchor, toward: 200 }],
    mayCross: true,
    end: 'dot',
  }
}
