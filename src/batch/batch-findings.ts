import type { Finding } from '../finding.ts'
import { deliveredHardness } from '../handbook/quenched-and-tempered.ts'
import { type Part, placeOf } from '../part/part.ts'
import { HARDENING_PROCESSES, type Process } from '../process.ts'
import type { Operation } from '../route/operation.ts'
import type { Batch } from './batch.ts'
import type { BarChoice } from './choose-bar.ts'
import type { CutList } from './cut-list.ts'
import type { StartQuantity } from './start-quantity.ts'

type Settled = { readonly started: StartQuantity; readonly bar: BarChoice; readonly cut: CutList }

/** What the user should know of the start quantity and the bar. */
export function batchFindings(
  part: Part,
  operations: readonly Operation[],
  batch: Batch,
  { started, bar, cut }: Settled,
): readonly Finding[] {
  const material = placeOf(part, '/material')
  return [
    ...(started.ok ? [] : [tooFew(started.reason, placeOf(part, ''))]),
    ...(bar.ok ? [] : [noBar(bar.reason, material)]),
    ...(cut.piecesPerBar > 0 ? [] : [tooShort(cut, material)]),
    ...(bar.ok ? wrongHardness(part, bar) : []),
    ...(cut.bars > 1 ? [oneHeat(batch, cut, material)] : []),
    ...(operations.some(({ process }) => hardensInLoads(process)) ? [oneLoad(batch, part)] : []),
  ]
}

const tooFew = (reason: string, at: Finding['at']): Finding => ({
  code: 'batch/yield-too-low',
  severity: 'error',
  message: reason,
  at,
  hint: 'split the batch, or better the operation with the lowest yield',
})

const noBar = (reason: string, at: Finding['at']): Finding => ({
  code: 'batch/no-bar',
  severity: 'error',
  message: reason,
  at,
  hint: 'plan from a forging, a casting or a tube by hand, or change the grade',
})

const tooShort = ({ barLength, pitch }: CutList, at: Finding['at']): Finding => ({
  code: 'batch/bar-too-short',
  severity: 'error',
  message: `a bar of ${barLength} mm gives no blank of ${pitch.toFixed(1)} mm with its kerf, past the stub in the vice`,
  at,
  hint: 'set a longer bar-length in the shop file',
})

/** The bar that cleans up may be too thick to be had at the hardness asked for. */
function wrongHardness({ material, ...part }: Part, bar: BarChoice & { ok: true }): readonly Finding[] {
  const range = deliveredHardness(material.grade, bar.bar.diameter)
  const asked = material.hardness
  if (!range || asked === undefined || (asked >= range.least && asked <= range.most)) return []
  return [
    {
      code: 'batch/hardness-for-section',
      severity: 'warning',
      message:
        `${material.grade} is asked for at ${asked} HV; a Ø${bar.bar.diameter} bar is delivered quenched and tempered ` +
        `at ${range.least.toFixed(0)} to ${range.most.toFixed(0)} HV`,
      at: placeOf(part, '/material/hardness'),
      hint: 'agree the hardness with the bar supplier, or have the rough-turned blanks quenched and tempered',
    },
  ]
}

const oneHeat = ({ start, heat }: Batch, { bars }: CutList, at: Finding['at']): Finding => ({
  code: 'batch/one-heat',
  severity: 'note',
  message:
    `${start} blanks take ${bars} bars: ` +
    (heat === undefined ? 'buy all of one heat' : `all must be of heat ${heat}`) +
    ', since two heats grow and harden differently in one load',
  at,
})

/** Induction hardens one piece after the other: a load of them never goes wrong at once. */
const hardensInLoads = (process: Process): boolean => process !== 'induction-harden' && HARDENING_PROCESSES.has(process)

const oneLoad = ({ start }: Batch, part: Part): Finding => ({
  code: 'batch/one-load',
  severity: 'note',
  message: `a furnace load that goes wrong takes all ${start} pieces: the yields count single pieces only`,
  at: placeOf(part, part.hardening?.path ?? ''),
  hint: 'harden in two loads where the delivery cannot wait for a second batch',
})
