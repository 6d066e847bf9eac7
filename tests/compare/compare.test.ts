import { describe, expect, it } from 'vitest'
import { parse, stringify } from 'yaml'
import { run } from '../../src/commands/program.ts'
import { comparePlans, isEmpty } from '../../src/compare/compare-plans.ts'
import { differencesOf } from '../../src/compare/differences.ts'
import type { Part } from '../../src/part/part.ts'
import { readPart } from '../../src/part/read-part.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'
import { demo, desk } from '../commands/fake-world.ts'

const B = demo('OX-098-21.yaml')
const C = demo('revision-C/OX-098-21.yaml')

function partOf(text: string): Part {
  const { part, findings } = readPart(text, 'part.yaml')
  if (!part) throw new Error(JSON.stringify(findings))
  return part
}
function planOf(text: string) {
  const issue = { date: '2026-11-25', fingerprint: '0', program: 'test' }
  const { plan } = makePlan({ part: partOf(text), shop: BUILT_IN_SHOP, batch: { number: '1', quantity: 12 }, issue })
  if (!plan) throw new Error('no plan')
  return plan
}
const compared = (one: string, other: string) =>
  comparePlans(planOf(one), planOf(other), { was: partOf(one), is: partOf(other) })

async function printed(...argv: readonly string[]): Promise<string> {
  const world = desk({ 'b.yaml': B, 'c.yaml': C, 'shop.yaml': demo('shop.yaml') })
  const status = await run(['compare', ...argv, '--date', '2026-11-25'], world)
  expect(status, world.complained()).toBe(0)
  return world.printed()
}

describe('a part held against itself', () => {
  it('has nothing to tell, by the command', async () => {
    expect(await printed('b.yaml', 'b.yaml')).toContain('Nothing differs.')
  })

  it('nor where its lengths are written in inches', () => {
    const inch = (mm: number): string => `${mm / 25.4} in`
    const inches = B.replace('stroke: 54, rod: 100', `stroke: ${inch(54)}, rod: ${inch(100)}`)
      .replace('crown-below-top: 0.4', `crown-below-top: ${inch(0.4)}`)
      .replace(
        'height: 16.1, width: 27, corner: 3, bridge: 2.6',
        `height: ${inch(16.1)}, width: ${inch(27)}, corner: ${inch(3)}, bridge: ${inch(2.6)}`,
      )
      .replace('runout: 0.015', `runout: ${inch(0.015)}`)
    expect(inches.match(/ in[,}]/g)?.length).toBe(8)
    const { sections } = compared(B, inches)
    expect(Object.values(sections).flat()).toEqual([])
    expect(isEmpty(compared(B, inches))).toBe(true)
  })
})

/** Every value of the part file by its path. */
function leaves(data: unknown, path: readonly (string | number)[] = []): readonly (readonly (string | number)[])[] {
  if (Array.isArray(data)) return data.flatMap((entry, index) => leaves(entry, [...path, index]))
  if (typeof data === 'object' && data !== null)
    return Object.entries(data).flatMap(([key, entry]) => leaves(entry, [...path, key]))
  return [path]
}

/** The same value a little otherwise, still one that can be read. */
function otherwise(value: unknown): unknown {
  if (typeof value === 'number') return value === 0 ? 0.5 : Number((value * 1.01).toPrecision(6))
  if (typeof value === 'boolean') return !value
  const text = String(value)
  const OTHERS: Readonly<Record<string, string>> = {
    liner: 'sleeve',
    '42CrMo4': '31CrMoV9',
    '300 HV': '310 HV',
    'gas nitriding': 'plasma nitriding',
    'min 470 HV': 'min 480 HV',
    'min 0.25': 'min 0.26',
    '92 ±0.05': '92 ±0.06',
    '62 h9': '62 h8',
    '55 g6': '55 f6',
    '48 H6': '48 H7',
    '106 ±0.25': '106 ±0.3',
    '121 ±0.3': '121 ±0.4',
    '123 ±0.5': '124 ±0.5',
  }
  return OTHERS[text] ?? `${text}x`
}

