import { byPlace, type Finding, hasErrors, type Place } from '../finding.ts'
import { CORRECTIONS, type CorrectionRule } from '../handbook/power-correction.ts'
import { checkTrial } from './check-trial.ts'
import { isDate } from './date.ts'
import { openDocument, present } from './open-document.ts'
import type { BudgetEntry, LinerLetter, LinerOnTrial, LoadKind, Trial, TrialLoad, TrialRun } from './trial.ts'
import { validateTrial } from './validators.ts'
import type { View } from './view.ts'
import { openYaml } from './yaml-source.ts'

const SHARE = { over: 0, upTo: 0.5 }
const LETTERS: readonly LinerLetter[] = ['A', 'B', 'C']
const LOADS: readonly LoadKind[] = ['propeller', 'pump', 'brake arm']

/** Reads a trial file. `file` is what findings call it. */
export function readTrial(
  text: string,
  file: string,
): { readonly trial?: Trial; readonly findings: readonly Finding[] } {
  const { source, findings } = openYaml(text, file)
  if (!source) return { findings }
  const { root, findings: found } = openDocument(source, validateTrial)
  const placeOf = (view: View): Place => source.places.get(view.path) ?? { file, line: 1, column: 1 }
  const head = root.into('trial')
  const date = head?.text('date')
  if (date !== undefined && !isDate(date))
    head?.report({ code: 'input/unreadable', message: `date "${date}" is no day`, hint: 'write YYYY-MM-DD' }, 'date')
  const load = loadOf(root)
  const verdict = head?.text('verdict')
  const correction = head?.text('correction')
  const fuel = root.into('fuel')
  const volume = fuel?.quantity('volume', 'volume', { over: 0, upTo: 10_000 })
  const trial: Trial = {
    file,
    engine: head?.text('engine') ?? '',
    worthwhile: shareOf(head, 'worthwhile') ?? 0,
    verdict: verdict === 'speed' || verdict === 'power' ? verdict : load.kind === 'brake arm' ? 'power' : 'speed',
    settle: head?.quantity('settle', 'temperature', { over: 0, upTo: 20 }) ?? 1,
    load,
    liners: linersOf(root.into('liners'), placeOf),
    every: numberIn(root, 'every', 1, 3600) ?? 60,
    budget: root.each('budget').flatMap(budgetOf),
    runs: root.each('runs').flatMap((view, index) => runOf(view, index + 1, placeOf(view))),
    at: head ? placeOf(head) : { file, line: 1, column: 1 },
    ...present({
      date,
      by: head?.text('by'),
      fittingsEach: head?.count('fittings-each'),
      order: head?.text('order'),
      spread: shareOf(head, 'spread'),
      correction: isRule(correction) ? correction : undefined,
      fuel: fuel && volume !== undefined ? { volume, density: numberIn(fuel, 'density', 0.5, 1.2) ?? 0.74 } : undefined,
    }),
  }
  if (!hasErrors(found)) checkTrial(trial, root)
  const sorted = byPlace(found)
  return hasErrors(sorted) ? { findings: sorted } : { trial, findings: sorted }
}

const isRule = (name: string | undefined): name is CorrectionRule =>
  name !== undefined && Object.hasOwn(CORRECTIONS, name)

function loadOf(root: View): TrialLoad {
  const view = root.into('load')
  if (!view) {
    if (!root.misspelt && !root.has('load'))
      root.report({
        code: 'input/missing-key',
        message: 'load is missing',
        hint: 'add load: {kind: pump, setting: orifice 18}',
      })
    return { kind: 'pump' }
  }
  const kind = LOADS.find(one => one === view.raw('kind')) ?? 'pump'
  const own: Readonly<Record<LoadKind, readonly string[]>> = {
    propeller: ['diameter'],
    pump: ['efficiency', 'static-lift'],
    'brake arm': ['arm', 'tare'],
  }
  for (const other of LOADS.filter(one => one !== kind))
    for (const key of own[other].filter(key => view.has(key)))
      view.report(
        {
          code: 'input/not-used',
          message: `a ${kind} has no ${key}`,
          hint: `delete it, or see whether the load is a ${other}`,
        },
        key,
      )
  return {
    kind,
    ...present({
      setting: view.text('setting'),
      diameter: view.quantity('diameter', 'length', { over: 0, upTo: 5000 }),
      arm: view.quantity('arm', 'length', { over: 0, upTo: 5000 }),
      tare: view.quantity('tare', 'force', { from: -10_000, upTo: 10_000 }),
      efficiency: view.quantity('efficiency', 'ratio', { over: 0, upTo: 1 }),
      staticLift: view.quantity('static-lift', 'ratio', { from: 0, upTo: 1 }),
    }),
  }
}

