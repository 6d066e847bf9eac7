import { beforeAll, describe, expect, it, vi } from 'vitest'
import type { Units } from '../../src/figures.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Item } from '../../src/sheets/display-list.ts'
import { type LaidDocument, layOutDocument } from '../../src/sheets/lay-out-document.ts'
import { packet } from '../../src/sheets/packet.ts'
import type { NamedDocument } from '../../src/sheets/print-document.ts'
import { openTemplates } from '../../src/sheets/render-template.ts'
import { demoPlan, templates, typeface } from './demo-packet.ts'
import { aboutOf, numbersIn, type Pool, poolOf, twinOf, wordsOf } from './plan-figures.ts'
import type { Record } from './recorded-figures.ts'

const { record, printed } = vi.hoisted(() => ({
  record: { figures: [], drawn: new Set() } as Record,
  printed: [] as NamedDocument[],
}))
vi.mock('../../src/figures.ts', async original => {
  const { recording } = await import('./recorded-figures.ts')
  return recording(await original(), record)
})
// The packet as it goes to the painters.
vi.mock('../../src/sheets/print-document.ts', () => ({
  printDocuments: async (documents: readonly NamedDocument[]) => {
    printed.push(...documents)
    return {}
  },
}))

/** Every demo part, and in inches those that have every kind of sheet between them. */
const PACKETS: readonly (readonly [string, Units])[] = [
  ['OX-098-21', 'mm'],
  ['OX-098-30', 'mm'],
  ['OX-098-31', 'mm'],
  ['OX-098-34', 'mm'],
  ['OX-105-02', 'mm'],
  ['OX-112-03', 'mm'],
  ['OX-131-07', 'mm'],
  ['OX-105-02', 'inch'],
  ['OX-131-07', 'inch'],
]

/** What stands on paper in figures and is no figure of the job. */
type Kind = {
  readonly kind: string
  readonly is: (text: string, plan: Plan, template: string) => boolean
  /** Stands on its sheet once. */
  readonly once?: true
}
const KINDS: readonly Kind[] = [
  {
    kind: 'how large to print what is cut out',
    is: text => text.startsWith('Check paper, true size: print at 100 %'),
    once: true,
  },
  {
    kind: 'the number of a piece to measure',
    is: (text, { batch }) => /^(?:Piece|Marked) /.test(text) && upTo(text.replace(/^\w+ /, ''), batch.start),
  },
  {
    kind: 'the number of a piece to mark or to measure',
    is: (text, { batch }, template) => ['material', 'matrix'].includes(template) && upTo(text, batch.start),
    once: true,
  },
  {
    kind: 'the number of a bar',
    is: (text, { material }, template) => template === 'material' && upTo(text, material.bars),
    once: true,
  },
  {
    kind: 'the number of a source',
    is: (text, { workings }, template) =>
      template === 'workings' && upTo(text, new Set(workings.map(({ source }) => source)).size),
  },
]

/** Tells of each text of one sheet whether it is of a stated kind. */
function kindsOn(plan: Plan, template: string): (text: string) => boolean {
  const used = new Set<string>()
  return text =>
    KINDS.some(({ kind, is, once }) => {
      if (!is(text, plan, template) || (once && used.has(`${kind} ${text}`))) return false
      used.add(`${kind} ${text}`)
      return true
    })
}

const upTo = (text: string, most: number): boolean => /^[1-9]\d*$/.test(text.trim()) && Number(text) <= most

/** Every text of a page: lines, numbers in rings, words of drawings. */
const textsOf = (page: readonly Item[]): readonly Text[] =>
  page.flatMap((item): readonly Text[] => {
    if (item.kind === 'text' || item.kind === 'ring') return [{ text: item.text, drawn: false }]
    if (item.kind !== 'picture') return []
    return item.picture.marks.flatMap(mark => (mark.kind === 'text' ? [{ text: mark.text, drawn: true }] : []))
  })
type Text = { readonly text: string; readonly drawn: boolean }

/** Raw numbers by what was written for them. */
function rawsByText(): ReadonlyMap<string, ReadonlySet<number>> {
  const raws = new Map<string, Set<number>>()
  for (const { raw, text } of record.figures)
    for (const token of numbersIn(text)) raws.set(token, (raws.get(token) ?? new Set()).add(raw))
  return raws
}

