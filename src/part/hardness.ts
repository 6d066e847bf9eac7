import { conversionSource, type HardnessScale, vickersFrom } from '../handbook/hardness-conversion.ts'
import { plainSigns, type Read, unreadable } from './quantity.ts'
import type { View } from './view.ts'

export type WrittenHardness = { readonly scale: HardnessScale; readonly number: number; readonly HV: number }

const HARDNESS = /^(?:min\.?|≥|>=)?\s*(\d+(?:\.\d+)?)\s*(HV|HRC|HBW?)\s*([\d.]*)\s*(?:min\.?)?$/
const SCALES: Readonly<Record<string, HardnessScale>> = { HV: 'HV', HRC: 'HRC', HB: 'HB', HBW: 'HB' }
const NO_SCALE = /^(?:min\.?|≥|>=)?\s*(\d+(?:\.\d+)?)\s*(?:min\.?)?$/

/** A hardness with its scale: `min 550 HV`, `300 HV`, `30 HRC`. What is written in HRC or HB is converted, and said so. */
export function readHardness(view: View, key: string): WrittenHardness | undefined {
  const written = view.raw(key)
  if (typeof written !== 'string' && typeof written !== 'number') return undefined
  const read = parseHardness(String(written), key)
  if ('fault' in read) {
    view.report(read.fault, key)
    return undefined
  }
  const { scale, number, HV } = read.value
  if (scale !== 'HV') {
    const message = `${key} ${number} ${scale} is planned as ${HV.toFixed(0)} HV, by ${conversionSource(scale, number)}`
    view.report({ code: 'input/converted', message, hint: 'a converted hardness never replaces a test' }, key, 'note')
  }
  return read.value
}

function parseHardness(written: string, name: string): Read<WrittenHardness> {
  const text = plainSigns(written)
  const bare = NO_SCALE.exec(text)
  if (bare) {
    const message = `${name} "${written}" has no scale`
    return { fault: { code: 'input/hardness-scale', message, hint: `write the scale: ${bare[1]} HV` } }
  }
  const [, digits = '', letters = ''] = HARDNESS.exec(text) ?? []
  const scale = SCALES[letters]
  if (!scale) return { fault: unreadable(written, text, name, 'a hardness such as min 550 HV or 30 HRC') }
  const number = Number(digits)
  const HV = vickersFrom(scale, number)
  if (HV === undefined) {
    const message = `${name} ${number} ${scale} is outside the conversion tables`
    return { fault: { code: 'input/hardness-scale', message, hint: 'write it in HV' } }
  }
  if (HV >= 50 && HV <= 1500) return { value: { scale, number, HV } }
  return {
    fault: { code: 'input/out-of-range', message: `${name} must be from 50 to 1500 HV, got ${number} ${scale}` },
  }
}
