import { fixed } from '../../figures.ts'
import { type TimingClass, timingClasses } from '../../handbook/timing-classes.ts'
import type { PortCheck } from './port-check.ts'
import { ofRole } from './port-check.ts'

export const timingInClass: PortCheck = {
  name: 'timing-in-class',
  code: 'ports/timing-in-class',
  severity: 'warning',
  because: 'openings outside what engines of the speed run are often a slip of the pen',
  source: 'memory: Jennings 1973, Bell, Blair 1990 and 1996, Bossaglia',
  test: (ported, limit) => {
    const engine = ported.part.engine
    if (engine?.speed === undefined) return []
    const classes = timingClasses(engine.speed, engine.stroke)
    const within = (opens: number, of: (row: TimingClass) => readonly [number, number]): boolean =>
      classes.some(row => opens >= of(row)[0] - limit('slack') - 1e-9 && opens <= of(row)[1] + limit('slack') + 1e-9)
    return (['exhaust', 'transfer'] as const).flatMap(role =>
      ofRole(ported, role)
        .filter(({ opens }) => !within(opens, row => row[role]))
        .map(({ port, opens }) => ({
          port,
          message: `opens at ${fixed(opens, 1)}°; from memory of the books, ${classes.map(row => `${row.name} engines run ${row[role].join(' to ')}°`).join(', ')}`,
          key: 'opens',
        })),
    )
  },
}
