import type { Finding } from '../finding.ts'
import { materialOf } from '../handbook/materials.ts'
import { type HardeningProcess, type Part, placeOf } from '../part/part.ts'
import type { FinishingNeeds } from './needs.ts'

const NITRIDING: ReadonlySet<HardeningProcess> = new Set([
  'gas nitriding',
  'plasma nitriding',
  'salt-bath nitriding',
  'nitrocarburising',
])

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
  if (kind === 'pin' || kind === 'piston') {
    findings.push(refuse('/part/kind', `a ${kind} is not planned yet`, 'kinds planned: liner, sleeve'))
  } else if (part.bore.length === 0) {
    findings.push(refuse('/body', `a ${kind} without a bore is not planned`, 'give body: bore:'))
  }
  if (hardening && !NITRIDING.has(hardening.process)) {
    findings.push(
      refuse(
        `${hardening.path}/process`,
        `${hardening.process} is not planned yet`,
        `processes planned: ${[...NITRIDING].join(', ')}`,
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
  return findings
}

/** Steel for nitriding is stress relieved; iron and soft parts are not. */
export function stressReliefWanted(part: Part): boolean {
  const group = materialOf(part.material.grade)?.group
  return (
    part.hardening !== undefined &&
    group !== 'grey iron' &&
    group !== 'ductile iron' &&
    !part.waive.some(({ rule }) => rule === 'stress-relieved-before-nitriding')
  )
}
