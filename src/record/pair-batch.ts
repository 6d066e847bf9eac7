import { materialOf } from '../handbook/materials.ts'
import { EXPANSION } from '../handbook/thermal-expansion.ts'
import type { TrayPiston } from '../part/read-pistons.ts'
import { PIECE } from '../part/results.ts'
import type { Millimetre } from '../units.ts'
import type { IssuedPlan } from './characteristic-of.ts'
import { hotClearance, hotRingGap, ringGap } from './fits.ts'
import type { Judged } from './judge-results.ts'
import { type Clearance, clearanceUncertainty, type Pair, type Pairing, pairPistons } from './pair-pistons.ts'

/** Temperatures at work, °C, and how far each may be off. */
export type Hot = { readonly liner: number; readonly piston: number; readonly ring: number; readonly within: number }
/** Assumed where nobody says: estimate. */
const HOT: Hot = { liner: 110, piston: 140, ring: 200, within: 10 }

export type FittedPair = Pair & {
  /** Hot, with the temperatures of `HOT` ten degrees off either way. */
  readonly hot?: { readonly least: Millimetre; readonly nominal: Millimetre; readonly most: Millimetre }
  readonly ring?: { readonly gap: Millimetre; readonly hot: Millimetre }
}

export type PairedBatch = Omit<Pairing, 'pairs'> & {
  readonly pairs: readonly FittedPair[]
  readonly clearance: Clearance
  readonly uncertainty: Millimetre
  readonly temperatures: Hot
}

/** Pairs the bores of a batch, as they were measured last, with the pistons of a tray. Pieces that are lost or out are no bores. */
export function pairBatch({
  plan,
  judged,
  lost,
  pistons,
  clearance,
}: {
  readonly plan: IssuedPlan
  readonly judged: readonly Judged[]
  readonly lost: ReadonlySet<string>
  readonly pistons: readonly TrayPiston[]
  readonly clearance: Clearance
}): PairedBatch {
  const bores = lastBores(plan, judged).filter(({ serial, verdict }) => !lost.has(serial) && verdict !== 'out')
  const uncertainty = clearanceUncertainty((bores[0]?.uncertainty ?? 0) / 2, (bores[0]?.uncertainty ?? 0) / 2)
  const paired = pairPistons(
    bores.map(({ serial, form }) => ({ serial, size: form.least })),
    pistons.map(({ serial, size, wants }) => ({ serial, size, ...(wants !== undefined && { wants }) })),
    clearance,
    uncertainty,
  )
  const liner = expansionOf(plan.material.grade)
  const fitted = paired.pairs.map((pair): FittedPair => {
    const bore = bores.find(({ serial }) => serial === pair.bore)
    const piston = pistons.find(({ serial }) => serial === pair.piston)
    const alloy = piston?.grade === undefined ? undefined : expansionOf(piston.grade)
    if (!bore || !piston) return pair
    const tight = Math.min(...bore.form.levels.map(({ mean }) => mean))
    const gap =
      piston.ringGap === undefined || piston.master === undefined
        ? undefined
        : ringGap(piston.ringGap, piston.master, tight)
    const hot = (off: number): Millimetre =>
      hotClearance(
        bore.form.least,
        piston.size,
        { temperature: HOT.liner - off, expansion: liner ?? 0 },
        { temperature: HOT.piston + off, expansion: alloy ?? 0 },
      )
    return {
      ...pair,
      ...(liner !== undefined &&
        alloy !== undefined && { hot: { least: hot(HOT.within), nominal: hot(0), most: hot(-HOT.within) } }),
      ...(gap !== undefined &&
        liner !== undefined && {
          ring: {
            gap,
            // Rings are of grey iron where nobody says.
            hot: hotRingGap(
              gap,
              tight,
              { temperature: HOT.liner, expansion: liner },
              { temperature: HOT.ring, expansion: EXPANSION['grey iron'] * 1e-6 },
            ),
          },
        }),
    }
  })
  return { ...paired, pairs: fitted, clearance, uncertainty, temperatures: HOT }
}

const expansionOf = (grade: string): number | undefined => {
  const group = materialOf(grade)?.group
  return group && EXPANSION[group] * 1e-6
}

/** Bores of every piece as the last operation left them. */
function lastBores({ operations }: IssuedPlan, judged: readonly Judged[]): readonly Judged[] {
  const kinds = new Set(
    operations.flatMap(({ sizes }) => sizes.filter(({ kind }) => kind === 'bore').map(({ feature }) => feature)),
  )
  const last = new Map<string, Judged>()
  for (const one of judged) {
    if (!kinds.has(one.feature) || one.unit !== 'mm' || one.lower === undefined || !PIECE.test(one.serial)) continue
    const before = last.get(one.serial)
    if (!before || one.after >= before.after) last.set(one.serial, one)
  }
  return [...last.values()]
}
