import type { SetUp, SetUpWindow, WindowCut } from '../cutting/set-up.ts'
import type { Plan } from '../plan/plan.ts'
import type { Millimetre } from '../units.ts'

/** An end mill and what it does in a window, in the words of the trade. */
export type WindowMill = {
  readonly tool: string
  readonly diameter: Millimetre
  readonly does: 'all' | 'all but the corners' | 'roughs' | 'finishes' | 'the corners'
}

/** How a window is cut: by which end mills, in their order, and whether a hole lets the first of them in. */
export type WindowAsCut = { readonly mills: readonly WindowMill[]; readonly hole: boolean }

/** As the set-ups cut a window, by its port, azimuth and number; nothing of one that none of them has. */
export function windowAsCut(
  { setUps }: Pick<Plan, 'setUps'>,
  asked: { readonly port: string; readonly at: number; readonly window: number },
): WindowAsCut | undefined {
  const isAsked = ({ port, at, window }: SetUpWindow): boolean =>
    port === asked.port && at === asked.at && window === asked.window
  const here = setUps.flatMap(setUp => setUp.windows.filter(isAsked).map(({ cuts }) => ({ setUp, cuts })))
  if (here.length === 0) return undefined
  const kinds = new Set(here.flatMap(({ cuts }) => cuts.map(({ kind }) => kind)))
  return {
    mills: here.flatMap(({ setUp, cuts }) => millIn(setUp, new Set(cuts.map(({ kind }) => kind)), kinds)),
    // Into others the cutter ramps down along its slot.
    hole: kinds.has('drill') || kinds.has('wind down'),
  }
}

type Kinds = ReadonlySet<WindowCut['kind']>

function millIn({ tool, diameter }: SetUp, kinds: Kinds, ofWindow: Kinds): readonly WindowMill[] {
  const does = doneBy(kinds, ofWindow.has('finish corners'))
  return does === undefined ? [] : [{ tool, diameter, does }]
}

function doneBy(kinds: Kinds, cornersApart: boolean): WindowMill['does'] | undefined {
  const roughs = kinds.has('rough') || kinds.has('cut through')
  if (roughs && kinds.has('finish')) return cornersApart ? 'all but the corners' : 'all'
  if (roughs) return 'roughs'
  if (kinds.has('finish')) return 'finishes'
  return kinds.has('finish corners') || kinds.has('clear corners') ? 'the corners' : undefined
}
