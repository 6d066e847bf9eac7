import type { Spread } from '../limits.ts'
import type { Measured, MeasuredLoad } from '../shop/record.ts'
import type { Shop } from '../shop/shop.ts'
import { isDate } from './date.ts'
import { readHardness } from './hardness.ts'
import { present } from './open-document.ts'
import { readGrade } from './read-material.ts'
import type { View } from './view.ts'

const GROWTH = { from: -0.5, upTo: 0.5 }
/** Out of true by more, a piece is scrap and no measurement to plan from. Common practice, no source. */
const FORM = { from: 0, upTo: 0.5 }
const SIZE = { over: 0, upTo: 1000 }
const DEPTH = { over: 0, upTo: 10 }

export function readMeasured(root: View): readonly Measured[] {
  return root.each('measured').flatMap(view => {
    const process = view.text('process')
    const pieces = view.count('pieces')
    const date = view.text('date')
    if (date !== undefined && !isDate(date)) {
      view.report({ code: 'input/unreadable', message: `date "${date}" is no day`, hint: 'write YYYY-MM-DD' }, 'date')
    }
    const measured = present({
      grade: readGrade(view, 'grade'),
      firm: view.text('firm'),
      depth: view.quantity('depth', 'length', DEPTH),
      wall: view.quantity('wall', 'length', SIZE),
      diameter: view.quantity('diameter', 'length', SIZE),
      length: view.quantity('length', 'length', SIZE),
      growth: readGrowth(view.into('growth')),
      loads: readLoads(view.into('loads')),
      ovality: view.quantity('ovality', 'length', FORM),
      bow: view.quantity('bow', 'length', FORM),
      eccentricity: view.quantity('eccentricity', 'length', FORM),
    })
    if (process === undefined || pieces === undefined || date === undefined) return []
    return [{ process: process as Measured['process'], pieces, date, ...measured }]
  })
}

function readGrowth(view: View | undefined): Measured['growth'] {
  if (!view) return undefined
  const parted = present({
    outside: readSpread(view.into('outside')),
    bore: readSpread(view.into('bore')),
    length: readSpread(view.into('length')),
  })
  if (Object.keys(parted).length > 0) return parted
  const all = readSpread(view)
  if (!all) {
    view.report({
      code: 'input/missing-key',
      message: 'growth needs outside, bore or length; or least, nominal and most for all alike',
      hint: 'growth: {outside: {least: …, nominal: …, most: …}, bore: {…}}',
    })
  }
  return all
}

function readSpread(view: View | undefined): Spread | undefined {
  const [least, nominal, most] = ['least', 'nominal', 'most'].map(key => view?.quantity(key, 'length', GROWTH))
  if (least === undefined || nominal === undefined || most === undefined) return undefined
  if (!(least <= nominal && nominal <= most)) {
    const message = `growth must rise from least to most, got ${least}, ${nominal}, ${most}`
    view?.report({ code: 'input/out-of-range', message, hint: 'per side, positive where metal grows' })
  }
  return { least, nominal, most }
}

function readLoads(view: View | undefined): Measured['loads'] {
  if (!view) return undefined
  const of = (side: 'outside' | 'bore'): readonly MeasuredLoad[] | undefined => {
    const loads = view.each(side).flatMap(load => {
      const pieces = load.count('pieces')
      const mean = load.quantity('mean', 'length', GROWTH)
      const spread = load.quantity('spread', 'length', { from: 0, upTo: 0.1 })
      const batch = load.text('batch')
      return pieces === undefined || mean === undefined || spread === undefined || batch === undefined
        ? []
        : [{ batch, pieces, mean, spread }]
    })
    return loads.length > 0 ? loads : undefined
  }
  return present({ outside: of('outside'), bore: of('bore') })
}

export function readReached(root: View): Shop['reached'] {
  return root.each('reached').flatMap(view => {
    const grade = readGrade(view, 'grade')
    const surface = readHardness(view, 'surface')
    const core = readHardness(view, 'core')
    const constant = view.raw('depth-constant')
    const depthConstant = typeof constant === 'number' && constant > 0 && constant <= 0.3 ? constant : undefined
    if (grade === undefined || !surface || !core) return []
    return [{ grade, surface: surface.HV, core: core.HV, ...present({ depthConstant }) }]
  })
}
