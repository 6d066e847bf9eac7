import { fixed } from '../figures.ts'
import type { Trial } from '../part/trial.ts'
import type { Compared } from '../trial/compared.ts'
import type { JudgedRun, MeasureResult, TrialResult } from '../trial/judge-trial.ts'
import { linesOf, timingText } from './compare-text.ts'
import { table } from './table.ts'
import type { LinersDiffer } from './trial-liners.ts'

const right = (head: string) => ({ head, align: 'right' as const })
const signedTo = (value: number, places: number): string => {
  const text = fixed(value, places)
  return text.startsWith('-') ? `−${text.slice(1)}` : Number(text) === 0 ? text : `+${text}`
}
const percent = (share: number): string => signedTo(100 * share, 2)
const sure = (confidence: number): string => `${fixed(100 * confidence, confidence === 0.95 ? 0 : 1)} %`

/** The result of a trial for the terminal: what it shows first, then what that rests on. */
export function trialText(trial: Trial, result: TrialResult, liners: readonly LinersDiffer[]): string {
  const { main } = result
  return [
    headOf(trial),
    ...main.differences.map(compared => verdictText(trial, main, compared)),
    ...withoutDoubtfulText(result),
    ...correctedText(result),
    `\nFittings, ${main.measure} (${main.unit})\n`,
    table(
      [right('fitting'), { head: 'liner' }, { head: 'block' }, right('runs'), right('mean')],
      main.fittings.map(({ number, liner, block, runs, mean }) => [
        String(number),
        liner,
        block,
        String(runs),
        fixed(mean, main.places),
      ]),
    ),
    ...main.drift.map(
      ({ block, each }) =>
        `drift${main.drift.length > 1 ? ` in block ${block}` : ''}: ${signedTo(each, main.places + 1)} ${main.unit} a fitting, taken out\n`,
    ),
    ...othersText(result.others),
    ...steadyText(result),
    ...airText(result),
    ...runsText(result.runs),
    ...liners.flatMap(differText),
    '\nIt holds for this engine, on this load, with this fuel. What the ports have to do with it no figure here tells.\n',
  ].join('')
}

/** What is made otherwise, drawing first; of a long list the beginning. */
const differText = ({ liner, of, timing, drawing }: LinersDiffer): readonly string[] => [
  `\nWhat differs between the liners: A → ${liner}, as drawn and planned${timing.length + drawing.length === 0 ? ': nothing' : ''}\n`,
  ...linesOf('Drawing', drawing, 12),
  ...timingText({ timing }),
  ...(drawing.length > 12 ? [`  all of it: linerwright compare ${of.join(' ')}\n`] : []),
]

function headOf({ engine, load, liners, date, worthwhile }: Trial): string {
  const of = liners.map(
    ({ letter, part, revision, serial }) =>
      `${letter}: ${part}${revision === undefined ? '' : ` revision ${revision}`}${serial === undefined ? '' : `, piece ${serial}`}\n`,
  )
  const what = `${load.kind}${load.setting === undefined ? '' : `, ${load.setting}`}`
  return `${engine}, ${what}${date === undefined ? '' : `, ${date}`}\n${of.join('')}A difference of ${Number((100 * worthwhile).toFixed(2))} % of power would matter\n`
}

function verdictText(trial: Trial, { unit, places, measure }: MeasureResult, compared: Compared): string {
  const { power, liner, difference, half, freedom, confidence, s, ofFittings, p } = compared
  if (!power) return ''
  const { budget, permutation, verdict, fittingsToSettle, exponent, densityRatio } = power
  const law =
    exponent === 3
      ? `, the cube of speed${densityRatio === undefined ? '' : ` by ${fixed(densityRatio, 4)} of density`}`
      : ''
  const settles = verdict.shown
    ? ''
    : fittingsToSettle === undefined
      ? '  no number of fittings settles it: what else is in the budget is too wide\n'
      : `  ${fittingsToSettle} fittings of each liner would settle it: ${Math.max(0, fittingsToSettle - timesFitted(trial, compared))} more, in a trial of its own\n`
  return [
    `\n${verdict.shown ? 'Shown' : 'Not shown'}: ${verdict.says}\n`,
    settles,
    `  ${measure}: ${liner} less A ${signedTo(difference, places)} ± ${fixed(half, places)} ${unit} (${sure(confidence)}, ${freedom} degrees of freedom)\n`,
    `  power: ${percent(power.difference)} ± ${fixed(100 * power.half, 2)} %${law}\n`,
    '  what the doubt is made of, % of power:\n',
    ...budget.shares.map(share => `    ${share.what}: ${fixed(100 * share.u, 3)} (${share.freedom})\n`),
    ...(budget.shares.length > 1 ? [`    together: ${fixed(100 * budget.u, 3)} (${budget.freedom})\n`] : []),
    `  spread of a fitting's mean ${fixed(s, places + 1)} ${unit}${ofFittings === undefined ? '' : `, of the fittings alone ${fixed(ofFittings, places + 1)}`}; p ${p < 0.0001 ? 'under 0.0001' : fixed(p, 4)}\n`,
    ...(permutation
      ? [
          `  labels put on otherwise show as much in ${share(permutation.byDifference, permutation.labels)} by the means, in ${share(permutation.byT, permutation.labels)} with the drift out: a look, no verdict\n`,
        ]
      : []),
    ...(compared.withoutDrift
      ? [
          `  with the drift left in: ${signedTo(compared.withoutDrift.difference, places)} ± ${fixed(compared.withoutDrift.half, places)} ${unit}\n`,
        ]
      : []),
  ].join('')
}

