import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { SERVICE_MARGIN, type ThroughHardened, throughHardened } from '../handbook/through-hardening.ts'
import { fromHandbook, known, named } from '../known.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Shop } from '../shop/shop.ts'
import { thinnestWall } from '../wall.ts'
import type { Notebook } from '../working.ts'
import { growthIn } from './case-growth.ts'
import { gradeFindings } from './case-order-checks.ts'
import { chooseQuench, quenchFindings } from './choose-quench.ts'
import { chooseTemper, rockwellAsked, runsHot, type Temper } from './choose-temper.ts'
import type { QuenchPlan } from './quench-plan.ts'
import { recordFindings, recordUses } from './records.ts'

/** Hardening through has no depth; the records of a works are chosen by process, grade and firm alone. */
const NO_DEPTH = 0

/** What the hardener is asked for where the part is hardened right through; findings instead where that cannot be had. */
export function planQuench(
  notebook: Notebook,
  part: Part,
  shop: Shop,
): { readonly quench?: QuenchPlan; readonly findings: readonly Finding[] } {
  const { grade } = part.material
  const row = throughHardened(grade)
  const chosen = gradeFindings(part, { process: 'through hardening', column: 'through harden' })
  if (!row) return { findings: [...chosen, gradeUnknown(part)] }
  const temper = chooseTemper(part)
  const quench = chooseQuench(part)
  if (!temper || !quench) return { findings: [...chosen, tooHard(part, row)] }
  const HRC = rockwellAsked(part)
  const HV = part.hardening?.hardness?.least
  const growth = growthIn({ notebook, part, shop, depth: NO_DEPTH })
  const { least, most } = row.stressRelief
  return {
    quench: {
      process: part.hardening?.process ?? '',
      quench,
      ...(HRC !== undefined && HV !== undefined && { asked: { HRC, HV } }),
      expected: temper.hardness,
      temper: temper.at,
      stabilised: temper.stabilised,
      runsTo: row.runsTo ?? temper.at - SERVICE_MARGIN,
      austenite: row.austenite,
      hardening: row.hardening,
      medium: row.medium,
      stressRelief: { least, aim: (least + most) / 2, most },
      ...(part.material.hardness !== undefined && { barHardness: part.material.hardness }),
      growth,
      records: recordUses(part, shop, NO_DEPTH),
      basis: [
        named('temper', known(temper.at, '°C', fromHandbook(row.source))),
        named('hardness after the temper', known(temper.hardness, 'HRC', fromHandbook(row.source))),
        named('ovality from the quench', known(quench.ovality.nominal, 'mm', fromHandbook(quench.source))),
      ],
    },
    findings: [
      ...chosen,
      ...quenchFindings(part),
      ...throughFindings(part, row),
      ...temperatureFindings(part, row),
      ...serviceFindings(part, row, temper),
      ...recordFindings(shop, { part, growth, depth: NO_DEPTH }),
    ],
  }
}

const gradeUnknown = (part: Part): Finding =>
  partFinding({
    part,
    severity: 'error',
    code: 'case/grade-unknown',
    path: '/material/grade',
    message: `the handbook has no hardness after quench and temper for ${part.material.grade}`,
    hint: 'take 100Cr6, 100CrMo7, C60 or X46Cr13, or give the part a case',
  })

const tooHard = (part: Part, { tempers, source }: ThroughHardened): Finding =>
  partFinding({
    part,
    severity: 'error',
    code: 'case/process-refused',
    path: '/hardening/hardness',
    message: `${fixed(rockwellAsked(part) ?? 0, 0)} HRC of ${part.material.grade} is not kept ${runsHot(part) ? 'by a liner, which runs hot: tempered at 230 °C or more, or it grows and softens in service' : 'after a temper at 150 °C or more'} (${source})`,
    hint: `ask for less: ${tempers.map(({ temper, hardness }) => `${hardness} HRC at ${temper} °C`).join(', ')}${runsHot(part) ? '; or nitride it' : ''}`,
  })

/** A wall beyond what the grade hardens to the middle. */
function throughFindings(part: Part, { through, source }: ThroughHardened): readonly Finding[] {
  const solid = part.bore.length === 0
  const thick = solid ? Math.max(...part.outside.map(({ size }) => size.nominal)) : thinnestWall(part)
  const most = solid ? through.solid : through.wall
  if (thick <= most) return []
  return [
    partFinding({
      part,
      severity: solid ? 'warning' : 'error',
      code: solid ? 'case/process-limited' : 'case/process-refused',
      path: '/material/grade',
      message: `${part.material.grade} hardens through ${solid ? 'to Ø' : 'a wall of '}${most} mm; ${solid ? 'this pin is Ø' : 'this one is '}${fixed(thick, 1)} (${source})`,
      hint: solid
        ? 'the middle stays softer: agree it, or take a grade that hardens deeper'
        : 'take a grade that hardens deeper',
    }),
  ]
}

function temperatureFindings(part: Part, { hardening: { least, most } }: ThroughHardened): readonly Finding[] {
  const asked = part.hardening?.temperature
  if (asked === undefined || (asked >= least && asked <= most)) return []
  return [
    partFinding({
      part,
      severity: 'error',
      code: 'case/temperature-outside-process',
      path: '/hardening/temperature',
      message: `${part.material.grade} is hardened from ${least} to ${most} °C, not from ${fixed(asked, 0)} °C`,
      hint: `write a temperature from ${least} to ${most}, or leave it out`,
    }),
  ]
}

/** Over its temper less 50 °C what is hardened through grows and softens. */
function serviceFindings(part: Part, row: ThroughHardened, { at, stabilised }: Temper): readonly Finding[] {
  const runsTo = row.runsTo ?? at - SERVICE_MARGIN
  return [
    partFinding({
      part,
      severity: runsHot(part) ? 'warning' : 'note',
      code: 'case/process-limited',
      path: '/hardening/process',
      message: `hardened through and tempered at ${at} °C${stabilised ? ', its austenite broken down,' : ''} it may run at ${fixed(runsTo, 0)} °C at most (${row.source}): hotter, it grows and softens`,
      hint: 'measure how hot it runs; nitride what runs hotter',
    }),
  ]
}
