import { type Finding, printed, type Severity } from '../finding.ts'
import type { World } from './world.ts'

const COLOUR: Readonly<Record<Severity, string>> = { error: '31', warning: '33', note: '36' }

/** Nobody reads more at a terminal; `--json` has them all. */
const MOST = 200

/** Findings as they are printed, the severity coloured where the terminal shows colour. */
export function listed(findings: readonly Finding[], colour: boolean): string {
  const rest = findings.length - MOST
  const more = rest > 0 ? [`… and ${rest} more; --json has them all`] : []
  return findings
    .slice(0, MOST)
    .map(finding => {
      const text = printed(finding)
      const word = `  ${finding.severity}  `
      return colour ? text.replace(word, `  \u001b[${COLOUR[finding.severity]}m${finding.severity}\u001b[0m  `) : text
    })
    .concat(more)
    .map(text => `${text}\n`)
    .join('')
}

/** `2 errors, 1 warning` */
export function counted(findings: readonly Finding[]): string {
  const count = (severity: Severity): number => findings.filter(finding => finding.severity === severity).length
  const parts = (['error', 'warning', 'note'] as const).flatMap(severity => {
    const n = count(severity)
    return n === 0 ? [] : [`${n} ${severity}${n === 1 ? '' : 's'}`]
  })
  return parts.join(', ') || 'no findings'
}

/** Findings beside a result go to standard error, so that the result alone is on standard output. */
export function reportBeside(findings: readonly Finding[], world: World): void {
  if (findings.length > 0) world.err(listed(findings, world.terminal.err && world.terminal.colour))
}
