import type { Finding } from '../finding.ts'
import { materialOf } from '../handbook/materials.ts'
import { type Part, placeOf } from '../part/part.ts'
import { hardensThrough } from '../part/takes-case.ts'
import { hardeningPurpose } from './hard-tasks.ts'
import type { FinishingNeeds } from './needs.ts'

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
  findings.push(...throughRefusals(part, refuse))
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

/** Steel for nitriding or for hardening through is stress relieved; iron and soft parts are not. */
export function stressReliefWanted(part: Part): boolean {
  const group = materialOf(part.material.grade)?.group
  return (
    part.hardening !== undefined &&
    (hardeningPurpose(part.hardening.process) === 'nitride' || hardensThrough(part)) &&
    group !== 'grey iron' &&
    group !== 'ductile iron' &&
    !part.waive.some(({ rule }) => rule === 'stress-relieved-before-nitriding')
  )
}

/** What is hardened right through can keep nothing soft, and takes no treatment after that is hotter than its temper. */
function throughRefusals(part: Part, refuse: Refuse): readonly Finding[] {
  const { hardening, plating } = part
  if (!hardening || !hardensThrough(part)) return []
  const { path, masked, depth } = hardening
  return [
    ...(masked.length > 0
      ? [
          refuse(
            `${path}/masked`,
            `${masked.join(', ')} cannot be masked: a part that is hardened through is hard everywhere`,
            'leave masked out; for a soft surface give the part a case, or induction harden what slides',
          ),
        ]
      : []),
    ...(depth
      ? [
          refuse(
            `${path}/depth`,
            `a depth of ${depth.least} mm is asked of a part that is hardened through: it has none`,
            'leave depth out; for a case choose a process that lays one',
          ),
        ]
      : []),
    ...(plating
      ? [
          refuse(
            plating.path,
            `${plating.process} on a part that is hardened through is not planned: its bake against hydrogen comes to the temper, and it needs stress relief and blasting before`,
            'agree relief, blasting and bake with plater and hardener, or plate a part that is hardened and tempered softer',
          ),
        ]
      : []),
  ]
}
