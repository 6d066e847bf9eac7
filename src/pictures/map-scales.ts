import { inUnits, ofDrawing, type Units } from '../figures.ts'
import { type Millimetre, wrapped } from '../units.ts'
import { DASHED, line, polyline, SMALL, text, type XY } from './marks.ts'
import { type Mark, type Measure, onPaper } from './picture.ts'
import { azimuthAt, onPanel, panelWidth, type Unrolled } from './unrolled.ts'

const TICK = onPaper(1)
const LONG_TICK = onPaper(2)

/** Below the panel: a tick every 10°, a figure every 30°. */
export function degreeScale(panel: Unrolled, bottom: number): readonly Mark[] {
  const start = azimuthAt(panel, 0)
  const sense = panel.seenFrom === 'inside' ? -1 : 1
  const first = sense < 0 ? Math.floor(start / 10) * 10 : Math.ceil(start / 10) * 10
  const count = Math.floor((panel.span - Math.abs(first - start)) / 10 + 1e-9) + 1
  return Array.from({ length: count }, (_, index) => {
    const azimuth = wrapped(first + sense * 10 * index)
    const turn = Math.abs(first - start) + 10 * index
    const x = panel.origin.x + onPanelTurn(panel) * turn
    const numbered = azimuth % 30 === 0
    return [
      line({ x, y: bottom }, { x, y: bottom + (numbered ? LONG_TICK : TICK) }),
      ...(numbered
        ? [text({ x, y: bottom + LONG_TICK + 8 }, `${ofDrawing(azimuth, 0)}°`, { anchor: 'middle', size: SMALL })]
        : []),
    ]
  }).flat()
}

/** Points of paper for a degree. */
const onPanelTurn = ({ radius, scale }: Unrolled): number => onPaper((radius * scale * Math.PI) / 180)

/** Left of the panel: a tick every 5 mm of depth, a figure every 10 mm; a quarter and half an inch in inches. */
export function depthScale(panel: Unrolled, deepest: Millimetre, units: Units): readonly Mark[] {
  const step = units === 'mm' ? 5 : 25.4 / 4
  const { from = 0, zero = 0 } = panel
  const first = Math.ceil((from - zero) / step - 1e-9)
  return Array.from({ length: Math.floor((deepest - zero) / step) - first + 1 }, (_, count) => {
    const index = first + count
    const { y } = onPanel(panel, { azimuth: panel.left, depth: zero + index * step })
    const { x } = panel.origin
    const numbered = index % 2 === 0
    return [
      line({ x, y }, { x: x - (numbered ? LONG_TICK : TICK), y }),
      ...(numbered
        ? [
            text({ x: x - LONG_TICK - 2, y: y + 3 }, ofDrawing(inUnits(index * step, units), units === 'mm' ? 0 : 1), {
              anchor: 'end',
              size: SMALL,
            }),
          ]
        : []),
    ]
  }).flat()
}

/** `50 mm`; on a sheet in inches `50 mm (1.969 in)`. */
export const barWords = (millimetre: Millimetre, units: Units): string =>
  `${ofDrawing(millimetre, 0)} mm${units === 'inch' ? ` (${ofDrawing(inUnits(millimetre, units), 3)} in)` : ''}`

/** The end of a strip that goes under the start of the next, or of the same one: dashed, and said. */
export function tabMarks(panel: Unrolled, bottom: number): readonly Mark[] {
  const [x, y] = [panel.origin.x + panelWidth(panel), panel.origin.y]
  const [width, bevel] = [onPaper(TAB), onPaper(3)]
  return [
    polyline(
      [
        { x, y },
        { x: x + width, y: y + bevel },
        { x: x + width, y: bottom - bevel },
        { x, y: bottom },
      ],
      DASHED,
    ),
    text({ x: x + width / 2, y: (y + bottom) / 2 }, 'glue', { anchor: 'middle' }),
  ]
}

/** Width of the tab on paper. */
export const TAB: Millimetre = 8

/** A bar of so many millimetres of the part, divided in tens, by which a print is checked. */
export function scaleBar({
  y: { x, y },
  millimetre,
  scale,
  measure,
  units,
}: {
  readonly y: XY
  readonly millimetre: Millimetre
  readonly scale: number
  readonly measure: Measure
  readonly units: Units
}): readonly Mark[] {
  const at = (along: Millimetre): number => x + onPaper(along * scale)
  const words = barWords(millimetre, units)
  return [
    line({ x, y }, { x: at(millimetre), y }),
    ...Array.from({ length: Math.round(millimetre / 10) + 1 }, (_, index) => {
      const end = index * 10 === millimetre || index === 0
      return line({ x: at(index * 10), y: y - (end ? 4 : 2.5) }, { x: at(index * 10), y: y + (end ? 4 : 2.5) })
    }),
    text({ x: at(millimetre) + Math.min(6, measure(' ', SMALL) * 2), y: y + 3 }, words, { size: SMALL }),
  ]
}
