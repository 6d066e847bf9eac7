import type { Band } from '../band.ts'
import { BARE_THICKNESS_SHARE, platingOf } from '../handbook/plating.ts'
import { readSize } from './drawn-size.ts'
import { readHardness } from './hardness.ts'
import type { PartPlating, PlatingProcess } from './part.ts'
import { type Fault, plainSigns, rangeFault, readQuantity } from './quantity.ts'
import type { View } from './view.ts'

/** Every spelling that a part file may use; the schema lists the same ones. */
const PROCESSES: Readonly<Record<string, PlatingProcess>> = {
  'hard chrome': 'hard chrome',
  chrome: 'hard chrome',
  'nickel silicon carbide': 'nickel silicon carbide',
  'nickel-silicon-carbide': 'nickel silicon carbide',
  NiSiC: 'nickel silicon carbide',
  'Ni-SiC': 'nickel silicon carbide',
}

const THICKNESS = { over: 0, upTo: 1 }
const LEAST = /^(?:min\.?|≥|>=)\s*|\s*min\.?$/g
const BARE = /^[\d.]+\s*(?:mm|inch|in|"|µm|um)?$/

export function readPlating(view: View): PartPlating | undefined {
  const process = PROCESSES[view.text('process') ?? '']
  const hardness = readHardness(view, 'hardness')
  const chamfer = view.quantity('chamfer', 'length', { from: 0, upTo: 5 })
  const surface = view.text('surface') ?? 'bore'
  const thickness = process && readThickness(view, process)
  if (!process || !thickness) return undefined
  return {
    process,
    surface,
    thickness,
    path: view.path,
    ...(hardness && { hardness: { least: hardness.HV } }),
    ...(chamfer !== undefined && { chamfer }),
  }
}

/** A bore with one band may go by `bore`, whatever the band is called. */
export function onBand(plating: PartPlating | undefined, bore: readonly Band[]): PartPlating | undefined {
  const [only] = bore
  return plating?.surface === 'bore' && only && bore.length === 1 ? { ...plating, surface: only.name } : plating
}

function readThickness(view: View, process: PlatingProcess): PartPlating['thickness'] | undefined {
  const written = view.raw('thickness')
  if (typeof written !== 'number' && typeof written !== 'string') {
    const usual = platingOf(process)?.thickness.usual
    return usual === undefined || view.has('thickness') ? undefined : about(usual)
  }
  const refuse = (fault: Fault): undefined => view.report(fault, 'thickness') as undefined
  const text = plainSigns(String(written))
  const figure = text.replace(LEAST, '')
  if (figure !== text || BARE.test(text)) {
    const read = readQuantity(figure, 'length', 'thickness')
    if ('fault' in read) return refuse(read.fault)
    const fault = rangeFault(read.value, THICKNESS, 'length', 'thickness')
    if (fault) return refuse({ ...fault, hint: 'thickness is per side, in mm; write µm after micrometres: 75 µm' })
    return figure === text ? about(read.value) : { least: read.value }
  }
  const size = readSize(text, { name: 'thickness', of: 'length', general: 'm' })
  if ('fault' in size) return refuse(size.fault)
  const { lower, upper } = size.value
  const fault = rangeFault(upper, THICKNESS, 'length', 'thickness')
  return fault ? refuse(fault) : { least: lower, most: upper, aim: (lower + upper) / 2 }
}

const about = (aim: number): PartPlating['thickness'] => ({
  aim,
  least: (1 - BARE_THICKNESS_SHARE) * aim,
})
