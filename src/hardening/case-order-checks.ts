import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { EDGE_BREAK } from '../handbook/edge-break.ts'
import { CHOICE_SOURCE, hardeningChoice } from '../handbook/hardening-choice.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import type { Shop } from '../shop/shop.ts'
import type { Celsius, Millimetre, Vickers } from '../units.ts'
import { boreOf, treatedSides } from './case-surfaces.ts'

/** Walls up to this warp when one side alone is treated. Common practice, no source. */
const THIN_WALL = 6

/** Whether the process may be asked for on this material. */
export function choiceFindings(part: Part, window: HardeningWindow): readonly Finding[] {
  const asked = part.hardening?.hardness?.least
  if (window.term === 'SHD' && part.ports.length > 0) {
    return [
      partFinding({
        part,
        severity: 'error',
        code: 'case/process-refused',
        path: '/hardening/process',
        message:
          'induction hardening of a ported sleeve is refused: it cracks at the ports in the quench (common practice)',
        hint: 'nitride it',
      }),
    ]
  }
  return gradeFindings(part, { process: window.process, column: window.column, asked })
}

/** What the table of materials and processes says of the part's grade. */
export function gradeFindings(
  part: Part,
  {
    process,
    column,
    asked,
  }: {
    readonly process: string
    readonly column: Parameters<typeof hardeningChoice>[1]
    readonly asked?: Vickers | undefined
  },
): readonly Finding[] {
  const { grade } = part.material
  const judged = hardeningChoice(grade, column, asked)
  if (!judged || judged.choice === 'OK') return []
  const refused = judged.choice === 'NO'
  const forHardness = asked === undefined ? '' : ` for ${fixed(asked, 0)} HV`
  const why = judged.why === undefined ? '' : `: ${judged.why}`
  return [
    partFinding({
      part,
      severity: refused ? 'error' : 'warning',
      code: refused ? 'case/process-refused' : 'case/process-limited',
      path: '/hardening/process',
      message: `${process} ${grade}${forHardness} is ${refused ? 'refused' : 'done with limits only'} (${CHOICE_SOURCE})${why}`,
      hint: refused
        ? 'choose another material or another process'
        : 'agree with the hardener what it will reach before the bar is bought',
    }),
  ]
}

/** Temperature inside the process's window. */
export function temperatureFindings(part: Part, window: HardeningWindow, temperature: Celsius): readonly Finding[] {
  const { least, most } = window.temperature
  if (temperature >= least && temperature <= most) return []
  return [
    partFinding({
      part,
      severity: 'error',
      code: 'case/temperature-outside-process',
      path: '/hardening/temperature',
      message: `${window.process} runs at ${least} to ${most} °C, not at ${fixed(temperature, 0)} °C`,
      hint: `write a temperature from ${least} to ${most}, or leave it out`,
    }),
  ]
}

/** What the order must not lack. */
export function orderFindings(part: Part, shop: Shop, wall: Millimetre): readonly Finding[] {
  const findings: Finding[] = []
  const sides = treatedSides(part)
  // Alike on both sides they move with the rings above and below: the shell of bands has it so, free of hoop force.
  const bars =
    part.ports.length > 0 ? ', and its bars between windows by several micrometres more, which is not reckoned' : ''
  if (boreOf(part) && sides.outside !== sides.bore && wall <= THIN_WALL) {
    findings.push(
      partFinding({
        part,
        severity: 'warning',
        code: 'case/one-sided',
        path: '/hardening',
        message: `only the ${sides.outside ? 'outside' : 'bore'} of a ${fixed(wall, 2)} mm wall is treated: a one-sided case bends a thin sleeve${bars}`,
        hint: 'treat both sides, or measure a first article before the batch is finish-turned',
      }),
    )
  }
  if (shop.habits.couponPieces < 1) {
    findings.push(
      partFinding({
        part,
        severity: 'error',
        code: 'case/no-coupon',
        path: '/hardening',
        message: 'no coupon goes with the charge: depth cannot be proved without cutting a good piece',
        hint: 'set a coupon of the same heat and the same heat treatment in the shop file',
      }),
    )
  }
  const { beforeHardening: before, afterHoning: after } = EDGE_BREAK
  if (part.ports.length > 0) {
    findings.push(
      partFinding({
        part,
        severity: 'note',
        code: 'case/edges-to-break',
        path: '/ports',
        message: 'port edges take case from two sides, turn brittle and chip',
        hint: `break every edge ${before.least} to ${before.most} mm before hardening but the timing edges, which the bench breaks as the ports are planned, and all ${after.least} to ${after.most} mm after honing`,
      }),
    )
  }
  return findings
}
