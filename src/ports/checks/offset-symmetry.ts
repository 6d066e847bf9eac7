import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const offsetSymmetry: PortCheck = {
  name: 'offset-symmetry',
  code: 'ports/offset-symmetry',
  severity: 'note',
  because: 'with a pin offset the openings do not lie evenly about bottom dead centre',
  source: 'derived: geometry of the slider-crank',
  test: ({ part, ports }) =>
    part.engine === undefined || part.engine.pinOffset === 0
      ? []
      : ports.flatMap(({ port, planned: { opens, closes } }) =>
          opens === undefined || closes === undefined
            ? []
            : [
                {
                  port,
                  message: `opens ${fixed(opens, 2)}° after and closes ${fixed(360 - closes, 2)}° before top dead centre: the pin offset of ${part.engine?.pinOffset} mm shifts both`,
                },
              ],
        ),
}
