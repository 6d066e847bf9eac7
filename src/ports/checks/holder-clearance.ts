import { angle, fixed, inWords } from '../../figures.ts'
import type { Degree, Millimetre } from '../../units.ts'
import type { HeldCutter } from '../held-cutter.ts'
import type { CheckFault, PortCheck, Ported } from './port-check.ts'

export const holderClearance: PortCheck = {
  name: 'holder-clearance',
  code: 'ports/holder-clearance',
  severity: 'error',
  because: 'shank, holder, spindle and head go down beside the part and what holds it',
  source: 'derived: geometry; margin: common practice, no source',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) =>
      planned.windows.flatMap(({ held, tilt, cutter }) =>
        tooNear({ port, held, tilt, over: `${inWords(cutter)} mm cutter` }, limit('least')),
      ),
    ),
}

/** The same of the drills that entry holes are drilled with: known once it is, which windows are drilled at all. */
export const drillClearance = (
  { ports }: Pick<Ported, 'ports'>,
  limit: (threshold: string) => number,
): readonly CheckFault[] =>
  ports.flatMap(({ port, planned }) =>
    planned.windows.flatMap(({ drillHeld, tilt, entryHole }) =>
      tooNear({ port, held: drillHeld, tilt, over: `${inWords(entryHole.diameter)} mm drill` }, limit('least')),
    ),
  )

type Over = {
  readonly port: CheckFault['port']
  readonly held: HeldCutter | undefined
  readonly tilt: Degree
  readonly over: string
}

function tooNear({ port, held, tilt, over }: Over, least: Millimetre): readonly CheckFault[] {
  if (held === undefined || held.room >= least - 1e-6) return []
  const { by, to, room } = held
  const how = room < 0 ? `strikes the ${to} by ${fixed(-room, 2)}` : `clears the ${to} by ${fixed(room, 2)}`
  return [
    {
      port,
      severity: room < 0 ? ('error' as const) : ('warning' as const),
      message: `at tilt ${angle(tilt, 1)}° the ${by} over the ${over} ${how} mm; ${least} mm or more is needed`,
      hint: `${helps(held)}; \`fixture: {holder: …, chuck: …, rotary: …, plate: …, head: …}\` in the shop file says what they are`,
    },
  ]
}

/** What would help, each alone, with its figure: never more room than there is, so lengths up and diameters down. */
function helps({ by, stickOut, remedies = {} }: HeldCutter): string {
  const { stickOut: out, holderDiameter, chuckDiameter, length } = remedies
  const up = (value: number): string => fixed(Math.ceil(value * 10 - 1e-6) / 10, 1)
  const down = (value: number): string => fixed(Math.floor(value * 10 + 1e-6) / 10, 1)
  const ways = [
    ...(out === undefined ? [] : [`let it stick out ${up(out)} mm, not ${fixed(stickOut, 1)}`]),
    ...(holderDiameter === undefined ? [] : [`use a holder with a nose of Ø${down(holderDiameter)}`]),
    ...(chuckDiameter === undefined
      ? []
      : [`hold it in a collet or on a plate of no more than Ø${down(chuckDiameter)}`]),
    ...(length === undefined ? [] : [`leave ${up(length)} mm more length to grip, as a stub that is cut off later`]),
  ]
  if (ways.length > 0) return ways.join(', or ')
  return by === 'shank' || by === 'cutter'
    ? 'nothing of it alone helps: hold the part by its other end, or on a plate from within'
    : 'no one change helps: take a longer cutter, a slimmer holder and a smaller chuck together'
}
