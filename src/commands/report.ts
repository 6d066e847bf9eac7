import { type Finding, printed, type Severity } from '../finding.ts'
import { writtenOut } from '../refusal.ts'
import type { World } from './world.ts'

const COLOUR: Readonly<Record<Severity, string>> = { error: '31', warning: '33', note: '36' }

/** Nobody reads more at a terminal; `--json` has them all. */
const MOST = 200

/** What stops a plan is read before what does not, each by its place. */
const FIRST: readonly Severity[] = ['error', 'warning', 'note']

/** Findings as they are printed, the severity coloured where the terminal shows colour. */
export function listed(findings: readonly Finding[], colour: boolean): string {
  const rows = byRule(findings).toSorted(([a], [b]) => FIRST.indexOf(a.severity) - FIRST.indexOf(b.severity))
  const rest = rows.slice(MOST).reduce((count, [, also]) => count + 1 + also.length, 0)
  const more = rest > 0 ? [`… and ${rest} more; --json has them all`] : []
  return rows
    .slice(0, MOST)
    .map(([finding, also]) => {
      const text = [printed(finding), ...alsoAt(also)].join('\n')
      const word = `  ${finding.severity}  `
      return colour ? text.replace(word, `  \u001b[${COLOUR[finding.severity]}m${finding.severity}\u001b[0m  `) : text
    })
    .concat(more)
    .map(text => `${text}\n`)
    .join('')
}

/** What one rule about ports warns or notes of several ports is one row, the first with the others after it; an error never. */
function byRule(findings: readonly Finding[]): readonly (readonly [Finding, readonly Finding[]])[] {
  const rows = new Map<string, Finding[]>()
  for (const [index, finding] of findings.entries()) {
    const { code, severity, hint, at, message } = finding
    const alone = severity === 'error' || !code.startsWith('ports/')
    const key = alone ? String(index) : JSON.stringify([code, severity, hint, at.file, sameBut(message)])
    rows.set(key, [...(rows.get(key) ?? []), finding])
  }
  return [...rows.values()].flatMap(([first, ...also]) => (first ? [[first, also] as const] : []))
}

/** What is said after the port's name, whatever the numbers are. */
const sameBut = (message: string): string => message.replace(/^.*?: /, '').replace(/[-\d.]+/g, '#')

/** Their places and the names of their ports, which begin what is found. */
function alsoAt(also: readonly Finding[]): readonly string[] {
  if (also.length === 0) return []
  const places = also.map(({ at, message }) => `${at.line}:${at.column} ${message.split(': ', 1)[0]}`)
  return [writtenOut(`  likewise ${places.join('; ')}`)]
}

/** `2 errors, 1 warning` */
export function counted(findings: readonly Finding[]): string {
  const count = (severity: Severity): number => findings.filter(finding => finding.severity === severity).length
  const parts = FIRST.flatMap(severity => {
    const n = count(severity)
    return n === 0 ? [] : [`${n} ${severity}${n === 1 ? '' : 's'}`]
  })
  return parts.join(', ') || 'no findings'
}

/** Findings beside a result go to standard error, so that the result alone is on standard output. */
export function reportBeside(findings: readonly Finding[], world: World): void {
  if (findings.length > 0) world.err(listed(findings, world.terminal.err && world.terminal.colour))
}
