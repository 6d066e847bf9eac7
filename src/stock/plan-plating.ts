import { fixed } from '../figures.ts'
import type { Finding, Severity } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'
import { hardeningChoice } from '../handbook/hardening-choice.ts'
import { BAKE, BAKE_SOURCE, bakeHours } from '../handbook/hydrogen-bake.ts'
import { MANGANESE_PHOSPHATE } from '../handbook/phosphate.ts'
import {
  boreAsPlated,
  boreBeforePlating,
  outsideAsPlated,
  outsideBeforePlating,
  type Plating,
  platingOf,
} from '../handbook/plating.ts'
import { type Limits, shifted } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Celsius, Hour, Millimetre, Vickers } from '../units.ts'
import { openNotebook, type Working } from '../working.ts'

export type PlatingRequest = {
  readonly surface: string
  readonly kind: 'outside' | 'bore'
  readonly coating: Plating['coating']
  readonly finished: Limits
  /** Left per side when finished; left out, what is usual. */
  readonly thickness?: Millimetre
  /** Honed or ground off per side; left out, what is usual. */
  readonly honeStock?: Millimetre
  /** Broken on the port edges before plating. */
  readonly portChamfer?: Millimetre
  /** Of the case underneath, where there is one. */
  readonly caseHardness?: Vickers
  /** Pointer into the part file, for findings. */
  readonly path: string
}

export type PlannedPlating = {
  readonly surface: string
  readonly coating: Plating['coating']
  readonly thickness: Millimetre
  readonly honeStock: Millimetre
  /** Per side, negative: the metal goes on. */
  readonly stockBeforePlating: Millimetre
  /** To the finished tolerance and form, since plating copies what it finds. */
  readonly beforePlating: Limits
  readonly asPlated: Limits
  /** After plating; nought where none is needed. */
  readonly bake: { readonly hours: Hour; readonly least: Celsius; readonly most: Celsius; readonly startWithin: Hour }
  readonly honedWith: string
  readonly ringPartner: string
}

/** Sizes of a plated surface, its bake, and what to look out for. */
export function planPlating(
  part: Part,
  request: PlatingRequest,
): { readonly plating: PlannedPlating; readonly findings: readonly Finding[]; readonly workings: readonly Working[] } {
  const { surface, coating, kind, finished } = request
  const row = platingOf(coating)
  if (!row) throw new RangeError(`no figures for plating with ${coating}`)
  const notebook = openNotebook()
  const about = { about: `${surface}, ${coating}` }
  const t = request.thickness ?? row.thickness.usual
  const s = request.honeStock ?? row.honeStock.usual
  const size = finished.nominal
  const before =
    kind === 'bore'
      ? notebook.use(boreBeforePlating, { d: size, t }, about)
      : notebook.use(outsideBeforePlating, { D: size, t }, about)
  const plated =
    kind === 'bore'
      ? notebook.use(boreAsPlated, { d_pre: before, t, s }, about)
      : notebook.use(outsideAsPlated, { D_pre: before, t, s }, about)
  const hours = bakeHours(part.material.hardness ?? 0, request.caseHardness)
  notebook.note({
    ...about,
    symbol: 't_bake',
    meaning: 'least bake after plating',
    value: hours,
    unit: 'h',
    expression: `${BAKE.temperature.least} to ${BAKE.temperature.most} °C, begun within ${BAKE.startWithin} h`,
    source: BAKE_SOURCE,
  })
  return {
    plating: {
      surface,
      coating,
      thickness: t,
      honeStock: s,
      stockBeforePlating: -t,
      beforePlating: shifted(finished, before - size),
      asPlated: shifted(finished, plated - size),
      bake: { hours, ...BAKE.temperature, startWithin: BAKE.startWithin },
      honedWith: row.honedWith,
      ringPartner: row.ringPartner,
    },
    findings: platingFindings(part, request, row, t, hours),
    workings: notebook.workings,
  }
}

function platingFindings(
  part: Part,
  { surface, coating, path, portChamfer, caseHardness }: PlatingRequest,
  { thickness, portChamfer: chamfer, source }: Plating,
  t: Millimetre,
  hours: Hour,
): readonly Finding[] {
  const raise = (severity: Severity, code: FindingCode, message: string, hint: string): Finding => ({
    code,
    severity,
    message,
    at: placeOf(part, path),
    hint,
  })
  const findings: Finding[] = []
  const column = coating === 'hard chrome' ? 'hard chrome' : 'nickel silicon carbide'
  const choice = hardeningChoice(part.material.grade, column)
  if (choice && choice.choice !== 'OK')
    findings.push(
      raise(
        choice.choice === 'NO' ? 'error' : 'warning',
        'plating/material',
        `${coating} on ${part.material.grade} is ${choice.choice === 'NO' ? 'refused' : 'done with limits only'} (${choice.source})`,
        'agree it with the plater before the bar is bought',
      ),
    )
  if (t < thickness.least - 1e-9 || t > thickness.most + 1e-9)
    findings.push(
      raise(
        'warning',
        'plating/thickness',
        `${fixed(t, 3)} mm of ${coating} a side on ${surface}; ${thickness.least} to ${thickness.most} mm is usual (${source})`,
        'agree the thickness with the plater',
      ),
    )
  if (part.ports.length > 0 && (portChamfer ?? 0) < chamfer.least)
    findings.push(
      raise(
        'warning',
        'plating/port-edges',
        `the port edges of ${surface} are not broken ${chamfer.least} mm before plating: ${coating} builds up on an edge and flakes`,
        `break every port edge ${chamfer.least} to ${chamfer.most} mm before plating`,
      ),
    )
  if (caseHardness !== undefined)
    findings.push(
      raise(
        'warning',
        'plating/on-case',
        `${coating} over a case of ${fixed(caseHardness, 0)} HV: it holds only where the compound layer is gone, and by agreement`,
        'grind or hone the compound layer off first, and tell the plater that the part is hardened',
      ),
    )
  if (part.material.hardness === undefined && caseHardness === undefined)
    findings.push(
      raise(
        'error',
        'plating/bake-unknown',
        `the hardness of ${part.material.grade} is not given: whether ${surface} must be baked after plating cannot be told`,
        'write the hardness of the bar',
      ),
    )
  if (hours > 0)
    findings.push(
      raise(
        part.hardening?.process === 'carburising' ? 'warning' : 'note',
        'plating/bake',
        `bake ${surface} ${hours} h or more after plating at ${BAKE.temperature.least} to ${BAKE.temperature.most} °C, begun within ${BAKE.startWithin} h (${BAKE_SOURCE})`,
        part.hardening?.process === 'carburising'
          ? 'a case tempered at 150 to 180 °C softens there: agree a cooler and longer bake with the plater'
          : 'put it on the order, and ask for the chart; the standard that the plater works to decides',
      ),
    )
  return findings
}

/** Manganese phosphate for running in, where the grade takes it badly. */
export function phosphateFindings(part: Part, path: string): readonly Finding[] {
  const choice = hardeningChoice(part.material.grade, 'manganese phosphate')
  if (!choice || choice.choice === 'OK') return []
  return [
    {
      code: 'plating/phosphate',
      severity: 'warning',
      message: `manganese phosphate on ${part.material.grade}: ${choice.why ?? `it forms poorly over ${MANGANESE_PHOSPHATE.chromium} % chromium`}`,
      at: placeOf(part, path),
      hint: 'try a coupon first, or run in without',
    },
  ]
}
