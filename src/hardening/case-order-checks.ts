import { fixed } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { DEAR_DEPTH } from '../handbook/case-limits.ts'
import { EDGE_BREAK } from '../handbook/edge-break.ts'
import { CHOICE_SOURCE, hardeningChoice } from '../handbook/hardening-choice.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import type { Part } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import type { Celsius, Hour, Millimetre } from '../units.ts'
import { caseFinding } from './case-finding.ts'
import { boreOf, treatedSides } from './case-surfaces.ts'

/** Walls up to this warp when one side alone is treated. Common practice, no source. */
const THIN_WALL = 6

/** Whether the process may be asked for on this material. */
export function choiceFindings(part: Part, window: HardeningWindow): readonly Finding[] {
  const { grade } = part.material
  const asked = part.hardening?.hardness?.least
  if (window.term === 'SHD' && part.ports.length > 0) {
    return [
      caseFinding(
        part,
        'error',
        'case/process-refused',
        '/hardening/process',
        'induction hardening of a ported sleeve is refused: it cracks at the ports in the quench (common practice)',
        'nitride it',
      ),
    ]
  }
  const judged = hardeningChoice(grade, window.column, asked)
  if (!judged || judged.choice === 'OK') return []
  const refused = judged.choice === 'NO'
  const forHardness = asked === undefined ? '' : ` for ${fixed(asked, 0)} HV`
  const why = judged.why === undefined ? '' : `: ${judged.why}`
  return [
    caseFinding(
      part,
      refused ? 'error' : 'warning',
      refused ? 'case/process-refused' : 'case/process-limited',
      '/hardening/process',
      `${window.process} ${grade}${forHardness} is ${refused ? 'refused' : 'done with limits only'} (${CHOICE_SOURCE})${why}`,
      refused
        ? 'choose another material or another process'
        : 'agree with the hardener what it will reach before the bar is bought',
    ),
  ]
}

/** Temperature inside the process's window. */
export function temperatureFindings(part: Part, window: HardeningWindow, temperature: Celsius): readonly Finding[] {
  const { least, most } = window.temperature
  if (temperature >= least && temperature <= most) return []
  return [
    caseFinding(
      part,
      'error',
      'case/temperature-outside-process',
      '/hardening/temperature',
      `${window.process} runs at ${least} to ${most} °C, not at ${fixed(temperature, 0)} °C`,
      `write a temperature from ${least} to ${most}, or leave it out`,
    ),
  ]
}

/** Time and depth that cost more than they look. */
export function cycleFindings(
  part: Part,
  shop: Shop,
  window: HardeningWindow,
  depth: Millimetre,
  hours: Hour,
): readonly Finding[] {
  const usual = window.hours?.most ?? Number.POSITIVE_INFINITY
  const findings: Finding[] = []
  const limit = shop.habits.nitridingTimeLimit
  const nitriding = window.term === 'NHD'
  if (hours > usual && usual < limit) {
    findings.push(
      caseFinding(
        part,
        'warning',
        'case/cycle-beyond-process',
        '/hardening/process',
        `${fixed(depth, 2)} mm takes about ${fixed(hours, 0)} h; ${window.process} usually ends at ${usual} h`,
        'nitride in gas or plasma, or ask for less depth',
      ),
    )
  } else if (nitriding && (hours > limit || depth > DEAR_DEPTH)) {
    findings.push(
      caseFinding(
        part,
        'warning',
        'case/long-cycle',
        '/hardening/depth',
        `${fixed(depth, 2)} mm takes about ${fixed(hours, 0)} h: dear over ${fixed(limit, 0)} h or ${DEAR_DEPTH} mm`,
        'take off less after hardening: a truer set-up buys back furnace time',
      ),
    )
  }
  return findings
}

/** What the order must not lack. */
export function orderFindings(part: Part, shop: Shop, wall: Millimetre): readonly Finding[] {
  const findings: Finding[] = []
  const sides = treatedSides(part)
  if (boreOf(part) && sides.outside !== sides.bore && wall <= THIN_WALL) {
    findings.push(
      caseFinding(
        part,
        'warning',
        'case/one-sided',
        '/hardening',
        `only the ${sides.outside ? 'outside' : 'bore'} of a ${fixed(wall, 2)} mm wall is treated: a one-sided case bends a thin sleeve`,
        'treat both sides, or measure a first article before the batch is finish-turned',
      ),
    )
  }
  if (shop.habits.couponPieces < 1) {
    findings.push(
      caseFinding(
        part,
        'error',
        'case/no-coupon',
        '/hardening',
        'no coupon goes with the charge: depth cannot be proved without cutting a good piece',
        'set a coupon of the same heat and the same heat treatment in the shop file',
      ),
    )
  }
  const { beforeHardening: before, afterHoning: after } = EDGE_BREAK
  if (part.ports.length > 0) {
    findings.push(
      caseFinding(
        part,
        'note',
        'case/edges-to-break',
        '/ports',
        'port edges take case from two sides, turn brittle and chip',
        `break every edge ${before.least} to ${before.most} mm before hardening, and ${after.least} to ${after.most} mm after honing`,
      ),
    )
  }
  return findings
}
