import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { outOfRange } from '../formula.ts'
import {
  STRESS_RELIEF_MARGINS,
  stressReliefCeiling,
  stressReliefFloor,
  TEMPER_MARGIN,
} from '../handbook/stress-relief.ts'
import { equivalentTemper, USUAL_TEMPER_TIME } from '../handbook/temper.ts'
import { temperEstimates } from '../handbook/temper-response.ts'
import { fromHandbook, fromPart, told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Celsius, Hour } from '../units.ts'
import type { Notebook } from '../working.ts'

export type StressReliefWindow = { readonly least: Celsius; readonly most: Celsius; readonly chosen: Celsius }

const PRACTICE = fromHandbook('common practice, no source')
const CARDS = fromHandbook('steel cards of 42CrMo4 and 34CrAlNi7-10 (Lucefin)')
const CERTIFICATE = fromPart('/material/temper')
const HOTTEST = worked('hottest stage of the cycle')
const LASTS = worked('longest time of the cycle')

/** Hot enough that nitriding releases nothing more, cool enough that the temper stays. The middle is aimed at: a furnace holds neither end. */
export function stressReliefIn(
  notebook: Notebook,
  part: Part,
  nitriding: Celsius,
  temper: Celsius,
): StressReliefWindow | Finding {
  const about = { about: 'stress relief' }
  const least = notebook.use(
    stressReliefFloor,
    { ...told(HOTTEST, { T_n: nitriding }), ...told(PRACTICE, { m: STRESS_RELIEF_MARGINS.overNitriding }) },
    about,
  )
  const most = notebook.use(
    stressReliefCeiling,
    { ...told(CERTIFICATE, { T_t: temper }), ...told(CARDS, { m: STRESS_RELIEF_MARGINS.underTemper }) },
    about,
  )
  if (most >= least) return { least, most, chosen: (least + most) / 2 }
  // Nearer to the temper than the cards say, and still under it: the coolest that does is taken, and said.
  if (temper - least >= STRESS_RELIEF_MARGINS.leastUnderTemper) return { least, most: least, chosen: least }
  return partFinding({
    part,
    severity: 'error',
    code: 'case/stress-relief-window',
    path: '/material/temper',
    message: `no stress-relief temperature: it must be ${fixed(least, 0)} °C or more for nitriding at ${fixed(nitriding, 0)} °C, and ${fixed(most, 0)} °C or less for a temper of ${fixed(temper, 0)} °C`,
    hint: `nitride at ${fixed(most - STRESS_RELIEF_MARGINS.overNitriding, 0)} °C or less, or buy bar tempered at ${fixed(least + STRESS_RELIEF_MARGINS.underTemper, 0)} °C or more`,
  })
}

/** No window at all, or one that is nearer to the temper than the steel cards keep it. */
export function reliefFindings(part: Part, relief: StressReliefWindow | Finding, temper: Celsius): readonly Finding[] {
  if ('code' in relief) return [relief]
  const under = temper - relief.most
  if (under >= STRESS_RELIEF_MARGINS.underTemper - 1e-9) return []
  return [
    partFinding({
      part,
      severity: 'warning',
      code: 'case/stress-relief-near-temper',
      path: '/material/temper',
      message: `stress relief at ${fixed(relief.most, 0)} °C is ${fixed(under, 0)} K under the temper of ${fixed(temper, 0)} °C; ${STRESS_RELIEF_MARGINS.underTemper} K is usual`,
      hint: `have the furnace keep to it within 5 K and look at the bar's hardness after, or buy bar tempered at ${fixed(relief.least + STRESS_RELIEF_MARGINS.underTemper, 0)} °C or more`,
    }),
  ]
}

/** The temper that a bar must have so that stress relief over nitriding leaves it alone: what to buy where none is given. */
export const temperWanted = (nitriding: Celsius): Celsius =>
  nitriding + STRESS_RELIEF_MARGINS.overNitriding + STRESS_RELIEF_MARGINS.underTemper

export function temperUnknown(part: Part, nitriding: Celsius): Finding {
  const { grade, hardness } = part.material
  const estimates = hardness === undefined ? undefined : temperEstimates(grade, hardness)
  const apart = estimates
    ? `; published tables for ${fixed(hardness ?? 0, 0)} HV give ${estimates.map(({ temper }) => `${fixed(temper, 0)} °C`).join(' and ')}, too far apart to choose`
    : ''
  return partFinding({
    part,
    severity: 'warning',
    code: 'case/temper-unknown',
    path: '/material',
    message: `the tempering temperature of the ${grade} bar is not given: planned for a bar tempered at ${fixed(temperWanted(nitriding), 0)} °C or more, which nitriding does not soften`,
    hint: `ask for it when the bar is bought, read it from the certificate and write it under temper${apart}`,
  })
}

/** Margin of the temper over the cycle, by temperature and by temperature with time. */
export function temperFindings({
  notebook,
  part,
  nitriding,
  hours,
  temper,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly nitriding: Celsius
  readonly hours: Hour
  readonly temper: Celsius
}): readonly Finding[] {
  const margin = temper - nitriding
  const findings: Finding[] = []
  if (margin < TEMPER_MARGIN.usual) {
    findings.push(
      partFinding({
        part,
        severity: margin < TEMPER_MARGIN.least ? 'error' : 'warning',
        code: 'case/temper-margin',
        path: '/material/temper',
        message: `the temper of ${fixed(temper, 0)} °C is ${fixed(margin, 0)} K over nitriding at ${fixed(nitriding, 0)} °C; ${TEMPER_MARGIN.usual} K is usual and ${TEMPER_MARGIN.least} K the least`,
        hint: `nitride at ${fixed(temper - TEMPER_MARGIN.usual, 0)} °C or less, or buy bar tempered at ${fixed(nitriding + TEMPER_MARGIN.usual, 0)} °C or more`,
      }),
    )
  }
  const given = { T: nitriding, t: hours, t_0: USUAL_TEMPER_TIME }
  const [beyond] = outOfRange(equivalentTemper, given)
  if (beyond) {
    const message = `what nitriding does to the core cannot be told: ${beyond.symbol} is ${fixed(beyond.value, 0)} ${beyond.unit}, and the formula holds for ${beyond.allowed}`
    const hint = 'ask for less depth, or a steel that nitrides deeper'
    const path = '/hardening/depth'
    return [...findings, partFinding({ part, severity: 'error', code: 'case/core-softens', path, message, hint })]
  }
  const equivalent = notebook.use(
    equivalentTemper,
    {
      ...told(HOTTEST, { T: nitriding }),
      ...told(LASTS, { t: hours }),
      ...told(PRACTICE, { t_0: USUAL_TEMPER_TIME }),
    },
    { about: 'core' },
  )
  if (equivalent > temper) {
    findings.push(
      partFinding({
        part,
        severity: 'warning',
        code: 'case/core-softens',
        path: '/material/temper',
        message: `${fixed(hours, 0)} h at ${fixed(nitriding, 0)} °C soften like a ${USUAL_TEMPER_TIME} h temper at ${fixed(equivalent, 0)} °C, above the bar's ${fixed(temper, 0)} °C: the core loses hardness`,
        hint: `nitride cooler or shallower, or buy bar tempered at ${fixed(Math.ceil(equivalent / 5) * 5, 0)} °C or more`,
      }),
    )
  }
  return findings
}
