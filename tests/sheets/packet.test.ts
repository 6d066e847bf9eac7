import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { describe, expect, it } from 'vitest'
import type { OperationSize } from '../../src/operation-size.ts'
import { packet } from '../../src/sheets/packet.ts'
import { subcontract } from '../../src/sheets/subcontract.ts'
import type { Paper } from '../../src/sheets/theme.ts'
import { demoPlan, templates, typeface } from './demo-packet.ts'

const both = { pdf: true, html: true }
const [asPdf, asHtml] = [
  { pdf: true, html: false },
  { pdf: false, html: true },
]
const options = (paper: Paper, formats = both) => ({ templates, typeface, formats, paper, units: 'mm' as const })
const plan = demoPlan()

/** The words of every page, as a general-purpose reader finds them. */
async function textsOf(pdf: Uint8Array): Promise<readonly string[]> {
  const document = await getDocument({ data: pdf.slice(), verbosity: 0 }).promise
  const pages = Array.from({ length: document.numPages }, (_, index) => document.getPage(index + 1))
  const contents = await Promise.all(pages.map(async page => (await page).getTextContent()))
  return contents.map(({ items }) =>
    items
      .map(item => ('str' in item ? item.str : ''))
      .join(' ')
      .replace(/\s+/g, ' ')
      .normalize('NFKC'),
  )
}

/** Printed once a paper, for every claim about it. */
const once = <T>(make: () => Promise<T>): (() => Promise<T>) => {
  let made: Promise<T> | undefined
  return () => {
    made ??= make()
    return made
  }
}
const printedOn = (paper: Paper) => {
  const printed = once(() => packet(plan, options(paper)))
  const texts = once(async () => {
    const { documents } = await printed()
    return Promise.all(documents.map(async ({ name, pdf }) => ({ name, pages: await textsOf(pdf) })))
  })
  return { packet: printed, texts }
}
const PRINTED = { a4: printedOn('a4'), letter: printedOn('letter') }

/** Printed once more: the liner on A4, on letter a sleeve, of a third as many pages. */
const TWICE = {
  a4: async () => [await PRINTED.a4.packet(), await packet(plan, options('a4'))] as const,
  letter: async () => {
    const sleeve = demoPlan('OX-112-03')
    return [await packet(sleeve, options('letter')), await packet(sleeve, options('letter'))] as const
  },
}

/** In the rotary's jaws, by the figures of the fixture, which the plan's holding does not tell. */
function heldAtPorts(): string {
  const { grip } = plan.fixture ?? {}
  if (!grip) throw new Error('the demo has no fixture')
  return `Grip ${grip.length.toFixed(1)} mm of ${grip.surface}, Ø ${grip.diameter.toFixed(3)} mm now, at its lower end`
}

/** Both limits as a gauge of so many places can tell them: beside each other, or in a head one below the other. */
function printedPairs({ lower, upper }: { lower: number; upper: number }, places: number, into: 'inward' | 'outward') {
  const [up, down] = into === 'inward' ? [Math.ceil, Math.floor] : [Math.floor, Math.ceil]
  const step = 10 ** places
  const low = (up(lower * step + (into === 'inward' ? -1e-6 : 1e-6)) / step).toFixed(places)
  const high = (down(upper * step + (into === 'inward' ? 1e-6 : -1e-6)) / step).toFixed(places)
  return [`${low}/${high}`, `${high}/${low}`, `${low}${high}`, `${high}${low}`]
}

/** A size stands behind the number of its characteristic, by the pair to judge by; one without a number, anywhere. */
function isPrinted(size: OperationSize & { readonly judge?: number | undefined }, words: string): boolean {
  const own = plan.inspection.characteristics.find(({ number }) => number === size.judge)
  if (!own) {
    const bare = words.replaceAll(' ', '')
    return [0, 1, 2, 3, 4].some(places =>
      [...printedPairs(size, places, 'inward'), ...printedPairs(size, places, 'outward')].some(pair =>
        bare.includes(pair),
      ),
    )
  }
  const read = plan.inspection.characteristics.find(({ number }) => number === own.readAt) ?? own
  if (read !== own && !words.includes(` ${own.number} as ${read.number}`)) return false
  const { lower = Number.NaN, upper = Number.NaN } = read.accept
  const pairs = printedPairs({ lower, upper }, read.places, 'inward')
  return [...words.matchAll(new RegExp(` ${read.number} `, 'g'))].some(({ index }) => {
    const behind = words.slice(index, index + 150).replaceAll(' ', '')
    return pairs.some(pair => behind.includes(pair))
  })
}

