import type { Fixture } from '../shop/shop.ts'
import type { OnPage } from './fixture-labels.ts'
import { DASHED, line, OUTLINE, polyline } from './marks.ts'
import type { Mark } from './picture.ts'
import { placesOf, type SetUp } from './set-up.ts'

/** The cutter that goes before, as far down and as far out of its holder as it goes: dashed, since it is there for another while. */
export const roughingMarks = ({ holder }: Fixture, setUp: SetUp, onPage: OnPage): readonly Mark[] =>
  placesOf(setUp).flatMap(({ x, window, rougher }) => {
    if (!rougher) return []
    const tip = window.plunge.zThrough
    const nose = tip + rougher.stickOut
    const [half, body] = [rougher.diameter / 2, holder.diameter / 2]
    return [
      polyline(
        [
          onPage({ x: x - half, z: nose }),
          onPage({ x: x - half, z: tip }),
          onPage({ x: x + half, z: tip }),
          onPage({ x: x + half, z: nose }),
        ],
        DASHED,
      ),
      polyline(
        [
          onPage({ x: x - body, z: nose + holder.length }),
          onPage({ x: x - body, z: nose }),
          onPage({ x: x + body, z: nose }),
          onPage({ x: x + body, z: nose + holder.length }),
        ],
        DASHED,
      ),
    ]
  })

/** The floor of the datum, where it is milled before the windows. */
export function firstCutMarks({ datum }: SetUp, onPage: OnPage): readonly Mark[] {
  if (datum?.x === undefined || datum.floor === undefined) return []
  const { x, floor, depth = 0, place } = datum
  const half = (place.to - place.from) / 2
  return [
    line(onPage({ x: x - half, z: floor }), onPage({ x: x + half, z: floor }), OUTLINE),
    line(onPage({ x: x - half, z: floor }), onPage({ x: x - half, z: floor + depth })),
    line(onPage({ x: x + half, z: floor }), onPage({ x: x + half, z: floor + depth })),
  ]
}