const share = (part: number, of: number): string => `${Math.round(part * of)} of ${of}`

function timesFitted({ runs }: Trial, { liner }: Compared): number {
  const fittings = (letter: string) =>
    new Set(runs.filter(run => run.liner === letter && run.rejected === undefined).map(run => run.fitting)).size
  return Math.min(fittings('A'), fittings(liner))
}

function withoutDoubtfulText({ withoutDoubtful, runs }: TrialResult): readonly string[] {
  if (!withoutDoubtful) return []
  const doubtful = runs.filter(({ doubts, rejected }) => doubts.length > 0 && rejected === undefined)
  const { unit, places, differences } = withoutDoubtful
  return [
    `\nWithout run ${doubtful.map(({ number }) => number).join(', ')}, which something speaks against:\n`,
    ...differences.map(
      ({ liner, difference, half, power }) =>
        `  ${liner} less A ${signedTo(difference, places)} ± ${fixed(half, places)} ${unit}${power ? `; ${power.verdict.shown ? 'shown' : 'not shown'}: ${power.verdict.says}` : ''}\n`,
    ),
  ]
}

function correctedText({ corrected, air }: TrialResult): readonly string[] {
  if (!corrected) return []
  const { rule, source, least, most, differences, referenceSpeeds } = corrected
  return [
    `\nThe air moved by ${fixed(100 * (air?.moved ?? 0), 1)} %. Corrected by ${rule}, beside the verdict and not in its place (made for four-strokes; ${source}):\n`,
    `  factors ${fixed(least, 4)} to ${fixed(most, 4)}; it is good for ${corrected.from} to ${corrected.upTo}${corrected.within ? '' : ', and these go beyond'}\n`,
    ...differences.map(
      ({ liner, difference, half }) => `  power: ${liner} less A ${percent(difference)} ± ${fixed(100 * half, 2)} %\n`,
    ),
    ...(referenceSpeeds ?? []).map(
      ({ liner, flat, steep }) =>
        `  ${liner} on this load in the air of reference: ${fixed(Math.min(flat, steep), 0)} to ${fixed(Math.max(flat, steep), 0)} rpm\n`,
    ),
  ]
}

function othersText(others: readonly MeasureResult[]): readonly string[] {
  const rows = others.flatMap(({ measure, unit, places, differences }) =>
    differences.map(({ liner, old, difference, half }) => [
      measure,
      unit,
      fixed(old, places),
      liner,
      signedTo(difference, places),
      fixed(half, places),
    ]),
  )
  if (rows.length === 0) return []
  return [
    '\nRead beside it, no verdict\n',
    table([{ head: 'measure' }, { head: 'unit' }, right('A'), { head: 'liner' }, right('less A'), right('±')], rows),
  ]
}

function steadyText({ steady, runs }: TrialResult): readonly string[] {
  if (steady.length === 0)
    return ['\nWhether temperatures were steady is not known: give three readings of head at equal times\n']
  const settled = steady.filter(({ isSteady }) => isSteady).length
  return [
    `\nSteady in ${settled} of ${steady.length} runs with three readings${steady.length < runs.length ? `; ${runs.length - steady.length} runs have fewer` : ''}\n`,
  ]
}

function airText({ air, corrected }: TrialResult): readonly string[] {
  if (!air) return []
  const small = corrected ? '' : '; nothing is corrected'
  return [
    `Air from ${fixed(air.thinnest, 4)} to ${fixed(air.densest, 4)} kg/m³, ${fixed(100 * air.moved, 2)} % apart${small}\n`,
  ]
}

function runsText(runs: readonly JudgedRun[]): readonly string[] {
  const rejected = runs.filter(run => run.rejected !== undefined)
  return rejected.map(run => `Run ${run.number} does not count: ${run.rejected}\n`)
}
