import { bandAt } from '../band.ts'
import { fixed, inWords } from '../figures.ts'
import { chordOf, spannedAngle } from '../handbook/port-window.ts'
import { fromPart, told } from '../known.ts'
import type { Part, Port } from '../part/part.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { PortFault } from './port-finding.ts'
import type { Crank } from './timing.ts'

/** Radius of the finished bore where the port is, its top edge and its width. */
export type PortEdges = {
  readonly radius: Millimetre
  readonly top: Millimetre
  readonly arc: Degree
  readonly width: Millimetre
}

export type Resolved<T> = { readonly value: T } | { readonly faults: readonly PortFault[] }

/** What the part file leaves open: the depth of an edge given by crank angle, the chord of an arc. */
export function portEdges(part: Part, port: Port, crank: Crank | undefined, notebook: Notebook): Resolved<PortEdges> {
  const about = { about: port.name }
  const top = port.top ?? topFrom(port, crank)
  if (typeof top !== 'number') return { faults: [top] }
  const outside = strokeFault(part, port, top)
  if (outside) return { faults: [outside] }
  const radius = radiusAt(part, top)
  if (radius === undefined) {
    return { faults: [{ code: 'ports/no-bore', message: `there is no bore ${fixed(top, 3)} mm below the top face` }] }
  }
  if (port.width !== undefined && !(port.width < 2 * radius)) {
    const message = `a width of ${port.width} mm does not fit a bore of ${fixed(2 * radius, 3)} mm`
    return { faults: [{ code: 'ports/wider-than-bore', message, key: 'width' }] }
  }
  if (port.arc !== undefined && !(port.arc > 0 && port.arc < 180)) {
    const message = `an arc of ${port.arc}° is not between 0 and 180°`
    return { faults: [{ code: 'ports/wider-than-bore', message, key: 'arc' }] }
  }
  const r = told(fromPart('/body/bore'), { r: radius })
  const arc =
    port.arc ??
    notebook.use(spannedAngle, { ...told(fromPart(`${port.path}/width`), { c: port.width ?? 0 }), ...r }, about)
  const width = port.width ?? notebook.use(chordOf, { ...told(fromPart(`${port.path}/arc`), { w: arc }), ...r }, about)
  return { value: { radius, top, arc, width } }
}

function topFrom(port: Port, crank: Crank | undefined): Millimetre | PortFault {
  if (crank && port.opens !== undefined) return crank.depthAt(port.opens, { about: port.name })
  return {
    code: 'ports/no-engine',
    message: 'an opening in crank degrees needs an engine with its stroke and rod',
    hint: 'give `engine:`, or give the top edge as `top:` in mm below the top face',
    key: 'opens',
  }
}

/** Stroke and crown limit where a crown-timed edge may lie. An inlet is timed by the skirt, which the part does not give. */
function strokeFault({ engine }: Part, port: Port, top: Millimetre): PortFault | undefined {
  if (engine === undefined) return undefined
  if (port.opens !== undefined && !(port.opens > 0 && port.opens < 180)) {
    return {
      code: 'ports/edge-outside-stroke',
      message: `opens at ${inWords(port.opens)}°, but the piston goes down from 0 to about 180°`,
      hint: 'give the opening in degrees after top dead centre, not the duration',
      key: 'opens',
    }
  }
  const travel = top - engine.crownBelowTop
  if (port.role === 'inlet' || (travel > 0 && travel < engine.stroke)) return undefined
  return {
    code: 'ports/edge-outside-stroke',
    message: `the top edge, ${fixed(top, 3)} mm below the top face, lies outside the stroke of the crown, ${fixed(engine.crownBelowTop, 3)} to ${fixed(engine.crownBelowTop + engine.stroke, 3)} mm`,
    key: port.opens === undefined ? 'top' : 'opens',
  }
}

/** Finished nominal radius at a depth; in a tapered band, that of the taper there. */
function radiusAt({ bore }: Part, depth: Millimetre): Millimetre | undefined {
  const band = bandAt(bore, depth)
  if (!band) return undefined
  const above = (band.to.nominal - depth) / (band.to.nominal - band.from)
  return (band.size.nominal - (band.taper ?? 0) * above) / 2
}
