import { angle, chance, fixed, inwardLimits, length, micrometre, roundedDown, roundedUp } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { FaceList } from '../record/face-take-off.ts'
import type { GrindingList, Turn } from '../record/in-hand.ts'
import type { Learnt } from '../record/learn.ts'
import type { Column, Recorded } from '../record/record-batch.ts'
import type { Standing } from '../record/standing.ts'
import { whatToDo, whatToFace } from '../sheets/views/piece-words.ts'
import { ableText } from '../sheets/views/results-view.ts'
import type { Options } from './options.ts'
import { table } from './table.ts'

const right = (head: string) => ({ head, align: 'right' as const })

/** Where a batch stands, for the terminal. */
export function recordedText(plan: Plan, recorded: Recorded, options: Pick<Options, 'units'>): string {
  const { part, batch, date, fingerprint } = plan
  const head = `${part.number} ${part.title}, revision ${part.revision}, batch ${batch.number}, plan issued ${date} (${fingerprint})\n`
  return [
    head,
    standingText(recorded.standing),
    columnsText(recorded.columns, options),
    doubtsText(recorded, options),
    ...recorded.grinding.map(list => grindingText(list, options)),
    recorded.face ? faceText(recorded.face, options) : '',
    recorded.learnt ? learntText(recorded.learnt) : '',
  ]
    .filter(text => text !== '')
    .join('\n')
}

function standingText(standing: Standing): string {
  const { wanted, started, extras, lost, out, doubtful, left, upTo, startMore } = standing
  const names = (list: readonly { readonly serial: string }[]) => list.map(({ serial }) => serial).join(', ')
  const lines = [
    `${started} pieces started for ${wanted} good ones, and ${extras} to set up and to cut; measured up to operation ${upTo ?? '–'}`,
    ...(lost.length > 0
      ? [
          `lost: ${lost.map(({ serial, operation, why }) => `${serial}${operation === undefined ? '' : ` at ${operation}`}${why === undefined ? '' : `, ${why}`}`).join('; ')}`,
        ]
      : []),
    ...(out.length > 0 ? [`out of limits: ${names(out)}`] : []),
    ...(doubtful.length > 0 ? [`in doubt: ${names(doubtful)}`] : []),
    `${left} left; that they give ${wanted}: ${chance(standing.chance)}`,
    ...(startMore === undefined ? [] : [`start ${startMore} more now`]),
  ]
  return `${lines.join('\n')}\n`
}

function columnsText(columns: readonly Column[], { units }: Pick<Options, 'units'>): string {
  if (columns.length === 0) return 'Nothing is measured yet.\n'
  const size = ({ unit }: Column, value: number | undefined, places = 3): string =>
    value === undefined ? '' : unit === 'mm' ? length(value, units, places) : fixed(value, unit === 'µm' ? 2 : 1)
  // As the sheets print them: a limit is never shown wider than it is.
  const limit = (column: Column, value: number | undefined, round: typeof roundedUp): string =>
    value !== undefined && column.unit === 'mm' ? round(value, column.places, units) : size(column, value)
  const rows = columns.map(column => [
    String(column.after),
    column.name,
    limit(column, column.lower, roundedUp),
    limit(column, column.upper, roundedDown),
    String(column.pieces.length),
    size(column, Math.min(...column.pieces.map(({ least }) => least)), 4),
    size(column, Math.max(...column.pieces.map(({ most }) => most)), 4),
    String(column.inLimits),
    column.inDoubt === 0 ? '' : String(column.inDoubt),
    column.out === 0 ? '' : String(column.out),
    ableText(column),
  ])
  return table(
    [
      right('after'),
      { head: `measured (${units})` },
      right('lower'),
      right('upper'),
      right('pieces'),
      right('least'),
      right('most'),
      right('in limits'),
      right('in doubt'),
      right('out'),
      { head: 'capable' },
    ],
    rows,
  )
}

function doubtsText({ judged }: Recorded, { units }: Pick<Options, 'units'>): string {
  const open = judged.filter(({ verdict }) => verdict !== 'in limits')
  if (open.length === 0) return ''
  const rows = open.map(one => [
    one.serial,
    one.name,
    one.unit === 'mm' ? length(one.form.least, units, 4) : fixed(one.form.least, 2),
    one.unit === 'mm' ? length(one.form.most, units, 4) : fixed(one.form.most, 2),
    one.received ?? one.verdict,
    chance(one.chance),
    one.settle[0] ?? '',
  ])
  return table(
    [
      right('piece'),
      { head: 'measured' },
      right('least'),
      right('most'),
      { head: 'verdict' },
      right('chance that it lies within'),
      { head: 'what settles it' },
    ],
    rows,
  )
}