describe.each<Paper>(['a4', 'letter'])('the packet on %s', paper => {
  const { packet: printed, texts } = PRINTED[paper]
  const twice = TWICE[paper]

  it('gives the same bytes for the same plan', async () => {
    const [first, again] = await twice()
    expect(first.documents.map(({ name }) => name)).toEqual(again.documents.map(({ name }) => name))
    for (const [index, { pdf }] of first.documents.entries())
      expect(Buffer.compare(pdf, again.documents[index]?.pdf ?? new Uint8Array())).toBe(0)
    expect(first.html === again.html).toBe(true)
  })

  it('is a document for the floor, one for the inspector and one for each visit to a firm', async () => {
    const { documents } = await printed()
    expect(documents.map(({ name }) => name)).toEqual([
      'floor',
      'inspection',
      'order-1-quillfen hardening',
      'order-2-quillfen hardening',
      'order-3-brackwater grinding',
    ])
  })

  it('says on every page which part, batch, issue and sheet of its set it is', async () => {
    for (const { name, pages } of await texts()) {
      const order = /^order-(\d)/.exec(name)?.[1]
      const set = order ? `Order ${order}, sheet` : name === 'floor' ? 'Floor' : 'Inspection'
      pages.forEach((text, index) => {
        for (const word of ['OX-098-21 rev B', '24-117', '2026-11-25', plan.fingerprint]) expect(text).toContain(word)
        expect(text).toMatch(new RegExp(`${set} +${index + 1} of ${pages.length}`))
      })
    }
  })

  it('has a bookmark for every sheet', async () => {
    for (const { pdf } of (await printed()).documents) {
      const document = await getDocument({ data: pdf.slice(), verbosity: 0 }).promise
      const marks = (await document.getOutline()) ?? []
      const at = await Promise.all(marks.map(({ dest }) => document.getPageIndex(Array.isArray(dest) ? dest[0] : null)))
      expect(marks.length).toBeGreaterThan(0)
      expect(at[0]).toBe(0)
      expect(at).toEqual(at.toSorted((a, b) => a - b))
    }
  })

  it('prints every size of every operation, what to hold it by, and every caution', async () => {
    const words = (await texts()).flatMap(({ pages }) => pages).join(' ')
    const whole = words.replaceAll(' ', '')
    const told = plan.orders.flatMap(({ cautions }) => cautions)
    for (const { name, holding, cautions, sizes, place, purpose } of plan.operations) {
      // The port sheet says it with the fixture's figures.
      const held = purpose === 'mill-ports' ? heldAtPorts() : holding
      // A firm has what it must mind on its order.
      for (const text of place === 'house' ? [held, ...cautions] : told)
        expect(whole).toContain(text.replaceAll(' ', '').normalize('NFKC'))
      // What is sawn has no number on the sheet of the material.
      for (const size of sizes)
        expect(
          isPrinted(purpose === 'saw-blanks' ? { ...size, judge: undefined } : size, words),
          `${name}: ${JSON.stringify(size)}`,
        ).toBe(true)
    }
  })
})

describe('the packet in HTML', () => {
  it('asks nothing of the outside and carries every sheet', async () => {
    const { html = '' } = await PRINTED.a4.packet()
    expect(/src=|href=(?!"#)|url\(|@import|<script/.exec(html)).toBeNull()
    expect(html.match(/<section /g)?.length).toBeGreaterThan(plan.operations.length)
    for (const { name } of plan.operations) expect(html.includes(name), name).toBe(true)
  })
})

describe('the order of a visit', () => {
  it.each(plan.orders.map(order => [order.title, order] as const))(
    '%s stands alone: sizes that come, points, cautions',
    async (_, order) => {
      const { documents } = await subcontract(plan, order, options('a4', asPdf))
      expect(documents).toHaveLength(1)
      const text = (await textsOf(documents[0]?.pdf ?? new Uint8Array())).join(' ')
      for (const word of ['What comes to you', 'Must not happen', 'acking', order.firm, plan.shop.name]) {
        expect(text).toContain(word)
      }
      expect(text).not.toMatch(/\{\d+\}/)
    },
  )
})

describe('the points of an order', () => {
  // ISO 14104:2017 leaves nitrided parts out of its scope, so no temper etch may be asked of the grinder.
  it.each([
    ['Nitride', 12, /nitriding hardness depth/],
    ['Grind bore and top face, hone bore, crack test, demagnetise, clean', 12, /No temper etch/],
  ] as const)('%s: %d, numbered', async (title, count, words) => {
    const order = plan.orders.find(one => one.title === title)
    if (!order) throw new Error(`the demo has no order ${title}`)
    const { html = '' } = await subcontract(plan, order, options('a4', asHtml))
    const numbers = [...html.matchAll(/<td class="num">(\d+)<\/td><th\b[^>]*style="[^"]*"[^>]*>/g)].map(([, number]) =>
      Number(number),
    )
    expect(numbers).toEqual(Array.from({ length: count }, (_, i) => i + 1))
    expect(html).toMatch(words)
  })
})

describe('the packet in inches', () => {
  // Workings keep the units that their formulas are published in.
  it('prints a bore of 48 mm as 1.88… on every sheet that is worked from', async () => {
    const { html = '' } = await packet(plan, { ...options('letter', asHtml), units: 'inch' })
    expect(html.includes('1.8898')).toBe(true)
    expect(/48\.016/.exec(html.split('<h2>Workings')[0] ?? '')).toBeNull()
  })
})
