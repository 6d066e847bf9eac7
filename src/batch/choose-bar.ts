import { barBow, centringError, rolledDefectAllowance, skinAllowance } from '../handbook/bar-allowance.ts'
import { BAR_FORMS, type BarForm, type BarSize, SKIN_SOURCE, SURFACE_SOURCE } from '../handbook/bar-stock.ts'
import { allowanceOfRevolution, spatialDeviation } from '../handbook/machining-allowance.ts'
import type { MaterialGroup } from '../handbook/materials.ts'
import { rowFor } from '../handbook/nominal-range.ts'
import { CHUCK_SETTING, CHUCK_SETTING_SOURCE } from '../handbook/surface-before.ts'
import { fromHandbook, told, worked } from '../known.ts'
import { type Millimetre, micrometres, millimetres } from '../units.ts'
import { type Notebook, openNotebook } from '../working.ts'

export type BarNeed = {
  readonly group: MaterialGroup
  /** Largest diameter that rough turning may leave, and the length of the blank that sticks out of the chuck. */
  readonly diameter: Millimetre
  readonly length: Millimetre
}

export type BarChoice =
  | {
      readonly ok: true
      readonly form: BarForm
      readonly bar: BarSize
      readonly lower: Millimetre
      readonly upper: Millimetre
      /** On diameter, what must come off and what does at the thinnest bar. */
      readonly allowance: Millimetre
      readonly spare: Millimetre
      readonly because: readonly string[]
    }
  | { readonly ok: false; readonly reason: string }

/**
 * The smallest listed bar that cleans up: at its lower limit it must still be over the turned diameter by the allowance.
 * Where two forms come in that size, the cheaper one. The uses of the formulas for the bar chosen go into the notebook.
 */
export function chooseBar({ group, diameter, length }: BarNeed, notebook: Notebook): BarChoice {
  const forms = BAR_FORMS[group]
  const best = forms
    .flatMap(form => {
      const bar = form.sizes.find(
        size => spareOf({ form, bar: size, diameter, length, notebook: openNotebook() }).spare >= 0,
      )
      return bar ? [{ form, bar }] : []
    })
    .toSorted((a, b) => a.bar.diameter - b.bar.diameter)[0]
  if (!best) {
    const largest = Math.max(...forms.flatMap(form => form.sizes.map(size => size.diameter)))
    return { ok: false, reason: `no listed bar up to ${largest} mm cleans up at ${round(diameter)} mm` }
  }
  const { form, bar } = best
  const { allowance, spare } = spareOf({ form, bar, diameter, length, notebook })
  const lower = bar.diameter - bar.below
  return {
    ok: true,
    form,
    bar,
    lower,
    upper: bar.diameter + bar.above,
    allowance,
    spare,
    because: [
      `Ø${round(diameter)} after rough turning and ${round(allowance)} on diameter for the skin ask for ` +
        `Ø${round(diameter + allowance)}; a Ø${bar.diameter} bar has at least ${round(lower)}`,
      ...smallerFails(form, bar, diameter, length),
    ],
  }
}

const OVERHANG = worked('blank out of the chuck, longest')

const round = (millimetre: Millimetre): number => Number(millimetre.toFixed(2))

/** What the thinnest bar of the size has over the turned diameter and the allowance. */
function spareOf({
  form,
  bar,
  diameter,
  length,
  notebook,
}: {
  readonly form: BarForm
  readonly bar: BarSize
  readonly diameter: Millimetre
  readonly length: Millimetre
  readonly notebook: Notebook
}) {
  const about = { about: 'bar' }
  const setting = rowFor(CHUCK_SETTING, bar.diameter)
  const epsilon = (form.surface === 'rough' ? setting?.hotRolled : setting?.machined) ?? 0
  const book = fromHandbook(form.source)
  const given = { ...told(fromHandbook(SURFACE_SOURCE), { D_c: form.bow }), ...told(OVERHANG, { L: length }) }
  const rho_1 = notebook.use(barBow, given, about)
  const rho_2 = notebook.use(centringError, told(book, { T_b: micrometres(bar.above + bar.below) }), about)
  const rho = notebook.use(spatialDeviation, { rho_1, rho_2 }, about)
  const surface = told(fromHandbook(SURFACE_SOURCE), { Rz: form.Rz, T: form.T })
  const set = told(fromHandbook(CHUCK_SETTING_SOURCE), { epsilon })
  const cleanUp = millimetres(notebook.use(allowanceOfRevolution, { ...surface, rho, ...set }, about))
  const skin = notebook.use(skinAllowance, told(fromHandbook(SKIN_SOURCE), { s: bar.skin }), about)
  const defects = form.rolled ? notebook.use(rolledDefectAllowance, told(book, { d: bar.diameter }), about) : 0
  const allowance = Math.max(cleanUp, skin, defects)
  return { allowance, spare: bar.diameter - bar.below - diameter - allowance }
}

/** Why the next smaller bar of the same form will not do. */
function smallerFails(form: BarForm, bar: BarSize, diameter: Millimetre, length: Millimetre): readonly string[] {
  const smaller = form.sizes[form.sizes.indexOf(bar) - 1]
  if (!smaller) return []
  const { spare } = spareOf({ form, bar: smaller, diameter, length, notebook: openNotebook() })
  return [`Ø${smaller.diameter} would be ${round(-spare)} short`]
}
