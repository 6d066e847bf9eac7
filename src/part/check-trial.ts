import type { Trial, TrialRun } from './trial.ts'
import type { View } from './view.ts'

/** What a trial file says against itself: a liner that changes within a fitting, an order that was not kept, what is not read. */
export function checkTrial(trial: Trial, root: View): void {
  checkOrder(trial, root)
  checkLoad(trial, root)
  const views = root.each('runs')
  trial.runs.forEach((run, index) => {
    const view = views[index]
    if (!view) return
    checkFitting(trial, run, view)
    checkRead(trial, run, view)
  })
  if (trial.correction !== undefined && trial.runs.some(run => !hasAir(run) && run.rejected === undefined)) {
    const bare = trial.runs.find(run => !hasAir(run) && run.rejected === undefined)
    views[(bare?.number ?? 1) - 1]?.report({
      code: 'input/missing-key',
      message: `correction by ${trial.correction} wants air, pressure and humidity of every run`,
      hint: 'add them, or leave correction out',
    })
  }
}

const hasAir = ({ air, pressure, humidity }: TrialRun): boolean =>
  air !== undefined && pressure !== undefined && humidity !== undefined

function checkOrder({ order, fittingsEach, liners, runs }: Trial, root: View): void {
  const head = root.into('trial')
  if (order === undefined) return
  const letters = liners.map(({ letter }) => String(letter))
  const stranger = [...order].find(letter => !letters.includes(letter))
  if (stranger !== undefined) {
    head?.report(
      {
        code: 'trial/order',
        message: `order names "${stranger}", and the liners are ${letters.join(', ')}`,
        hint: 'write it as ABBABAAB',
      },
      'order',
    )
    return
  }
  const counts = letters.map(letter => [...order].filter(one => one === letter).length)
  if (new Set(counts).size > 1)
    head?.report(
      {
        code: 'trial/order',
        message: `order has ${letters.map((letter, i) => `${letter} ${counts[i]} times`).join(', ')}`,
        hint: 'fit every liner as often as every other',
      },
      'order',
      'warning',
    )
  if (fittingsEach !== undefined && counts.some(count => count !== fittingsEach))
    head?.report(
      {
        code: 'trial/order',
        message: `order has ${Math.max(...counts)} fittings each, and fittings-each is ${fittingsEach}`,
        hint: 'make them agree',
      },
      'order',
    )
  const run = fittingsIn(runs)
  const asRun = run.map(({ liner }) => liner).join('')
  if (run.length > 0 && !order.startsWith(asRun))
    head?.report(
      {
        code: 'trial/order',
        message: `order is ${order}, and the runs were made as ${asRun}`,
        hint: 'the order run is what is reckoned with',
      },
      'order',
      'warning',
    )
}

/** The first run of every fitting. */
const fittingsIn = (runs: readonly TrialRun[]): readonly TrialRun[] =>
  runs.filter((run, index) => runs.findIndex(({ fitting }) => fitting === run.fitting) === index)

