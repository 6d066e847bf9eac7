import { fixed, inWords } from '../figures.ts'
import { MOST_CLOCKING_ERROR, TIMING_DATUMS } from '../handbook/timing-datums.ts'
import type { Clocking } from './clocking.ts'
import type { CuttingTask } from './cutting-task.ts'

/** What speaks against the way in which azimuth 0 comes back. */
export function reportClocking({ report, part }: CuttingTask, { way, datum, minutes }: Clocking): void {
  const path = part.datum ? part.datum.path : '/ports'
  if (way === 'all tilts a piece' && !datum) {
    report({
      code: 'ports/no-timing-datum',
      severity: 'note',
      message: `nothing brings the part's azimuth 0 back: every piece goes through all tilts in one clamping, ${fixed(minutes.allTilts, 0)} min of loading and tilting for the batch`,
      hint: 'a flat, a notch or a dowel hole lets the batch go through tilt by tilt: `body: {datum: {kind: flat, on: …, at: 0, depth: 0.5}}`',
      path,
    })
  }
  if (!datum) return
  const along = datum.kind === 'flat' ? TIMING_DATUMS.flat.touch?.along : undefined
  if (along !== undefined && datum.width !== undefined && datum.width < along) {
    report({
      code: 'ports/clocking-error',
      severity: 'warning',
      message: `the flat on ${datum.on} comes out ${fixed(datum.width, 1)} mm wide; an indicator wants ${inWords(along)} mm to go along`,
      hint: 'cut it deeper, or take a notch',
      path,
    })
  }
  const { angle, side } = MOST_CLOCKING_ERROR
  if (way === 'the batch at each tilt' && (datum.angle > angle || datum.side > side)) {
    report({
      code: 'ports/clocking-error',
      severity: 'warning',
      message: `the ${datum.kind} on ${datum.on} brings azimuth 0 back within ${fixed(datum.angle, 3)}°: side edges of two tilts stand off by up to ${fixed(datum.side, 3)} mm; ${inWords(angle)}° and ${inWords(side)} mm are usual limits (common practice, no source)`,
      hint: 'take a datum farther out, a dowel hole, or mill all tilts of a piece in one clamping',
      path,
    })
  }
}
