import { fixed } from '../figures.ts'
import type { Finding, Severity } from '../finding.ts'
import type { FindingCode } from '../finding-code.ts'
import { hardeningChoice } from '../handbook/hardening-choice.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import { type Part, placeOf } from '../part/part.ts'
import { takesCase } from '../part/takes-case.ts'
import { chamferOf } from '../route/plating-needs.ts'
import type { Hour, Millimetre } from '../units.ts'
import { bakeFindings } from './plating-bake-findings.ts'
import type { PlatingSizes } from './plating-sizes.ts'

type Raised = {
  readonly severity: Severity
  readonly code: FindingCode
  readonly key: string
  readonly message: string
  readonly hint: string
}
type Raise = (raised: Raised) => Finding

const raiser =
  (part: Part): Raise =>
  ({ severity, code, key, message, hint }) => ({
    code,
    severity,
    message,
    at: placeOf(part, key.startsWith('/') ? key : `${part.plating?.path}/${key}`),
    hint,
  })

const mm = (value: number): string => fixed(value, 3)

/** How honing after plating was judged: what of its margins the findings speak of. */
export type JudgedHone = {
  readonly verdict: 'ok' | 'marginal' | 'thin' | 'deep' | 'impossible'
  readonly margin: { readonly cleanUp: Millimetre }
  readonly perSide: { readonly least: Millimetre; readonly needed: Millimetre }
}

/** What speaks against a plating, or must be agreed before the bar is bought. */
export function platingFindings({
  part,
  order,
  sizes,
  hone,
  hours,
}: {
  readonly part: Part
  readonly order: CasePlan | undefined
  readonly sizes: PlatingSizes
  readonly hone: JudgedHone
  readonly hours: Hour
}): readonly Finding[] {
  const raise = raiser(part)
  return [
    ...materialFindings(part, sizes, raise),
    ...thicknessFindings(sizes, hone, raise),
    ...honeFindings(sizes, hone, raise),
    ...edgeFindings(part, sizes, raise),
    ...hardnessFindings(sizes, raise),
    ...caseFindings(part, order, sizes, raise),
    ...bakeFindings(part, hours),
  ]
}

function materialFindings({ material }: Part, { asked }: PlatingSizes, raise: Raise): readonly Finding[] {
  const judged = hardeningChoice(material.grade, asked.process)
  if (!judged) {
    return [
      raise({
        severity: 'warning',
        code: 'plating/material',
        key: 'process',
        message: `the handbook does not say how ${material.grade} takes ${asked.process}`,
        hint: 'agree it with the plater before the bar is bought',
      }),
    ]
  }
  if (judged.choice === 'OK') return []
  const refused = judged.choice === 'NO'
  return [
    raise({
      severity: refused ? 'error' : 'warning',
      code: 'plating/material',
      key: 'process',
      message: `${asked.process} on ${material.grade} is ${refused ? 'refused' : 'done with limits only'}${judged.why ? `: ${judged.why}` : ''} (${judged.source})`,
      hint: refused ? 'choose another base or another plating' : 'agree it with the plater before the bar is bought',
    }),
  ]
}

function thicknessFindings(sizes: PlatingSizes, hone: JudgedHone, raise: Raise): readonly Finding[] {
  const { asked, row, left } = sizes
  const aim = sizes.aim.value
  const { least, most } = asked.thickness
  const findings: Finding[] = []
  if (aim < row.thickness.least - 1e-9 || aim > row.thickness.most + 1e-9) {
    findings.push(
      raise({
        severity: 'warning',
        code: 'plating/thickness',
        key: 'thickness',
        message: `${mm(aim)} mm of ${asked.process} a side on ${asked.surface}; ${row.thickness.least} to ${row.thickness.most} mm is usual (${row.source})`,
        hint: 'agree the thickness with the plater',
      }),
    )
  }
  if (hone.verdict === 'impossible') {
    findings.push(
      raise({
        severity: 'error',
        code: 'stock/impossible',
        key: 'thickness',
        message: `${asked.surface}: sizes and bath let the plating left come out anywhere from ${mm(left.least)} to ${mm(left.most)} mm a side; no sizes hold it from ${mm(least)} to ${mm(most ?? 0)} mm`,
        hint: 'ask for a wider thickness, or hold the finished bore closer',
      }),
    )
  } else if (most !== undefined && left.most > most + 1e-9) {
    findings.push(
      raise({
        severity: 'warning',
        code: 'plating/too-thick',
        key: 'thickness',
        message: `${asked.surface}: at the worst place ${mm(left.most)} mm of plating is left a side and ${mm(most)} mm is allowed`,
        hint: 'aim at less, ask for a wider thickness, or hold the finished bore closer',
      }),
    )
  }
  return findings
}

