import { angle, fixed, inWords } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const holderClearance: PortCheck = {
  name: 'holder-clearance',
  code: 'ports/holder-clearance',
  severity: 'error',
  because: 'shank, holder and spindle go down beside the part and its chuck',
  source: 'derived: geometry; margin: common practice, no source',
  test: ({ windows }, limit) =>
    windows.flatMap(({ port, window: { held, drillHeld, tilt, cutter, entryHole } }) =>
      [
        { held, over: `${inWords(cutter)} mm cutter` },
        { held: drillHeld, over: `${inWords(entryHole.diameter)} mm drill` },
      ].flatMap(({ held, over }) => {
        if (held === undefined || held.room >= limit('least') - 1e-6) return []
        const { by, to, room, stickOut, stickOutNeeded } = held
        const how = room < 0 ? `strikes the ${to} by ${fixed(-room, 2)}` : `clears the ${to} by ${fixed(room, 2)}`
        return [
          {
            port,
            severity: room < 0 ? ('error' as const) : ('warning' as const),
            message: `at tilt ${angle(tilt, 1)}° the ${by} over the ${over} ${how} mm; ${limit('least')} mm or more is needed`,
            hint:
              by === 'shank'
                ? 'use a cutter that is longer below its shank, or a smaller chuck'
                : `let it stick out ${fixed(Math.ceil(stickOutNeeded * 10) / 10, 1)} mm, not ${fixed(stickOut, 1)}, use a slimmer holder, or hold the part further out; \`fixture: {holder: …, chuck: …}\` in the shop file says what they are`,
          },
        ]
      }),
    ),
}
