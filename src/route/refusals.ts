import type { Finding } from '../finding.ts'
import { materialOf } from '../handbook/materials.ts'
import { QUENCHED_RING, quenchOvality } from '../handbook/quench-ovality.ts'
import { HARDENING, type HardeningProcess, type Part, placeOf } from '../part/part.ts'
import { thinnestWall } from '../wall.ts'
import { hardeningPurpose } from './hard-tasks.ts'
import type { FinishingNeeds } from './needs.ts'

/** Through hardening leaves no case, so there is none to plan for. */
const PLANNED: readonly HardeningProcess[] = HARDENING.filter(process => process !== 'through hardening')

/** What this planner has no route for: said plainly, never guessed. */
export function refusals(part: Part, needs: FinishingNeeds): readonly Finding[] {
  const refuse = (path: string, message: string, hint: string): Finding => ({
    severity: 'error',
    code: 'route/not-planned',
    message,
    at: placeOf(part, path),
    hint,
  })
  const { hardening, kind } = part
  const findings: Finding[] = []
  if (kind === 'piston') {
    findings.push(...pistonRefusals(part, needs, refuse))
  } else if (part.bore.length === 0 && kind !== 'pin') {
    findings.push(refuse('/body', `a ${kind} without a bore is not planned`, 'give body: bore:'))
  }
  if (hardening && !PLANNED.includes(hardening.process)) {
    findings.push(
      refuse(
        `${hardening.path}/process`,
        `${hardening.process} is not planned: it leaves no case to order, and what the quench leaves of roundness decides the stock${quenchedRound(part)}`,
        `agree sizes, quench and temper with the hardener; a part that runs hot tempers back. Processes planned: ${PLANNED.join(', ')}`,
      ),
    )
  }
  if (hardening && needs.bottom.length > 0) {
    findings.push(
      refuse(
        part.bottom.path,
        `a bottom face finished after hardening is not planned: ${needs.bottom.join('; ')}`,
        'ask for what a turned face keeps, or mask the face and have it made by agreement',
      ),
    )
  }
  findings.push(...platingRefusals(part, refuse))
  return findings
}

/** Plating is planned in the straight bore of a liner or sleeve. */
function platingRefusals({ plating, kind, bore }: Part, refuse: Refuse): readonly Finding[] {
  if (!plating) return []
  const tapered = bore.some(({ name, taper = 0 }) => name === plating.surface && taper !== 0)
  return [
    ...(kind === 'pin' || kind === 'piston'
      ? [refuse(plating.path, `a plated ${kind} is not planned`, 'liners and sleeves are')]
      : []),
    ...(tapered
      ? [
          refuse(
            plating.path,
            `${plating.surface} is closer at the top: a tapered bore that is plated is not planned`,
            'agree its sizes before and after plating with the plater and the honer',
          ),
        ]
      : []),
  ]
}

type Refuse = (path: string, message: string, hint: string) => Finding

/** A piston is planned as a turned part: what needs more than the lathe, or a cross bore, is not. */
function pistonRefusals(part: Part, needs: FinishingNeeds, refuse: Refuse): readonly Finding[] {
  return [
    ...(part.hardening
      ? [
          refuse(
            part.hardening.path,
            'a hardened piston is not planned',
            'leave hardening out: the skirt runs as turned',
          ),
        ]
      : []),
    ...[...needs.outside, ...needs.boreHoned].map(({ band, why }) =>
      refuse(
        band.path,
        `${band.name} of a piston is planned as turned only: ${why.join('; ')}`,
        'give it a tolerance and roughness that turning holds, or have it finished by agreement',
      ),
    ),
  ]
}

/** Steel for nitriding is stress relieved; iron and soft parts are not. */
export function stressReliefWanted(part: Part): boolean {
  const group = materialOf(part.material.grade)?.group
  return (
    part.hardening !== undefined &&
    hardeningPurpose(part.hardening.process) === 'nitride' &&
    group !== 'grey iron' &&
    group !== 'ductile iron' &&
    !part.waive.some(({ rule }) => rule === 'stress-relieved-before-nitriding')
  )
}

/** Of a sleeve, how oval each way of quenching leaves it. */
function quenchedRound(part: Part): string {
  const D = Math.max(...part.outside.map(({ size }) => size.nominal))
  const t = thinnestWall(part)
  if (part.bore.length === 0 || !(t > 0)) return ''
  const oval = (way: keyof typeof QUENCHED_RING) => quenchOvality.value({ k: QUENCHED_RING[way], D, t }).toFixed(2)
  return `, about ${oval('free')} mm free in oil, ${oval('press')} in a press and ${oval('plug')} on a plug (estimate)`
}
