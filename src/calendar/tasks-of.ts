import { COST_SPREAD, LEAD_TIME_SPREAD } from '../handbook/cost.ts'
import type { Firm } from '../shop/firm.ts'
import { MONDAY_TO_FRIDAY } from '../shop/working-days.ts'
import type { CalendarSource } from './calendar.ts'
import type { Length, Task } from './task.ts'
import { type Open, onDays, onOrAfter, openOn, workingDaysAfter } from './working-day.ts'

const HOURS = 8
/** On the road, each way. Common practice, no source. */
const CARRIAGE = 1

/** The chain of a batch: work of one work centre that follows on is one task, a visit is the road, the firm and the road. */
export function tasksOf(source: CalendarSource): readonly Task[] {
  const open = openOn(source.working ?? MONDAY_TO_FRIDAY)
  const tasks: Task[] = []
  let run: CalendarSource['operations'][number][] = []
  const close = () => {
    if (run.length > 0) tasks.push(houseTask(source, run, open))
    run = []
  }
  for (const operation of source.operations) {
    const order = source.orders.find(({ operations }) => operations.includes(operation.number))
    if (order) {
      close()
      if (order.operations[0] === operation.number) tasks.push(...visitTasks(source, order, open))
    } else {
      if (run[0] && run[0].workCentre !== operation.workCentre) close()
      run.push(operation)
    }
  }
  close()
  return tasks
}

type Run = readonly CalendarSource['operations'][number][]

function houseTask({ machines, hours = HOURS }: CalendarSource, run: Run, open: Open): Task {
  const [first] = run
  const queue = machines.find(({ workCentre }) => workCentre === first?.workCentre)?.queue ?? 0
  const total = (end: 0 | 1 | 'usual'): number =>
    run.reduce((sum, { time: { setup, batch } }) => {
      const [s, r] = end === 'usual' ? [1, 1] : [COST_SPREAD['set-up'][end], COST_SPREAD.run[end]]
      return sum + s * setup + r * Math.max(0, batch - setup)
    }, 0) /
    60 /
    hours
  // Work that is begun takes the day that it is begun on.
  const days = (end: 0 | 1 | 'usual') => queue + Math.max(total(end), 1e-6)
  return {
    operations: run.map(({ number }) => number),
    what: 'work',
    length: { least: days(0), usual: days('usual'), most: days(1) },
    place: (ended, count) => {
      const from = onOrAfter(ended + 1, open)
      return { from, to: workingDaysAfter(from, count - 1, open) }
    },
  }
}

function visitTasks(
  { firms }: CalendarSource,
  { number, operations, firm: name, leadTime }: CalendarSource['orders'][number],
  open: Open,
): readonly Task[] {
  const firm: Partial<Firm> = firms.find(one => one.name === name) ?? {}
  const theirs = openOn(firm.working ?? MONDAY_TO_FRIDAY)
  const carriage = firm.carriage ?? CARRIAGE
  const round = onDays(firm.rounds)
  const load = onDays(firm.loads)
  const road = (what: 'out' | 'back'): Task => ({
    operations: what === 'out' ? operations : [],
    order: number,
    what,
    length: { least: carriage, usual: carriage, most: carriage },
    place: (ended, days) => {
      const from = onOrAfter(ended + 1, day => open(day) && round(day))
      return { from, to: days === 0 ? from : workingDaysAfter(from, days - 1, open) }
    },
  })
  const work: Task = {
    operations: [],
    order: number,
    what: 'firm',
    length: lengthOf(firm, leadTime),
    place: (received, days) => {
      if (firm.counts === 'calendar days')
        return { from: received + 1, to: onOrAfter(received + days, day => open(day) && theirs(day)) }
      const from = onOrAfter(received + 1, day => theirs(day) && load(day))
      return { from, to: workingDaysAfter(from, days - 1, theirs) }
    },
  }
  return [road('out'), work, road('back')]
}

const lengthOf = ({ leadTimeLeast, leadTimeMost }: Partial<Firm>, usual: number): Length => ({
  least: leadTimeLeast ?? LEAD_TIME_SPREAD.least * usual,
  usual,
  most: leadTimeMost ?? LEAD_TIME_SPREAD.most * usual,
})
