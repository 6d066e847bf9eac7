import type { Process } from '../process.ts'
import type { Firm } from '../shop/firm.ts'
import type { Machine, Shop } from '../shop/shop.ts'
import type { Operation } from './operation.ts'

export type Where = { readonly place: 'house' | 'outside'; readonly workCentre: string }

/** Told from what the shop calls it, as an internal grinder is. */
export const isCentreless = ({ workCentre, name }: Pick<Machine, 'workCentre' | 'name'>): boolean =>
  /centreless/i.test(`${workCentre} ${name}`)

/** What a grinder reaches, told from what the shop calls it: an internal grinder is named so. */
const REACHES: Readonly<Record<'outside' | 'through' | 'bore', (name: string) => boolean>> = {
  outside: name => !/internal|bore|face|centreless/i.test(name),
  through: name => /centreless/i.test(name),
  bore: name => !/cylindrical|external|centreless|face only|surface/i.test(name),
}

/**
 * Where a process is done: on the shop's own machine, else at a firm that offers it, else nowhere. Of several machines the
 * one that is named for the surface is taken.
 */
export function houseOrOutside(shop: Shop, process: Process, on?: keyof typeof REACHES): Where | undefined {
  const able = shop.machines.filter(({ processes }) => processes.includes(process))
  const machine = on === undefined ? able[0] : able.find(({ workCentre, name }) => REACHES[on](`${workCentre} ${name}`))
  if (machine) return { place: 'house', workCentre: machine.workCentre }
  const firm = shop.firms.find(({ processes }) => processes.includes(process))
  return firm && { place: 'outside', workCentre: firm.name }
}

/** The firm that an outside operation goes to: the one that its place was found at, whatever else does the process. */
export function firmOf(
  { firms }: Pick<Shop, 'firms'>,
  { place, workCentre, process }: Pick<Operation, 'place' | 'workCentre' | 'process'>,
): readonly Firm[] {
  const named = place === 'outside' ? firms.filter(({ name }) => name === workCentre) : []
  const able = named.filter(({ processes }) => processes.includes(process))
  return (able.length > 0 ? able : named).slice(0, 1)
}

/** Tied to another operation: where they are done is settled already. */
const TIED: ReadonlySet<Operation['purpose']> = new Set(['relieve-for-plating', 'bake-after-plating'])

/** Work that follows on outside stays at the firm where the pieces are, if that does it too: one visit, one transport. */
export function atOneFirm<T extends Pick<Operation, 'place' | 'workCentre' | 'process' | 'purpose'>>(
  { firms }: Pick<Shop, 'firms'>,
  ordered: readonly T[],
): readonly T[] {
  const placed: T[] = []
  for (const task of ordered) {
    const before = placed.at(-1)
    const stays =
      task.place === 'outside' &&
      before?.place === 'outside' &&
      !TIED.has(task.purpose) &&
      firms.some(({ name, processes }) => name === before.workCentre && processes.includes(task.process))
    placed.push(stays && before ? { ...task, workCentre: before.workCentre } : task)
  }
  return placed
}
