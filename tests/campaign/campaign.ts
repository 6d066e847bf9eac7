import { type Case, type Fault, judge, type Verdict } from './judge.ts'
import { mutantOf } from './mutant.ts'
import { plausibleOf, type Share } from './plausible-part.ts'
import { shrunk } from './shrink.ts'

export type Kind = 'mutants' | 'plausible'
export type Wishes = { readonly seed: number } & Share
export type Outcome = Verdict & {
  readonly number: number
  /** A second look at an input that has been counted. */
  readonly again?: boolean
}

export const inputOf = (kind: Kind, { seed, ...share }: Wishes, number: number): Case =>
  kind === 'mutants' ? mutantOf(seed, number) : plausibleOf(seed, number, share)

/** Every input from one number to another, until the time is up. */
export async function campaign(
  work: {
    readonly kind: Kind
    readonly options: Wishes
    readonly from: number
    readonly to: number
    readonly until: number
  },
  tell: (outcome: Outcome) => void,
  clock: { readonly now: () => number } = Date,
): Promise<void> {
  for (let number = work.from; number < work.to && clock.now() < work.until; number++)
    tell({ number, ...(await judge(inputOf(work.kind, work.options, number))) })
}

type Counted = { kind: string; number: number; count: number; detail: string }
export type Tally = {
  done: number
  processes: number
  readonly statuses: Map<string, number>
  /** How many inputs were refused with each code. */
  readonly refusals: Map<string, number>
  readonly faults: Counted[]
}

export const openTally = (): Tally => ({ done: 0, processes: 0, statuses: new Map(), refusals: new Map(), faults: [] })

export function count(tally: Tally, { number, statuses, refusals, faults, again = false }: Outcome): void {
  const more = (map: Map<string, number>, key: string) => map.set(key, (map.get(key) ?? 0) + 1)
  if (!again) tally.done += 1
  if (statuses[0] !== undefined) more(tally.statuses, `status ${statuses[0]}`)
  if (statuses[1] !== undefined) more(tally.statuses, `paper, status ${statuses[1]}`)
  for (const code of refusals) more(tally.refusals, code)
  for (const { kind, detail } of faults) {
    const known = tally.faults.find(fault => fault.kind === kind)
    if (known) known.count += 1
    else tally.faults.push({ kind, number, count: 1, detail })
  }
}

/** What came of it: statuses, faults with how often each was met, and the codes that refuse most. */
export function report({ done, processes, statuses, refusals, faults }: Tally): string {
  const rows = (map: ReadonlyMap<string, number>) =>
    [...map].toSorted((a, b) => b[1] - a[1]).map(([key, n]) => `  ${String(n).padStart(7)}  ${key}`)
  return [
    `${done} inputs in this process, ${processes} of them also as a process of their own`,
    ...rows(statuses),
    'inputs refused, by the codes of their errors',
    ...rows(refusals),
    `${faults.length} kinds of fault`,
    ...faults.toSorted((a, b) => b.count - a.count).map(({ kind, count }) => `  ${String(count).padStart(7)}  ${kind}`),
  ].join('\n')
}

/** The smallest input that shows the fault, ready to be kept as a test. */
export async function smallest(kind: Kind, options: Wishes, number: number, fault: Fault['kind']): Promise<string> {
  const small = await shrunk(inputOf(kind, options, number), fault)
  const { faults } = await judge(small)
  return [
    ...Object.entries(small.files).map(
      ([name, text]) => `--- ${name}\n${text.length > 3000 ? `${text.slice(0, 3000)}…` : text}`,
    ),
    ...small.commands.map(argv => `$ linerwright ${argv.join(' ')}`),
    (faults.find(({ kind }) => kind === fault)?.detail ?? '').split('\n').slice(0, 8).join('\n'),
  ].join('\n')
}