function checkFitting({ liners, runs }: Trial, run: TrialRun, view: View): void {
  const before = runs[run.number - 2]
  const first = runs.find(({ fitting }) => fitting === run.fitting)
  if (!liners.some(({ letter }) => letter === run.liner))
    view.report({ code: 'trial/fitting', message: `there is no liner ${run.liner}`, hint: `add it to liners` }, 'liner')
  else if (first && first.liner !== run.liner)
    view.report(
      {
        code: 'trial/fitting',
        message: `fitting ${run.fitting} has liner ${first.liner} in run ${first.number} and ${run.liner} here`,
        hint: 'a liner that is put in is a fitting of its own',
      },
      'fitting',
    )
  else if (first && first.block !== run.block)
    view.report(
      {
        code: 'trial/fitting',
        message: `fitting ${run.fitting} is in block ${first.block} in run ${first.number} and in ${run.block} here`,
        hint: 'a fitting belongs to one block',
      },
      'block',
    )
  if (before && run.fitting < before.fitting)
    view.report(
      {
        code: 'trial/fitting',
        message: `fitting ${run.fitting} comes after fitting ${before.fitting}`,
        hint: 'number the fittings as they were made, and write the runs in that order',
      },
      'fitting',
    )
  else if (before && run.fitting > before.fitting + 1)
    view.report(
      {
        code: 'trial/fitting',
        message: `fitting ${before.fitting + 1} is missing before fitting ${run.fitting}`,
        hint: 'write its runs too, those that do not count with rejected:',
      },
      'fitting',
    )
  else if (!before && run.fitting !== 1)
    view.report(
      {
        code: 'trial/fitting',
        message: `the first run is of fitting ${run.fitting}`,
        hint: 'number the fittings from 1',
      },
      'fitting',
    )
  if (before?.time !== undefined && run.time !== undefined && before.block === run.block && run.time < before.time)
    view.report(
      {
        code: 'trial/time',
        message: 'the run is earlier than the one before it',
        hint: 'write the runs in the order in which they were made; another day is another block',
      },
      'at',
    )
}

/** What the law of the load cannot do without; said once, at the load or at the first run that lacks it. */
function checkLoad({ load, verdict, runs }: Trial, root: View): void {
  if (verdict === 'speed') {
    if (load.kind === 'brake arm')
      root.into('trial')?.report(
        {
          code: 'input/choose-one',
          message: 'the speed on a brake is set by hand: power is what is read',
          hint: 'write verdict: power',
        },
        'verdict',
      )
    return
  }
  const report = (key: string, message: string, hint: string) =>
    root.into('load')?.report({ code: 'input/missing-key', message, hint: `${hint}, or write verdict: speed` }, key)
  if (load.kind === 'propeller')
    root.into('trial')?.report(
      {
        code: 'input/choose-one',
        message: 'the power of a propeller is not read: it follows from speed',
        hint: 'write verdict: speed',
      },
      'verdict',
    )
  if (load.kind === 'brake arm' && load.arm === undefined)
    report('kind', 'power on a brake wants the length of its arm', 'add arm: to load, mm')
  if (load.kind === 'pump' && load.efficiency === undefined)
    report('kind', 'power of a pump wants its efficiency', 'add efficiency: to load')
  const wanted = { propeller: [], pump: ['flow', 'lift'], 'brake arm': ['force'] } as const
  for (const key of wanted[load.kind]) {
    const lacking = runs.filter(run => run[key] === undefined)
    const [first] = lacking
    if (first)
      root.each('runs')[first.number - 1]?.report({
        code: 'input/missing-key',
        message: `${key} is missing in ${lacking.length} of ${runs.length} runs: power is worked out from it`,
        hint: `add ${key} to the runs, or write verdict: speed`,
      })
  }
}

function checkRead({ load }: Trial, run: TrialRun, view: View): void {
  if (load.kind === 'brake arm' && run.force !== undefined && run.force <= (load.tare ?? 0))
    view.report(
      { code: 'input/out-of-range', message: `force ${run.force} N is not over the tare of ${load.tare ?? 0} N` },
      'force',
    )
  for (const [key, kind] of [
    ['force', 'brake arm'],
    ['thrust', 'propeller'],
    ['flow', 'pump'],
    ['lift', 'pump'],
  ] as const)
    if (run[key] !== undefined && load.kind !== kind)
      view.report(
        { code: 'input/not-used', message: `a ${load.kind} has no ${key}`, hint: 'delete it, or see load' },
        key,
      )
  const some = [run.air, run.pressure, run.humidity].filter(value => value !== undefined).length
  if (some === 1 || some === 2)
    view.report({
      code: 'input/missing-key',
      message: 'of air, pressure and humidity only a part is given',
      hint: 'give all three, or none',
    })
}
