import { type Comparison, isEmpty, SECTIONS } from '../compare/compare-plans.ts'
import type { Difference } from '../compare/differences.ts'
import type { SetAnew } from '../compare/set-anew.ts'
import type { SizeChange } from '../compare/weighed.ts'
import { fixed, inwardLimits, length } from '../figures.ts'
import type { Plan } from '../plan/plan.ts'
import type { More } from './compare.ts'
import type { Options } from './options.ts'
import { portsCompared } from './ports-compared.ts'
import { table } from './table.ts'

type Shown = Pick<Options, 'units'>
type Both = {
  readonly was: Plan
  readonly is: Plan
  readonly compared: Comparison
  readonly more: More
  readonly drawing: boolean
}

const right = (head: string) => ({ head, align: 'right' as const })
/** Lines of a section that is told elsewhere in words; the rest is data. */
const MOST = 12

/** Two revisions side by side, for the terminal: what differs, what is set anew, what is withdrawn, what becomes of pieces in work. */
export function comparedText(both: Both, options: Options): string {
  const { was, is, compared, more, drawing } = both
  const { units } = options
  const name = ({ part }: Plan): string => `${part.number} revision ${part.revision}`
  const { quantity } = is.batch
  const head = `${name(was)} against ${name(is)}, both for ${quantity} pieces in ${is.shop.name}, ${is.date}\n`
  if (isEmpty(compared)) return `${head}Nothing differs.\n`
  return [
    head,
    ...(was.batch.quantity === quantity && was.date === is.date
      ? []
      : [
          `the first was planned for ${was.batch.quantity} pieces on ${was.date}: start, cost and dates differ by that too\n`,
        ]),
    ...(drawing
      ? linesOf('Drawing', compared.sections.drawing, 40)
      : ['\nDrawing: told by the plans alone, since one of them is a plan as issued\n']),
    ...timingText(compared),
    ...(same(was.ports, is.ports) ? [] : [`\n${portsCompared(was, is, options)}`]),
    ...sizesText(compared.sizes, { units }),
    ...linesOf(
      'Stock and case',
      compared.sections['stock and case'].filter(({ path }) => TOLD.test(path.join(' '))),
      MOST,
    ),
    ...linesOf(
      'Route',
      compared.sections.route.filter(({ path }) => path.length <= 2 || path.at(-1) === 'order'),
      MOST,
    ),
    ...anewText(more, { units }),
    ...withdrawnText(more),
    ...recallText(compared),
    ...piecesText(compared),
    ...linesOf(
      'Cost and dates',
      compared.sections['cost and dates'].filter(({ path }) => path[0] !== 'cost' || path[2] === 'usual'),
      MOST,
      2,
    ),
    `\nDiffering in all, as --json lists them: ${SECTIONS.filter(section => compared.sections[section].length > 0)
      .map(section => `${section} ${compared.sections[section].length}`)
      .join(', ')}.\nWhat differs is told, not what is better: that the engine shows, with \`trial\`.\n`,
  ].join('')
}

/** Of stock and case what somebody acts on. */
const TOLD = /verdict|margin|ordered|process|hardness\b|depth|perSide needed|perSide least/

const same = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other)

const valueSaid = (value: Difference['was'], places: number): string =>
  value === undefined ? 'not there' : typeof value === 'number' ? String(Number(value.toFixed(places))) : String(value)

export function linesOf(head: string, differences: readonly Difference[], most: number, places = 4): readonly string[] {
  if (differences.length === 0) return []
  const rows = differences
    .slice(0, most)
    .map(({ path, was, is }) => `  ${path.join(', ')}: ${valueSaid(was, places)} → ${valueSaid(is, places)}\n`)
  return [`\n${head}\n`, ...rows, ...(differences.length > most ? [`  … and ${differences.length - most} more\n`] : [])]
}

