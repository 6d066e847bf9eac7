import { fixed } from '../../figures.ts'
import { barsOf } from '../../part/part.ts'
import type { PortCheck } from './port-check.ts'

export const ringCrossesBridge: PortCheck = {
  name: 'ring-crosses-bridge',
  code: 'ports/ring-crosses-bridge',
  severity: 'warning',
  because: 'a hot bar bows into the bore, and the rings run over it',
  source: 'principle: published workshop notes, 0.03 mm; memory: Jennings, Bell, 0.05 to 0.10 mm',
  test: ({ part: { engine }, ports }, limit) => {
    if (engine?.rings === undefined || engine.rings === 'none') return []
    return ports.flatMap(({ port, planned }) =>
      planned.windows.length > 1 && limit('relief') > 0
        ? [
            {
              port,
              message: `rings cross its bar of ${barsOf(port)
                .map(bar => fixed(bar, 2))
                .join(
                  ' and ',
                )} mm: relieve it on the bore side by ${limit('relief')} to ${limit('most')} mm, run out gently, and break its edges`,
              hint: 'waive the rule with what the drawing says of the relief',
              key: 'bridge',
            },
          ]
        : [],
    )
  },
}
