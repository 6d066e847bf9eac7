import { DISTORTION, type Distortion } from '../handbook/distortion.ts'
import { faceTilt, formError, sumOfEccentricities } from '../handbook/stock-at-worst-place.ts'
import { QUENCHED_SET_UP } from '../handbook/through-hardening.ts'
import { chooseQuench } from '../hardening/choose-quench.ts'
import { hardenedOn } from '../hardening/records.ts'
import { type Figure, fromHandbook, fromPart, type Known, known, named, none } from '../known.ts'
import type { Part } from '../part/part.ts'
import { hardensThrough } from '../part/takes-case.ts'
import type { SurfaceKind } from '../place.ts'
import { hardeningPurpose } from '../route/hard-tasks.ts'
import type { Operation } from '../route/operation.ts'
import { habit } from '../shop/habit.ts'
import { chooseMeasured, type MeasuredOn, measuredFor, measuredOrigin } from '../shop/measured.ts'
import type { Measured } from '../shop/record.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, reckoned } from '../working.ts'

/** Radial: how far the surface is off the axis it is cut about, how far it is out of true, and what both rest on. */
export type SetUpError = {
  readonly eccentricity: Known<'mm'>
  readonly form: Known<'mm'>
  readonly rests: readonly Figure[]
}

/** Errors of one finishing operation, each taken from measurement, the shop file or common practice, and noted so. */
export function setUpError({
  notebook,
  part,
  shop,
  operations,
  operation,
  kind,
  surface,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly operations: readonly Operation[]
  readonly operation: Operation
  readonly kind: SurfaceKind
  readonly surface: string
}): SetUpError {
  const about = { operation: operation.number, about: surface }
  const length = known(part.length.nominal, 'mm', fromPart('/body/length'))
  if (operation.process === 'lap') return followed(notebook, usualFigures(DISTORTION.fineGround, length), about)
  if (operation.process === 'hone') {
    if (operation.locatedAs === 'ground') return followed(notebook, usualFigures(DISTORTION.ground, length), about)
    // Hardened and honed alone, it is as far out of true as it came from the furnace.
    const before = part.hardening
      ? distortionBefore({ notebook, part, shop, operations, about })
      : usualFigures(DISTORTION.fineBored, length)
    return followed(notebook, before, about)
  }
  const [between, holding] = locatingFigures(part, shop, operation, kind)
  const eccentricity = reckoned(notebook, sumOfEccentricities, { e_1: between, e_2: holding }, about)
  const { ovality, bow } = distortionBefore({ notebook, part, shop, operations, about })
  const counted = [between, holding].filter(({ value }) => value > 0)
  if (kind !== 'face') {
    const form = reckoned(notebook, formError, { o: ovality, b: bow }, about)
    return { eccentricity, form, rests: [...counted, ovality, bow] }
  }
  const top = part.outside[0]
  const D = known(top?.size.nominal ?? 0, 'mm', fromPart(top?.path ?? ''))
  return {
    eccentricity,
    form: reckoned(notebook, faceTilt, { b: bow, D, L: length }, about),
    rests: [...counted, bow],
  }
}

type About = { readonly operation: number; readonly about: string }

/** A hone or a lap follows the surface that it finds: nothing is off centre, and what is out of true stays so. */
function followed(notebook: Notebook, { ovality, bow }: OutOfTrue, about: About): SetUpError {
  return {
    eccentricity: none('the tool follows the surface'),
    form: reckoned(notebook, formError, { o: ovality, b: bow }, about),
    rests: [ovality, ...(bow.value > 0 ? [bow] : [])],
  }
}

/** Between the surface that locates and the surface cut, and of what holds the part. */
function locatingFigures(
  part: Part,
  shop: Shop,
  operation: Operation,
  kind: SurfaceKind,
): readonly [Figure<'mm'>, Figure<'mm'>] {
  const from = (
    figure: string,
    key: 'turnedOutsideToBore' | 'boreGrindingRunout' | 'mandrelRunout' | 'chuckRunout',
    process?: 'turn' | 'grind',
  ): Figure<'mm'> => {
    const row = process && measuredFor(shop, { process, grade: part.material.grade }, 'eccentricity')
    return named(figure, row ? known(row.eccentricity, 'mm', measuredOrigin(row)) : habit(shop, key, 'mm'))
  }
  const nothing = (why: string): Figure<'mm'> => named('', none(why))
  const turned = () => from('turned outside to bore', 'turnedOutsideToBore', 'turn')
  if (kind === 'face') return [nothing('a face has no axis'), from('run-out of the chuck', 'chuckRunout')]
  // On a work blade the pin runs on the very surface that is ground (memory: Kovan, self-centred work sets itself true).
  if (operation.heldIn === 'work blade')
    return [nothing('runs on the surface that is ground'), nothing('runs on the surface that is ground')]
  // Turned and ground between the same centres there is nothing between the two.
  if (operation.heldIn === 'centres')
    return [
      nothing('turned and ground between the same centres'),
      from('run-out of the centres', 'mandrelRunout', 'grind'),
    ]
  if (operation.heldIn === 'mandrel') return [turned(), from('run-out of the mandrel', 'mandrelRunout', 'grind')]
  return [
    operation.locatedAs === 'ground' ? from('ground outside to its axis', 'boreGrindingRunout') : turned(),
    from('run-out of the chuck', 'chuckRunout', 'grind'),
  ]
}

