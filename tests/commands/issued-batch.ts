import { jsonText } from '../../src/commands/json.ts'
import { run } from '../../src/commands/program.ts'
import type { Finding } from '../../src/finding.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Recorded } from '../../src/record/record-batch.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { demo, desk } from './fake-world.ts'

export const plan: Plan = demoPlan('OX-098-21')
export const BATCH: string = plan.batch.number
export const BOOK: string = `out/OX-098-21-B-${BATCH}/book.yaml`
export const HEAD: string = `results: {part: OX-098-21, revision: B, batch: ${BATCH}, date: 2026-12-14, temperature: 20}\n`
export const HARDENED: number = plan.operations.find(({ process }) => process === 'nitride')?.number ?? 0
export const TURNED: number = plan.operations.filter(({ process }) => process === 'turn').at(-1)?.number ?? 0

export const files = (given: Readonly<Record<string, string>> = {}): Readonly<Record<string, string>> => ({
  'liner.yaml': demo('OX-098-21.yaml'),
  'shop.yaml': demo('shop.yaml'),
  [`out/OX-098-21-B-${BATCH}/plan.json`]: jsonText(plan),
  ...given,
})

export type RecordedBatch = {
  readonly status: number
  readonly said: (Recorded & { readonly findings: readonly Finding[] }) | undefined
  readonly book: string | Uint8Array | undefined
  readonly complained: string
}

export async function recorded(
  given: Readonly<Record<string, string>>,
  ...more: readonly string[]
): Promise<RecordedBatch> {
  const world = desk(files(given))
  const names = Object.keys(given).filter(name => name.startsWith('r'))
  const status = await run(['record', 'liner.yaml', ...names, '--batch', BATCH, '--json', ...more], world)
  const text = world.printed()
  const said = text === '' ? undefined : (JSON.parse(text) as Recorded & { readonly findings: readonly Finding[] })
  return { status, said, book: world.files.get(BOOK), complained: world.complained() }
}

/** Seats in four directions at one height: an oval of that length that lies at azimuth 0. */
export const piece = (serial: number, seat: number, oval: number, more = ''): string => {
  const at = [seat + oval / 2, seat, seat - oval / 2, seat].map(value => value.toFixed(4)).join(', ')
  return `  - {serial: ${serial}, seat: {50: [${at}]}${more}}\n`
}
const DIRECTIONS = 'directions: [0, 45, 90, 135]\npieces:\n'
export const turned = (pieces: string): string =>
  `${HEAD.replace('12-14', '12-02')}after: {operation: ${TURNED}}\n${DIRECTIONS}${pieces}`
export const hardened = (pieces: string, more = ''): string =>
  `${HEAD}after: {operation: ${HARDENED}}\n${DIRECTIONS}${pieces}${more}`