export const timingText = ({ timing }: Pick<Comparison, 'timing'>): readonly string[] =>
  timing.length === 0
    ? []
    : [
        '\nTiming\n',
        ...timing.map(
          ({ port, was, is, higher, making, withinMaking }) =>
            `  ${port} opens at ${fixed(is, 2)}° instead of ${fixed(was, 2)}°, its edge ${fixed(Math.abs(higher), 3)} mm ${higher > 0 ? 'higher' : 'lower'}; milling varies by ±${fixed(making, 2)}°${withinMaking ? ', so that is within what making varies' : ''}\n`,
        ),
      ]

function sizesText(sizes: readonly SizeChange[], { units }: Shown): readonly string[] {
  if (sizes.length === 0) return []
  const limits = (of: SizeChange['was'], { places, written }: SizeChange): string => {
    if (!of) return ''
    const ends = inwardLimits(of.lower, of.upper, places, units)
    return (written === 'hole' ? ends : ends.toReversed()).join(' / ')
  }
  return [
    `\nSizes that operations leave (${units})\n`,
    table(
      [
        { head: 'operation' },
        { head: 'size' },
        right('was'),
        right('is'),
        { head: 'how much' },
        { head: 'pieces made before' },
      ],
      sizes.map(size => [
        size.operation,
        size.size,
        limits(size.was, size),
        limits(size.is, size),
        size.weight,
        size.interchange ?? '',
      ]),
    ),
  ]
}

function anewText({ bar, setAnew }: More, shown: Shown): readonly string[] {
  if (bar.length + setAnew.length === 0) return []
  return [
    '\nTo set anew, in shop order\n',
    ...bar.map(({ what, was, is }) => `  ${what}: ${was} → ${is}\n`),
    ...setAnew.flatMap(one => [
      `  ${one.number} ${one.operation}\n`,
      ...linesAnew(one, shown).map(line => `    ${line}\n`),
    ]),
  ]
}

function linesAnew({ sizes, holding, windows, programs, add, leave }: SetAnew, { units }: Shown): readonly string[] {
  const figure = (what: string, value: number | undefined): string =>
    value === undefined
      ? 'none'
      : what === 'tilt' || what === 'rotary'
        ? `${fixed(value, 3)}°`
        : length(value, units, 3)
  return [
    ...(sizes.length > 0 ? [`sizes: ${sizes.map(({ size }) => size).join(', ')}, as above`] : []),
    ...(holding ? ['held otherwise: see its sheet'] : []),
    ...windows.map(
      ({ window, changes }) =>
        `${window}: ${changes.map(({ what, was, is }) => `${what} ${figure(what, was)} → ${figure(what, is)}`).join(', ')}`,
    ),
    ...programs.map(program => `program: ${program}`),
    ...(add.length > 0 ? [`add ${add.join(', ')}`] : []),
    ...(leave.length > 0 ? [`not wanted any more: ${leave.join(', ')}`] : []),
  ]
}

const withdrawnText = ({ withdrawn }: More): readonly string[] =>
  withdrawn.length === 0
    ? []
    : [
        '\nPaper to withdraw\n',
        ...withdrawn.map(
          ({ set, changed, alike }) =>
            `  ${set}: ${changed.join('; ')}${alike > 0 ? `; ${alike} more say the same but for revision and fingerprint` : ''}\n`,
        ),
      ]

const recallText = ({ recall }: Comparison): readonly string[] =>
  recall.length === 0
    ? []
    : [
        '\nOrders to recall where they are out\n',
        ...recall.map(({ order, firm, why }) => `  ${order}, ${firm}: ${why}\n`),
      ]

function piecesText({ pieces }: Comparison): readonly string[] {
  if (pieces.every(({ becomes }) => becomes === 'yes'))
    return ['\nPieces in work, whatever is done to them, can become the new part.\n']
  return [
    '\nPieces in work: whether they can become the new part\n',
    table(
      [right(''), { head: 'done as far as' }, { head: 'becomes' }, { head: 'because' }],
      pieces.flatMap(({ number, operation, becomes, because }) => {
        const [first = '', ...more] = because
        return [[String(number), operation, becomes, first], ...more.map(line => ['', '', '', line])]
      }),
    ),
  ]
}