/** Out of true as the part comes to be finished, the bow over its length. */
type OutOfTrue = { readonly ovality: Figure<'mm'>; readonly bow: Figure<'mm'> }

const usualFigures = ({ ovality, bow, source }: Distortion, length: Known<'mm'>): OutOfTrue => ({
  ovality: named('ovality', known(ovality, 'mm', fromHandbook(source))),
  bow: named('bow', known((bow * length.value) / 100, 'mm', fromHandbook(source))),
})

function usualDistortion(part: Part, relieved: boolean): Distortion {
  const { hardening, kind } = part
  if (!hardening) return DISTORTION.turned
  const quench = chooseQuench(part)
  if (quench) {
    const cased = kind === 'pin' ? DISTORTION.quenchedPin : DISTORTION.quenchedSleeve
    const through = hardensThrough(part)
    const bow = through ? QUENCHED_SET_UP.bow : cased.bow
    return {
      condition: `${through ? 'hardened through' : hardening.process}, quenched ${quench.called}`,
      ovality: quench.ovality.nominal,
      bow,
      source: `${quench.source}; bow ${bow} for each 100 mm`,
    }
  }
  if (hardeningPurpose(hardening.process) === 'nitride')
    return relieved ? DISTORTION.stressRelieved : DISTORTION.notStressRelieved
  return kind === 'pin' ? DISTORTION.quenchedPin : DISTORTION.quenchedSleeve
}

/** A works may know how its pieces come back from hardening and have no record of it. */
function knownOf({ hardening }: Part, { habits }: Shop, key: 'ovality' | 'bow'): Figure<'mm'> | undefined {
  const value = habits[key]
  if (!hardening || value === undefined) return undefined
  return named(key, known(value, 'mm', { from: 'shop', source: `shop file: habits/${key}` }))
}

/** An axis bends with the square of the length. */
function bowOn(part: Part, row: Measured & { readonly bow: Millimetre }): Known<'mm'> {
  const origin = measuredOrigin(row)
  const share = row.length === undefined ? 1 : (part.length.nominal / row.length) ** 2
  if (Math.abs(share - 1) < 1e-9) return known(row.bow, 'mm', origin)
  const source = `${origin.source}, on ${row.length} mm: times ${share.toFixed(3)}, the square of the lengths`
  return known(row.bow * share, 'mm', { ...origin, source })
}

/** What the works measured goes before what it knows, and that before what is usual. */
function distortionBefore({
  notebook,
  part,
  shop,
  operations,
  about,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly operations: readonly Operation[]
  readonly about: About
}): OutOfTrue {
  const relieved = operations.some(({ purpose }) => purpose === 'stress-relieve')
  const distortion = usualDistortion(part, relieved)
  const usual = usualFigures(distortion, known(part.length.nominal, 'mm', fromPart('/body/length')))
  const on: MeasuredOn = hardenedOn(part, shop) ?? { process: 'turn', grade: part.material.grade }
  const { row: oval } = chooseMeasured(shop, on, 'ovality')
  const { row: bowed, passedOver } = chooseMeasured(shop, { ...on, length: part.length.nominal }, 'bow')
  const used: OutOfTrue = {
    ovality: oval
      ? named('ovality', known(oval.ovality, 'mm', measuredOrigin(oval)))
      : (knownOf(part, shop, 'ovality') ?? usual.ovality),
    bow: bowed ? named('bow', bowOn(part, bowed)) : (knownOf(part, shop, 'bow') ?? usual.bow),
  }
  const note = (symbol: string, meaning: string, { value, unit, from, source }: Known) =>
    notebook.note({
      ...about,
      symbol,
      meaning: from === 'measured' ? meaning : `${meaning}, ${distortion.condition}`,
      value,
      unit,
      expression: '',
      source,
    })
  note('o', 'ovality, largest less smallest diameter', used.ovality)
  note('b', 'bow of the axis over the length', used.bow)
  if (!bowed)
    for (const { row, why } of passedOver)
      note('b', `bow passed over: ${why}`, known(row.bow ?? 0, 'mm', measuredOrigin(row)))
  return used
}
