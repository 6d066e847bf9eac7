import { LEAST_END_LAND, PROCESS_LIMITS_SOURCE } from '../handbook/process-limits.ts'
import { type Millimetre, radians } from '../units.ts'
import { barsOf, type Part, type Port } from './part.ts'
import type { PartFault } from './part-fault.ts'
import { tidy } from './quantity.ts'

/** A port lies within the length and is narrower than the bore. Where it opens in the stroke is for the port room. */
export function checkPortExtents(part: Part): readonly PartFault[] {
  const { ports, bore, length } = part
  const [first] = ports
  if (!first) return []
  if (bore.length === 0) {
    return [
      {
        code: 'input/port',
        message: 'ports open into a bore, and there is none',
        hint: 'bore: 48 H6',
        path: first.path,
      },
    ]
  }
  const diameter = Math.max(...bore.map(({ size }) => size.nominal))
  return ports
    .filter(({ name }) => !name.endsWith(', mirrored'))
    .flatMap(port => faultsOf(port, diameter, length.nominal))
}

function faultsOf(port: Port, diameter: Millimetre, length: Millimetre): readonly PartFault[] {
  const { name, path, top, height, bottom, width, arc } = port
  const bridge = barsOf(port).reduce((sum, bar) => sum + bar, 0)
  const faults: PartFault[] = []
  const end = bottom ?? (top !== undefined && height !== undefined ? top + height : (top ?? height))
  if (top !== undefined && top < LEAST_END_LAND) {
    const message = `${name} begins ${top} mm below the top face; ${LEAST_END_LAND} mm is the least land that holds (${PROCESS_LIMITS_SOURCE})`
    faults.push({ code: 'input/port', message, hint: 'depths count down from the top face', path: `${path}/top` })
  }
  if (end !== undefined && end < length && end > length - LEAST_END_LAND) {
    const message = `${name} ends ${(length - end).toFixed(2)} mm above the bottom face; ${LEAST_END_LAND} mm is the least land that holds (${PROCESS_LIMITS_SOURCE})`
    faults.push({ code: 'input/port', message, hint: 'depths count down from the top face', path })
  }
  if (end !== undefined && end >= length) {
    const key = bottom !== undefined ? 'bottom' : height !== undefined ? 'height' : 'top'
    const message = `${name} reaches down to ${tidy(end)} mm, past the length of ${length} mm`
    faults.push({ code: 'input/port', message, hint: 'depths count down from the top face', path: `${path}/${key}` })
  }
  if (width !== undefined && width >= diameter) {
    const message = `${name} is ${tidy(width)} mm wide, and the bore only ${tidy(diameter)} mm`
    faults.push({
      code: 'input/port',
      message,
      hint: 'the width is a chord; give arc: for degrees',
      path: `${path}/width`,
    })
  }
  const chord = arc === undefined ? undefined : diameter * Math.sin(radians(arc / 2))
  if (chord !== undefined && bridge >= chord && bridge > 0) {
    const message = `the bridge of ${name}, ${tidy(bridge)} mm, takes the whole width of ${chord.toFixed(2)} mm`
    faults.push({
      code: 'input/port',
      message,
      hint: 'the arc goes from side edge to side edge, bridge and all',
      path: `${path}/bridge`,
    })
  }
  return faults
}
