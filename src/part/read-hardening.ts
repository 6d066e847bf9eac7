import type { QuenchWay } from '../handbook/quench-ovality.ts'
import { HARDENED_BY, type HardeningProcess, isHardeningProcess } from '../process.ts'
import { readHardness } from './hardness.ts'
import type { Hardening } from './part.ts'
import { plainSigns, rangeFault, readQuantity } from './quantity.ts'
import type { View } from './view.ts'

/** What the trade writes, beside the names of the process. */
const CALLED: Readonly<Record<string, HardeningProcess>> = { 'case hardening': 'carburising' }
const QUENCHES: Readonly<Record<string, QuenchWay>> = {
  free: 'free',
  'hot oil': 'hot',
  gas: 'gas',
  press: 'press',
  plug: 'plug',
}

/** Hardness and depth are least values, with or without `min` before them. */
export function readHardening(view: View): Hardening | undefined {
  const called = view.text('process') ?? ''
  const process = CALLED[called] ?? (isHardeningProcess(called) ? called : undefined)
  const hardness = readHardness(view, 'hardness')
  const depth = readLeastDepth(view)
  const temperature = view.quantity('temperature', 'temperature', { over: 0, upTo: 1200 })
  const quench = QUENCHES[view.text('quench') ?? '']
  const masked = view.texts('masked')
  if (!process) return undefined
  if (hardness?.scale === 'HRC' && HARDENED_BY[process] === 'nitride') {
    const message = `HRC is asked of a case from ${process}: the indenter goes through it`
    const hint = `ask in HV: ${hardness.number} HRC converts to about ${hardness.HV.toFixed(0)} HV`
    view.report({ code: 'input/hardness-scale', message, hint }, 'hardness')
  }
  if (quench && process !== 'through hardening' && process !== 'carburising') {
    const message = `quench is written for ${process}: it is read of what is carburised or hardened through`
    view.report({ code: 'input/not-used', message, hint: 'leave quench out' }, 'quench')
  }
  return {
    process,
    masked,
    path: view.path,
    ...(hardness && { hardness: { least: hardness.HV } }),
    ...(depth !== undefined && { depth: { least: depth } }),
    ...(temperature !== undefined && { temperature }),
    ...(quench && { quench }),
  }
}

function readLeastDepth(view: View): number | undefined {
  const written = view.raw('depth')
  if (typeof written !== 'number' && typeof written !== 'string') return undefined
  const bare =
    typeof written === 'number' ? written : plainSigns(written).replace(/^(?:min\.?|≥|>=)\s*|\s*min\.?$/g, '')
  const read = readQuantity(bare, 'length', 'depth')
  const fault = 'fault' in read ? read.fault : rangeFault(read.value, { over: 0, upTo: 5 }, 'length', 'depth')
  if (fault) view.report(fault, 'depth')
  return fault || 'fault' in read ? undefined : read.value
}