type Printed = { readonly document: NamedDocument; readonly laid: LaidDocument }
type Packet = { readonly plan: Plan; readonly sets: readonly Printed[] }

async function packetOf(name: string, units: Units): Promise<Packet> {
  const plan = twinOf(demoPlan(name))
  record.figures.length = 0
  record.drawn.clear()
  printed.length = 0
  await packet(plan, { templates, typeface, formats: { pdf: true, html: true }, paper: 'a4', units })
  // What is for the screen alone has no pages there; here it has, to be read.
  const sets = printed.map(document => ({
    document,
    laid: layOutDocument({ ...document, screenOnly: false }, openTemplates(templates), typeface),
  }))
  if (sets.length === 0) throw new Error('nothing was printed')
  return { plan, sets }
}

/** Numbers on the sheets that are neither in the part of the Plan that the sheet is about, nor of a stated kind. */
const strangers = ({ plan, sets }: Packet): readonly string[] => sets.flatMap(set => strangersIn(plan, set))

function strangersIn(plan: Plan, { document, laid }: Printed): readonly string[] {
  const raws = rawsByText()
  return laid.sheets.flatMap(sheet => {
    // Two that find room on one page are one sheet.
    const asked = document.sheets.filter(({ names }) => names.every(name => sheet.names.includes(name)))
    const pools = asked.map(one => aboutOf(plan, one))
    const about = {
      numbers: new Set(pools.flatMap(({ numbers }) => [...numbers])),
      words: new Set(pools.flatMap(({ words }) => [...words])),
    }
    const kinds = asked.map(({ template }) => kindsOn(plan, template))
    const isOfKind = (text: string): boolean => kinds.some(is => is(text))
    const where = `${asked[0]?.template} ${sheet.corner}`
    return laid.pages.slice(sheet.from - 1, sheet.to).flatMap((page, at) =>
      textsOf(page)
        .filter(({ text }) => text !== `${sheet.from + at} of ${laid.pages.length}`)
        .filter(({ text }) => !isOfKind(text))
        .flatMap(text => unknownIn(text, about, raws).map(token => `${where}: ${token} in "${text.text}"`)),
    )
  })
}

/**
 * How a drawing shows the part, which is the drawing's own affair: its scale, ISO 5455, as 1:2 or 5:1; and on a clock face
 * where it cuts the part and from where it looks.
 */
const SHOWN = /\b(?:\d+:1|1:\d+)\b|(?:Cut through|looked at from) (?:about )?(?:half past )?(?:1[0-2]|[1-9])\b/g

function unknownIn(
  { text, drawn }: Text,
  about: Pool,
  raws: ReadonlyMap<string, ReadonlySet<number>>,
): readonly string[] {
  const isKnown = (token: string): boolean =>
    (drawn && record.drawn.has(token)) ||
    (about.numbers.has(Number(token)) && String(Number(token)) === token) ||
    [...(raws.get(token) ?? [])].some(raw => about.numbers.has(raw))
  return wordsOf(drawn ? text.replace(SHOWN, '') : text)
    .filter(word => !about.words.has(word))
    .flatMap(numbersIn)
    .filter(token => !isKnown(token))
}

it('sees every figure that the house can write', async () => {
  const house = await vi.importActual<typeof import('../../src/figures.ts')>('../../src/figures.ts')
  const recorded = await import('../../src/figures.ts')
  // A word, a unit, a number that goes on to a drawing.
  const others = ['unitOf', 'inUnits', 'asDrawn', 'signed']
  const unseen = Object.entries(house).filter(([name, write]) => Reflect.get(recorded, name) === write)
  expect(unseen.map(([name]) => name).toSorted()).toEqual(others.toSorted())
})

describe.each(PACKETS)('the packet of %s in %s', (name, units) => {
  let found: Packet
  beforeAll(async () => {
    found = await packetOf(name, units)
  }, 60_000)

  it('writes no figure that the plan does not hold as it stands', () => {
    const { numbers } = poolOf(found.plan)
    expect(record.figures.length).toBeGreaterThan(100)
    expect(record.figures.filter(({ raw }) => !numbers.has(raw))).toEqual([])
  })

  it('says on every sheet only what the plan says of its subject', () => {
    expect(strangers(found)).toEqual([])
  })
})
