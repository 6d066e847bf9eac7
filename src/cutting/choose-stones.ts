import { HONING_GRITS, STONE_RULES } from '../handbook/honing-data.ts'
import type { Roughness } from '../limits.ts'
import { type Abrasive, type Hone, toolsOf } from '../shop/tool.ts'
import { toolsToGet } from '../shop/tools-to-get.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingTask } from './cutting-task.ts'
import { figure } from './figure.ts'
import type { Belt } from './ports-and-wheel.ts'
import { sayToGet } from './to-get.ts'
import type { BandCut } from './turned-cuts.ts'

export type Stones = {
  readonly name: string
  readonly length: Millimetre
  readonly count: number
  readonly abrasive: Abrasive
  readonly grit: number
  /** Ra that they leave, µm. */
  readonly leaves: readonly [number, number]
}

export type StonePair = { readonly last: Stones; readonly rough?: Stones }

/** Shorter stones are not kept. Common practice, no source. */
const LEAST_STONE: Millimetre = 5

/** The stones that leave the roughness wanted, and coarser ones to take the stock with; long enough for ports and stroke. */
export function chooseStones(
  task: CuttingTask,
  cut: BandCut,
  wanted: Roughness,
  belt: Belt | undefined,
): StonePair | undefined {
  const iron = task.material.family === 'grey iron' || task.material.family === 'ductile iron'
  const stones = allStones(toolsOf(task.shop, 'hone'))
  const least = leastLength(belt)
  const most = (cut.length - STONE_RULES.shortestStroke) / (1 - 2 * STONE_RULES.overrun)
  const within = (all: readonly Stones[]) => all.filter(({ length }) => length >= least - 1e-9 && length <= most + 1e-9)
  const onHand = within(stones)
  const long = onHand.length > 0 ? onHand : within(allStones(toolsToGet('hone')))
  if (long.length === 0) {
    refuse({ task, cut, belt, stones, least, most })
    return undefined
  }
  const suited = long.filter(({ abrasive }) => (abrasive === 'C') === iron)
  const usable = (suited.length > 0 ? suited : long).toSorted((a, b) => a.grit - b.grit || b.length - a.length)
  const fine = usable.find(({ leaves }) => leaves[1] <= wanted + 1e-9)
  const last = fine ?? usable.at(-1)
  if (!last) return undefined
  if (!fine) {
    task.report({
      code: 'cutting/stones-leave-more',
      severity: 'warning',
      message: `${cut.feature} wants Ra ${wanted}; the finest stones on hand, ${last.name}, leave ${last.leaves[0]} to ${last.leaves[1]} (memory, ±40 %)`,
      hint: 'list finer stones, or run more strokes after size and measure',
      path: '/body/bore',
    })
  }
  const rough = usable.find(({ grit }) => grit < last.grit)
  for (const set of [last, ...(rough ? [rough] : [])])
    sayToGet(task, set, `for ${cut.feature}, ${figure(cut.length)} mm long`)
  return { last, ...(rough ? { rough } : {}) }
}

const allStones = (hones: readonly Hone[]): readonly Stones[] =>
  hones.flatMap(({ name, stones: { length, count, abrasive, grit } }) => {
    const row = HONING_GRITS.findLast(known => known.grit <= grit)
    return row ? [{ name, length, count, abrasive, grit, leaves: abrasive === 'CBN' ? row.cbn : row.alumina }] : []
  })

/**
 * Over ports: twice the tallest, and all of a row with a quarter of the stone beyond it at each side, so that half of the stone
 * lies on land. The land between two rows carries a stone as well as that beyond them (derived).
 */
const leastLength = (belt: Belt | undefined): Millimetre =>
  belt === undefined
    ? 0
    : Math.max(STONE_RULES.overTallestPort * belt.tallest, belt.ported / (1 - 2 * STONE_RULES.beyondBelt))

function refuse({
  task,
  cut,
  belt,
  stones,
  least,
  most,
}: {
  readonly task: CuttingTask
  readonly cut: BandCut
  readonly belt: Belt | undefined
  readonly stones: readonly Stones[]
  readonly least: Millimetre
  readonly most: Millimetre
}): void {
  const tooShort = most < LEAST_STONE
  if (tooShort || least > most + 1e-9) {
    task.report({
      code: 'cutting/no-hone',
      severity: 'error',
      message: tooShort
        ? `${cut.feature}, ${figure(cut.length)} mm long, cannot be honed: a stroke of ${STONE_RULES.shortestStroke} mm or more, with a third of the stone beyond each end, leaves no room for stones`
        : `no stone suits ${cut.feature}: over its ports it must be ${figure(least)} mm or longer, and for a stroke within ${figure(cut.length)} mm ${figure(most)} mm or shorter`,
      hint: 'finish this bore by grinding or lapping, or make it longer',
      path: '/body/bore',
    })
    return
  }
  const onHand = [...new Set(stones.map(({ length }) => length))].map(length => `${figure(length)}`).join(', ')
  const shorter = belt !== undefined && stones.length > 0 && stones.every(({ length }) => length < least)
  task.report({
    code: shorter ? 'cutting/stones-and-ports' : 'cutting/no-hone',
    severity: 'error',
    message: shorter
      ? `stones of ${onHand} mm tip into the ports: over ${figure(belt.ported)} mm of ports they must be ${figure(least)} mm or longer`
      : `no hone on hand suits ${cut.feature}: its stones must be ${least > 0 ? `${figure(least)} to ${figure(most)} mm long` : `${figure(most)} mm long or shorter`}${onHand ? `; on hand ${onHand}` : ''}`,
    hint: 'list a hone with `length:` of its stones and `grade:` such as `A 280` in the shop file',
    path: '/body/bore',
  })
}
