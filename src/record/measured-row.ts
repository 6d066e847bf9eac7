import { roundedUp } from '../figures.ts'
import { isHardeningProcess } from '../process.ts'
import { chooseMeasured } from '../shop/measured.ts'
import type { Measured, MeasuredLoad } from '../shop/record.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import type { IssuedPlan } from './characteristic-of.ts'
import { hardeningOf } from './in-hand.ts'
import type { Learnt } from './learn.ts'

/** What the shop file would say of this batch, and the row that it stands beside. */
export type ProposedRow = { readonly row: Measured; readonly before?: Measured }

/** Ovality, bow and growth are written to the micrometre, outward. */
const outward = (value: Millimetre): Millimetre => Number(roundedUp(value, 3))
const tenth = (value: Millimetre): Millimetre => Math.round(value * 1e4) / 1e4

/**
 * The `measured:` row of a batch: its furnace load added to those that the works has of the same process, grade, firm, wall and depth,
 * so that they are pooled anew; ovality and bow as the bound for all of a next load. Nothing where no growth was learnt.
 */
export function measuredRow(plan: IssuedPlan, learnt: Learnt, shop: Pick<Shop, 'measured'>): ProposedRow | undefined {
  const hardened = plan.operations.find(({ number }) => number === hardeningOf(plan))
  const { ordered } = plan.case ?? {}
  const process = plan.case?.process
  if (!hardened || !isHardeningProcess(process) || ordered === undefined || learnt.date === undefined) return undefined
  const grown = learnt.surfaces.filter(({ growth }) => growth !== undefined)
  if (grown.length === 0) return undefined
  const size = (kind: 'outside' | 'bore') =>
    hardened.sizes.find(sized => sized.kind === kind && grown.some(({ surface }) => surface === sized.feature))
  const [outside, bore] = [size('outside'), hardened.sizes.find(({ kind }) => kind === 'bore')]
  const diameter = outside?.nominal
  const wall = diameter === undefined ? undefined : (diameter - (bore?.nominal ?? 0)) / 2
  const length = hardened.sizes.find(({ measure }) => measure === 'length')?.nominal
  const on = {
    process: hardened.process,
    hardening: process,
    grade: plan.material.grade,
    firm: hardened.workCentre,
    depth: ordered.least,
    ...(wall !== undefined && { wall }),
    ...(diameter !== undefined && { diameter }),
  }
  const { row: before } = chooseMeasured(shop, on, 'loads')
  const loads = (kind: 'outside' | 'bore'): readonly MeasuredLoad[] | undefined => {
    const growth = grown.find(surface => surface.kind === kind)?.growth
    const earlier = (before?.loads[kind] ?? []).filter(({ batch }) => batch !== plan.batch.number)
    if (!growth) return earlier.length > 0 ? earlier : undefined
    const { pieces, mean, spread } = growth
    return [
      ...earlier,
      { batch: plan.batch.number, pieces, mean: tenth(mean), spread: Math.max(1e-5, Number(spread.toFixed(5))) },
    ]
  }
  const [ofOutside, ofBore] = [loads('outside'), loads('bore')]
  const ovals = learnt.surfaces.flatMap(({ ovality }) => (ovality ? [ovality.leans?.all ?? ovality.all] : []))
  const along = learnt.length
  const row: Measured = {
    process,
    grade: plan.material.grade,
    firm: hardened.workCentre,
    pieces: [...(ofOutside ?? ofBore ?? [])].reduce((sum, { pieces }) => sum + pieces, 0),
    date: learnt.date,
    depth: ordered.least,
    ...(diameter !== undefined && { diameter: tenth(diameter) }),
    ...(wall !== undefined && { wall: tenth(wall) }),
    ...(length !== undefined && { length: tenth(length) }),
    ...(along && {
      growth: {
        length: {
          least: tenth(along.mean - along.ofAll),
          nominal: tenth(along.mean),
          most: tenth(along.mean + along.ofAll),
        },
      },
    }),
    ...(ovals.length > 0 && { ovality: outward(Math.max(...ovals)) }),
    ...(learnt.bow && { bow: outward(learnt.bow.all) }),
    loads: { ...(ofOutside && { outside: ofOutside }), ...(ofBore && { bore: ofBore }) },
  }
  return { row, ...(before && { before }) }
}