function honeFindings(sizes: PlatingSizes, hone: JudgedHone, raise: Raise): readonly Finding[] {
  const { asked, row } = sizes
  const honeStock = sizes.honeStock.value
  const short = -hone.margin.cleanUp
  return [
    ...(short > 1e-9
      ? [
          raise({
            severity: 'error',
            code: 'stock/thin',
            key: '/stock/hone',
            message: `${asked.surface}, honing after plating: at the worst place ${mm(hone.perSide.least)} mm per side comes off and ${mm(hone.perSide.needed)} mm must go: ${mm(short)} mm short`,
            hint: `leave ${mm(2 * (honeStock + short))} mm on diameter or more (stock.hone)`,
          }),
        ]
      : []),
    ...(honeStock > row.honeStock.most + 1e-9
      ? [
          raise({
            severity: 'warning',
            code: 'plating/hone-stock',
            key: '/stock/hone',
            message: `${mm(honeStock)} mm a side is plated on ${asked.surface} to be honed off again; ${row.honeStock.least} to ${row.honeStock.most} mm is usual (common practice)`,
            hint: 'hold the finished bore closer, or leave less',
          }),
        ]
      : []),
  ]
}

function edgeFindings(part: Part, { asked, row }: PlatingSizes, raise: Raise): readonly Finding[] {
  const { least, most } = chamferOf(asked) ?? row.portChamfer
  const usual = `${row.portChamfer.least} to ${row.portChamfer.most} mm`
  const ported = part.ports.length > 0
  return [
    ...(least < row.portChamfer.least - 1e-9
      ? [
          raise({
            severity: ported ? 'error' : 'warning',
            code: 'plating/port-edges',
            key: 'chamfer',
            message: `the ${ported ? 'port edges' : 'ends'} of ${asked.surface} are broken ${least} mm before plating: ${asked.process} builds up on an edge and flakes; ${usual} is usual (common practice)`,
            hint: `break them ${usual} before plating`,
          }),
        ]
      : []),
    ...(ported
      ? [
          raise({
            severity: 'warning',
            code: 'plating/port-timing',
            key: 'chamfer',
            message: `a chamfer of ${least === most ? least : `${least} to ${most}`} mm under the plating widens every window in ${asked.surface} by as much at each edge: a port opens that much earlier than drawn`,
            hint: 'draw the windows smaller by the chamfer, or agree with the plater on less; check the timing on the first piece',
          }),
        ]
      : []),
  ]
}

function hardnessFindings({ asked, row }: PlatingSizes, raise: Raise): readonly Finding[] {
  const least = asked.hardness?.least
  if (least === undefined || least <= row.hardness.most + 0.5) return []
  return [
    raise({
      severity: 'warning',
      code: 'plating/hardness',
      key: 'hardness',
      message: `${fixed(least, 0)} HV is asked of ${asked.process}; ${row.hardness.least === row.hardness.most ? `about ${row.hardness.most}` : `${row.hardness.least} to ${row.hardness.most}`} HV is usual (${row.hardnessOf})`,
      hint: 'ask for what the layer reaches, or agree it with the plater',
    }),
  ]
}

function caseFindings(
  part: Part,
  order: CasePlan | undefined,
  { asked }: PlatingSizes,
  raise: Raise,
): readonly Finding[] {
  if (!takesCase(part, 'bore', asked.surface)) return []
  const hard = order === undefined ? '' : ` of ${fixed(order.surfaceHardness, 0)} HV`
  return [
    raise({
      severity: 'warning',
      code: 'plating/on-case',
      key: 'surface',
      message: `${asked.process} over the case${hard} in ${asked.surface}: it holds only where the compound layer is gone, and by agreement`,
      hint: `mask ${asked.surface} in hardening, or tell the plater that the part is hardened`,
    }),
  ]
}