function grindingText(list: GrindingList, { units }: Pick<Options, 'units'>): string {
  const mm = (value: number, places = 3) => length(value, units, places)
  const { surface, operation, lower, upper, turns, lost, setUpPiece } = list
  const known = list.case
    ? `; case ${mm(list.case.certified, 2)} ${list.case.by === 'certificate' ? 'certified' : 'ordered'}, ${mm(list.case.wanted)} to be left and taken later`
    : ''
  const head = `${surface}, operation ${operation}: ${inwardLimits(lower, upper, 3, units).join(' to ')}${known}\n${
    setUpPiece === undefined ? 'no piece bears an error in setting up' : `set up with piece ${setUpPiece}`
  }\n`
  const row = (turn: Turn): readonly string[] => {
    const { inHand, window } = turn
    return [
      turn.serial,
      mm(inHand.least, 4),
      mm(inHand.most, 4),
      mm(inHand.bow),
      window.from === undefined || window.to === undefined ? 'none' : `${mm(window.from)} to ${mm(window.to)}`,
      mm(Math.max(0, window.bears.most)),
      whatToDo(turn, units),
      turn.assumed.join('; '),
    ]
  }
  return (
    head +
    table(
      [
        right('piece'),
        right('least'),
        right('most'),
        right('bow'),
        { head: 'make to' },
        right('run true to'),
        { head: 'what to do' },
        { head: 'taken for granted' },
      ],
      [...turns, ...lost].map(row),
    )
  )
}

function faceText(list: FaceList, { units }: Pick<Options, 'units'>): string {
  const mm = (value: number | undefined): string => (value === undefined ? '' : length(value, units, 3))
  const head = `top face, operation ${list.operation}: length ${inwardLimits(list.length.lower, list.length.upper, 3, units).join(' to ')}, to bring the ${list.port} edge to ${mm(list.wanted)}\n`
  const rows = list.turns.map(turn => [
    turn.serial,
    mm(turn.edge),
    mm(turn.length),
    mm(turn.off),
    mm(turn.comes),
    turn.sooner === undefined ? '' : angle(turn.sooner, 2),
    whatToFace(turn),
    turn.assumed.join('; '),
  ])
  return (
    head +
    table(
      [
        right('piece'),
        right('edge, milled'),
        right('make length'),
        right('comes off'),
        right('edge then at'),
        right('sooner °'),
        { head: 'what to do' },
        { head: 'taken for granted' },
      ],
      rows,
    )
  )
}

function learntText({ operation, firm, surfaces, length: along, bow }: Learnt): string {
  const um = (value: number): string => micrometre(value, 1)
  const rows = surfaces.flatMap(({ surface, growth, planned, ovality }) => [
    [
      surface,
      growth ? String(growth.pieces) : '',
      planned ? `${um(planned.least)} to ${um(planned.most)}` : '',
      growth ? um(growth.mean) : '',
      growth ? um(growth.spread) : '',
      growth ? `${um(growth.mean - growth.ofAll)} to ${um(growth.mean + growth.ofAll)}` : '',
      ovality ? `${um(ovality.all)}${ovality.lowerBound ? ' at least' : ''}` : '',
      ovality?.leans ? `leans to ${fixed(ovality.leans.at, 0)}°: how did they stand?` : '',
    ],
  ])
  const more = [
    ...(along ? [`length: grows ${um(along.mean)} ± ${um(along.ofMean)} µm as a whole, ${along.pieces} pieces`] : []),
    ...(bow ? [`bow: up to ${um(bow.most)} µm, ${bow.pieces} pieces`] : []),
  ]
  return `Operation ${operation}, ${firm}: growth a side and ovality, µm\n${table(
    [
      { head: 'surface' },
      right('pieces'),
      { head: 'planned' },
      right('mean'),
      right('spread'),
      { head: 'a like load, all of it' },
      right('ovality of all'),
      { head: '' },
    ],
    rows,
  )}${more.map(line => `${line}\n`).join('')}`
}
