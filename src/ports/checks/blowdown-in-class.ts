import { fixed } from '../../figures.ts'
import { TIMING_CLASSES_SOURCE, timingClasses } from '../../handbook/timing-classes.ts'
import type { PortCheck } from './port-check.ts'
import { exhaustsOf, ofRole } from './port-check.ts'

export const blowdownInClass: PortCheck = {
  name: 'blowdown-in-class',
  code: 'ports/blowdown-in-class',
  severity: 'warning',
  because: 'too little leaves exhaust to blow into the crankcase, too much throws away stroke',
  source: TIMING_CLASSES_SOURCE,
  test: (ported, limit) => {
    const { engine } = ported.part
    const [exhaust] = exhaustsOf(ported)
    const [transfer] = ofRole(ported, 'transfer')
    if (!exhaust || !transfer || engine?.speed === undefined || transfer.opens <= exhaust.opens) return []
    const angle = transfer.opens - exhaust.opens
    const classes = timingClasses(engine.speed, engine.stroke)
    const slack = limit('slack') + 1e-9
    if (classes.some(({ blowdown: [from, to] }) => angle >= from - slack && angle <= to + slack)) return []
    const usual = classes.map(({ name, blowdown }) => `${name} engines run ${blowdown.join(' to ')}°`).join(', ')
    return [
      {
        port: transfer.port,
        message: `the exhaust opens ${fixed(angle, 1)}° before it; from memory of the books, ${usual}`,
        key: 'opens',
      },
    ]
  },
}
