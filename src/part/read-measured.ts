import type { Process } from '../process.ts'
import type { Measured, Shop } from '../shop/shop.ts'
import { isDate } from './date.ts'
import { readHardness } from './hardness.ts'
import { present } from './open-document.ts'
import { readGrade } from './read-material.ts'
import type { View } from './view.ts'

const GROWTH = { from: -0.5, upTo: 0.5 }
/** Out of true by more, a piece is scrap and no measurement to plan from. Common practice, no source. */
const FORM = { from: 0, upTo: 0.5 }

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
      growth: readGrowth(view.into('growth')),
      ovality: view.quantity('ovality', 'length', FORM),
      bow: view.quantity('bow', 'length', FORM),
      eccentricity: view.quantity('eccentricity', 'length', FORM),
    })
    if (process === undefined || pieces === undefined || date === undefined) return []
    return [{ process: process as Process, pieces, date, ...measured }]
  })
}

function readGrowth(view: View | undefined): Measured['growth'] {
  const [least, nominal, most] = ['least', 'nominal', 'most'].map(key => view?.quantity(key, 'length', GROWTH))
  if (least === undefined || nominal === undefined || most === undefined) return undefined
  if (!(least <= nominal && nominal <= most)) {
    const message = `growth must rise from least to most, got ${least}, ${nominal}, ${most}`
    view?.report({ code: 'input/out-of-range', message, hint: 'per side, positive where metal grows' })
  }
  return { least, nominal, most }
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
