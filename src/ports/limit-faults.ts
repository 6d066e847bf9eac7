import { inWords } from '../figures.ts'
import type { Port } from '../part/part.ts'
import type { Fixture } from '../shop/shop.ts'
import type { Degree } from '../units.ts'
import type { PortFault } from './port-finding.ts'

/** What the fixture cannot reach: a tilt past its limits, or a rotary angle with none of its whole turns within. */
export function limitFaults({
  port,
  fixture,
  tilt,
  rotary,
  reached,
}: {
  readonly port: Port
  readonly fixture: Fixture
  readonly tilt: Degree
  readonly rotary: Degree
  /** The rotary angle, whole turns more or less, that it goes to. */
  readonly reached: Degree | undefined
}): readonly PortFault[] {
  const [least, most] = fixture.tiltLimits
  const [from, to] = fixture.rotaryLimits
  const within = (angle: Degree): boolean => angle >= least - 1e-9 && angle <= most + 1e-9
  const faults: PortFault[] = []
  if (!within(tilt)) {
    faults.push({
      code: 'ports/tilt-limits',
      message: `rising by ${inWords(port.up)}° needs a tilt of ${inWords(tilt)}°, but the fixture tilts from ${least} to ${most}°`,
      hint: within(-tilt) ? 'turn the part round: the other end toward the free end' : 'draw a flatter port',
      key: 'up',
    })
  }
  if (reached === undefined) {
    faults.push({
      code: 'ports/rotary-limits',
      message: `needs the rotary at ${rotary}°, a whole turn more or less, but it goes from ${from} to ${to}°`,
      hint: 'turn the part round, or clock azimuth 0 elsewhere',
      key: 'at',
    })
  }
  return faults
}