describe('one value of the part file changed', () => {
  const data: unknown = parse(B)
  // Kind and names of bands decide what other keys mean; a mirrored port that is not is a port gone.
  const paths = leaves(data).filter(path => path.at(-1) !== 'kind')

  it('is looked at everywhere', () => expect(paths.length).toBeGreaterThan(45))

  it.each(paths.map(path => [path.join('.'), path] as const))('%s is told, and nothing of another key', (_, path) => {
    const copy: unknown = parse(B)
    const key = path.at(-1) ?? ''
    const holder = path
      .slice(0, -1)
      .reduce((inside: unknown, step) => (inside as Record<string | number, unknown>)[step], copy) as Record<
      string | number,
      unknown
    >
    holder[key] = otherwise(holder[key])
    // Bands end where the part does: to change one is to change the other.
    if (path.join('.') === 'body.outside.1.to') return
    const { part } = readPart(stringify(copy), 'part.yaml')
    if (!part) throw new Error(`${path.join('.')} cannot be read as ${String(holder[key])}`)
    const differences = differencesOf(partOf(B), part)
    expect(differences.length).toBeGreaterThan(0)
    const [top = '', second = ''] = path.map(String)
    const owner = top === 'part' ? second : top === 'body' ? second : top
    // The last band ends where the part does, with the tolerance of its length.
    const follows = owner === 'length' ? ['outside', 'bore'] : []
    expect([...new Set(differences.map(difference => difference.path[0]))]).toEqual([owner, ...follows])
    if (top === 'ports') {
      const name = String((parse(B) as { ports: { name: string }[] }).ports[Number(second)]?.name)
      expect(
        differences.filter(difference => !difference.path[1]?.startsWith(name) && difference.path[1] !== 'order'),
      ).toEqual([])
    }
  })

  it('is no size, no stock and no timing, where it is a letter of the title block', () => {
    const { sections, sizes, timing, pieces } = compared(
      B,
      B.replace('revision: B', 'revision: C').replace('title: Cylinder liner', 'title: Liner'),
    )
    expect(sections.drawing.map(({ path }) => path.join(' '))).toEqual(['title', 'revision'])
    for (const section of [
      'material',
      'route',
      'sizes',
      'stock and case',
      'timing and areas',
      'tools and times',
      'measuring',
      'findings',
    ] as const)
      expect(sections[section], section).toEqual([])
    expect([...sizes, ...timing]).toEqual([])
    expect(pieces.every(({ becomes }) => becomes === 'yes')).toBe(true)
  })
})

describe('the next revision of the demo liner', () => {
  const { timing, pieces, sizes } = compared(B, C)

  it('opens its exhaust by the edge that the worked example has', () => {
    // Stroke 54, rod 100: 106° less 104° is 0.844 mm; ±0.05 mm is ±0.12° at 106°.
    const [exhaust] = timing
    expect(exhaust?.higher).toBeCloseTo(0.844, 3)
    expect(exhaust?.making).toBeCloseTo(0.12, 2)
    expect(exhaust?.withinMaking).toBe(false)
  })
  it('can be made of pieces until their ports are hard', () => {
    const becomes = new Map(pieces.map(piece => [piece.operation, piece.becomes]))
    expect(becomes.get('Finish turn')).toBe('yes')
    expect(becomes.get('Mill ports')).toBe('cut again')
    expect(becomes.get('Nitride')).toBe('no')
  })
  it('cannot be made of pieces whose window reaches past the new one', () => {
    expect(compared(C, B).pieces.find(({ operation }) => operation === 'Mill ports')?.becomes).toBe('no')
  })
  it('says of a size whether old pieces serve', () => {
    expect(sizes.every(({ size }) => size.startsWith('exhaust'))).toBe(true)
    const { sizes: wider } = compared(B, B.replace('48 H6', '48 H7'))
    expect(
      wider.find(({ operation, size }) => operation === 'Hone bore' && size === 'bore diameter')?.interchange,
    ).toBe('old pieces serve')
  })
  it('says that a shift of a twentieth of a degree is within making', () => {
    expect(compared(B, B.replace('106 ±0.25', '106.05 ±0.25')).timing[0]?.withinMaking).toBe(true)
  })
  it('names windows to set, programs, and paper to withdraw, by the command', async () => {
    const text = await printed('b.yaml', 'c.yaml', '--quantity', '12')
    expect(text).toMatch(/exhaust, window 1 of 2: X 33\.609 → 34\.0/)
    expect(text).toMatch(/program: OX-098-21-C-1-tilt-0/)
    expect(text).not.toMatch(/program: OX-098-21-C-\d-tilt-50/)
    expect(text).toMatch(/Paper to withdraw\n {2}floor: .*50 Mill ports/)
  })
})