/** A share of power: written with a per cent, since a bare 1 would be all of it. */
function shareOf(view: View | undefined, key: string): number | undefined {
  const raw = view?.raw(key)
  if (typeof raw === 'number' && raw >= 0.1) {
    view?.report(
      { code: 'input/out-of-range', message: `${key} ${raw} is ${raw * 100} % of power`, hint: `write ${raw} %` },
      key,
    )
    return undefined
  }
  return view?.quantity(key, 'ratio', SHARE)
}

function linersOf(view: View | undefined, placeOf: (view: View) => Place): readonly LinerOnTrial[] {
  return LETTERS.flatMap(letter => {
    const liner = view?.into(letter)
    const part = liner?.label('part')
    if (!liner || part === undefined) return []
    return [
      {
        letter,
        part,
        at: placeOf(liner),
        ...present({
          revision: liner.label('revision'),
          serial: liner.label('serial'),
          file: liner.text('file'),
          runIn: liner.quantity('run-in', 'hours', { from: 0, upTo: 10_000 }),
        }),
      },
    ]
  })
}

function budgetOf(view: View): readonly BudgetEntry[] {
  const [what, u] = [view.text('what'), shareOf(view, 'u')]
  return what === undefined || u === undefined ? [] : [{ what, u, freedom: view.count('freedom') ?? 50 }]
}

function runOf(view: View, number: number, at: Place): readonly TrialRun[] {
  const [fitting, liner] = [view.count('fitting'), LETTERS.find(letter => letter === view.raw('liner'))]
  const speed = view.quantity('speed', 'speed', { over: 0, upTo: 50_000 })
  const heads = Array.isArray(view.raw('head'))
    ? view.quantities('head', 'temperature', { from: -40, upTo: 600 })
    : [view.quantity('head', 'temperature', { from: -40, upTo: 600 })].filter(head => head !== undefined)
  const rest = present({
    time: timeOf(view),
    force: view.quantity('force', 'force', { over: 0, upTo: 100_000 }),
    flow: numberIn(view, 'flow', 1e-3, 1e4),
    lift: numberIn(view, 'lift', 1e-3, 1e4),
    thrust: view.quantity('thrust', 'force', { over: 0, upTo: 100_000 }),
    air: view.quantity('air', 'temperature', { from: -30, upTo: 60 }),
    pressure: numberIn(view, 'pressure', 500, 1100),
    humidity: numberIn(view, 'humidity', 0, 100),
    head: heads.length > 0 ? heads : undefined,
    fuel: numberIn(view, 'fuel', 1, 36_000),
    rejected: view.text('rejected'),
    doubt: view.text('doubt'),
  })
  view.text('note')
  if (fitting === undefined || liner === undefined || speed === undefined) return []
  return [{ number, fitting, liner, speed, block: view.label('block') ?? '1', at, ...rest }]
}

function numberIn(view: View, key: string, from: number, upTo: number): number | undefined {
  const value = view.raw(key)
  if (typeof value !== 'number') return undefined
  if (value >= from && value <= upTo) return value
  view.report({ code: 'input/out-of-range', message: `${key} must be from ${from} to ${upTo}, got ${value}` }, key)
  return undefined
}

/** `09:14` as minutes after midnight. */
function timeOf(view: View): number | undefined {
  const text = view.text('at')
  if (text === undefined) return undefined
  const [, hours, minutes] = /^(\d{1,2}):(\d{2})$/.exec(text) ?? []
  if (hours !== undefined && Number(hours) < 24 && Number(minutes) < 60) return 60 * Number(hours) + Number(minutes)
  view.report(
    { code: 'input/unreadable', message: `"${text}" is no time of day`, hint: 'write hours and minutes, as 09:14' },
    'at',
  )
  return undefined
}
