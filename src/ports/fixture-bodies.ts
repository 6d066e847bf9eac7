import { headSense } from '../machine-frame.ts'
import type { Fixture } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import type { Millimetre } from '../units.ts'
import type { Body, RoundBody } from './height-under.ts'

/**
 * All that tilts with the part, each as far as the works says what it is: the blank's bands, the chuck that holds it and faces
 * +X, the body of the rotary behind that, and the plate under both.
 */
export function fixtureBodies(fixture: Fixture, { shape, topStock }: AsMilled, chuckFace: Millimetre): readonly Body[] {
  const s = headSense(fixture)
  const ends = (from: Millimetre, to: Millimetre): Pick<RoundBody, 'from' | 'to'> => {
    const [a, b] = [from, to].map(depth => fixture.faceDistance - s * (depth + topStock))
    return { from: Math.min(a ?? 0, b ?? 0), to: Math.max(a ?? 0, b ?? 0) }
  }
  const { chuck, rotary, plate } = fixture
  const behind = chuckFace - chuck.length
  return [
    ...shape.outside.map(
      ({ name, from, to, diameter }): Body => ({ of: 'part', name, ...ends(from, to), radius: diameter / 2 }),
    ),
    { of: 'chuck', name: 'chuck', from: behind, to: chuckFace, radius: chuck.diameter / 2 },
    ...(rotary
      ? [
          {
            of: 'rotary' as const,
            name: 'body of the rotary',
            from: behind - rotary.length,
            to: behind,
            radius: rotary.diameter / 2,
          },
        ]
      : []),
    ...(plate
      ? [
          {
            of: 'plate' as const,
            name: 'plate of the rotary',
            from: plate.from,
            to: plate.to,
            half: plate.width / 2,
            top: plate.top,
            under: plate.top - plate.thickness,
          },
        ]
      : []),
  ]
}
