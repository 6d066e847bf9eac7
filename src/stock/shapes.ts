import type { Band } from '../band.ts'
import { middleOf } from '../limits.ts'
import type { Operation } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { Millimetre } from '../units.ts'
import { growthOfDepth } from './axial-growth.ts'
import type { AxialSizes } from './axial-sizes.ts'
import type { Sized } from './operation-sizes.ts'
import { isRoughed, roughDepth, roughedTo, roughLimits } from './rough-sizes.ts'
import { grown } from './solve-chain.ts'

/** Where everything stands, in depths from the finished top face. */
type State = {
  readonly top: Millimetre
  readonly bottom: Millimetre
  readonly diameters: ReadonlyMap<string, Millimetre>
  readonly depths: ReadonlyMap<string, Millimetre>
  readonly ported: boolean
}

/** The part as it leaves every operation that changes it, at the middle of its sizes. */
export function shapesAfter(sized: Sized, operations: readonly Operation[]): ReadonlyMap<number, Shape> {
  const shapes = new Map<number, Shape>()
  let state: State | undefined
  for (const operation of operations) {
    const next = stateAfter(sized, operation, state)
    if (!next || next === state) continue
    state = next
    shapes.set(operation.number, shapeOf(sized, next))
  }
  return shapes
}

function stateAfter(sized: Sized, operation: Operation, state: State | undefined): State | undefined {
  const { axial } = sized
  switch (operation.purpose) {
    case 'rough-turn':
      return roughed(sized)
    case 'finish-turn':
    case 'turn':
      return {
        top: -axial.topStock,
        bottom: -axial.topStock + middleOf(axial.softLength),
        diameters: diametersBy(sized, ({ soft }) => middleOf(soft)),
        depths: depthsBy(sized, soft => -axial.topStock + middleOf(soft)),
        ported: false,
      }
    case 'mill-ports':
      return state && { ...state, ported: true }
    case 'nitride':
    case 'case-harden':
    case 'induction-harden': {
      const g = axial.endGrowth
      return (
        state && {
          ...state,
          top: state.top - g,
          bottom: state.bottom + g,
          diameters: diametersBy(sized, ({ chain, soft, growth }) => {
            const { nominal } = grown({ ...soft, nominal: middleOf(soft) }, chain.kind, growth)
            return nominal
          }),
          depths: depthsBy(sized, (soft, looks) => {
            const grownBy = growthOfDepth(axial.growth, looks, middleOf(soft)).nominal
            return -axial.topStock - g + middleOf(soft) + grownBy
          }),
        }
      )
    }
    default:
      return state && finished(sized, operation, state)
  }
}

function roughed(sized: Sized): State {
  const { axial, shop } = sized
  const top = -axial.topStock - shop.habits.roughingAllowance
  return {
    top,
    bottom: top + middleOf(roughLimits(axial.softLength, false, shop)),
    diameters: diametersBy(sized, solved => middleOf(roughedTo(sized, solved))),
    depths: depthsBy(sized, (soft, looks, step) =>
      isRoughed(sized.part, step) ? top + middleOf(roughDepth(soft, looks, shop)) : -axial.topStock + middleOf(soft),
    ),
    ported: false,
  }
}

/** The part as it stands between roughing and finishing, where one operation does both. */
export const roughedShape = (sized: Sized): Shape => shapeOf(sized, roughed(sized))

function finished(sized: Sized, operation: Operation, state: State): State {
  const { plated } = sized
  if (plated && operation.purpose === 'plate') {
    return { ...state, diameters: new Map(state.diameters).set(plated.chain.surface, middleOf(plated.soft)) }
  }
  const cut = [...sized.chains, ...(plated ? [plated] : [])].flatMap(({ chain, after }) => {
    const limits = after[chain.finishes.findIndex(finish => finish.operation === operation)]
    return limits ? [{ chain, diameter: middleOf(limits) }] : []
  })
  if (cut.length === 0) return state
  const diameters = new Map(state.diameters)
  for (const { chain, diameter } of cut) if (chain.kind !== 'face') diameters.set(chain.surface, diameter)
  return { ...state, diameters, top: cut.some(({ chain }) => chain.kind === 'face') ? 0 : state.top }
}

const diametersBy = (
  { chains }: Sized,
  of: (solved: Sized['chains'][number]) => Millimetre,
): ReadonlyMap<string, Millimetre> =>
  new Map(chains.filter(({ chain }) => chain.kind !== 'face').map(solved => [solved.chain.surface, of(solved)]))

const depthsBy = (
  { axial }: Sized,
  of: (
    soft: { lower: number; upper: number; nominal: number },
    looks: 'up' | 'down',
    step: AxialSizes['steps'][number],
  ) => Millimetre,
): ReadonlyMap<string, Millimetre> =>
  new Map(
    axial.steps.flatMap(step => {
      const soft = axial.softDepth.get(step.band.name)
      return soft ? [[step.band.name, of(soft, step.looks, step)] as const] : []
    }),
  )

function shapeOf({ part }: Sized, { top, bottom, diameters, depths, ported }: State): Shape {
  const bands = (drawn: readonly Band[]) => {
    let from = top
    return drawn.map((band, index) => {
      const to = index === drawn.length - 1 ? bottom : (depths.get(band.name) ?? band.to.nominal)
      const row = { name: band.name, from, to, diameter: diameters.get(band.name) ?? band.size.nominal }
      from = to
      return row
    })
  }
  return { top, bottom, outside: bands(part.outside), bore: bands(part.bore), ported }
}
