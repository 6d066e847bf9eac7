import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { drawPictures } from '../../src/pictures/draw-pictures.ts'
import type { Picture } from '../../src/pictures/picture.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { Template } from '../../src/sheets/template.ts'
import { openTypeface, type Typeface } from '../../src/sheets/typeface.ts'

const root = new URL('../../', import.meta.url)
const textOf = (path: string): string => readFileSync(new URL(path, root), 'utf8')
const asset = createRequire(import.meta.url).resolve

/** The bytes of the two faces that the package ships. */
export const typeface: Typeface = openTypeface({
  regular: readFileSync(asset('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf')),
  bold: readFileSync(asset('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf')),
})

export const templates: ReadonlyMap<string, Template> = new Map(
  readdirSync(new URL('templates/', root))
    .filter(name => name.endsWith('.hbs'))
    .map(name => [name.replace(/\.hbs$/, ''), { file: name, text: textOf(`templates/${name}`) }]),
)

const planned = new Map<string, Plan>()

/** The works' own part, planned as the command plans it: once for all that read it, and closed to whoever would change it. */
export function demoPlan(name = 'OX-098-21'): Plan {
  const plan = planned.get(name) ?? closed(planOf(name))
  planned.set(name, plan)
  return plan
}

function closed<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value
  for (const inner of Object.values(value)) closed(inner)
  return Object.freeze(value)
}

function planOf(name: string): Plan {
  const { part } = readPart(textOf(`parts/${name}.yaml`), `parts/${name}.yaml`)
  const { shop } = readShop(textOf('parts/shop.yaml'), 'parts/shop.yaml')
  if (!part || !shop) throw new Error(`${name} does not read`)
  const issue = { date: '2026-11-25', fingerprint: '0bd5bebc6b1e', program: 'linerwright 0.1.0' }
  const { plan } = makePlan({ part, shop, batch: { number: '24-117', quantity: 12 }, issue })
  if (!plan) throw new Error(`${name} does not plan`)
  return plan
}

export const demoPictures = (plan: Plan): ReadonlyMap<string, Picture> => drawPictures(plan, typeface.measure)
