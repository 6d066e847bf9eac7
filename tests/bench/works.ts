import { create, type Font } from 'fontkit'
import { load } from '../../src/commands/load.ts'
import { nodeWorld } from '../../src/commands/node-world.ts'
import type { Options } from '../../src/commands/options.ts'
import { paperOptions } from '../../src/commands/paper.ts'
import { wholePlan } from '../../src/commands/plan-file.ts'
import type { World } from '../../src/commands/world.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { packet } from '../../src/sheets/packet.ts'
import type { Printed } from '../../src/sheets/print-document.ts'
import type { Shop } from '../../src/shop/shop.ts'

export const PART = 'parts/OX-098-21.yaml'
const OPTIONS: Options = {
  batch: '2631',
  quantity: 24,
  date: '2026-11-25',
  out: 'out',
  format: 'both',
  paper: 'a4',
  units: 'mm',
}

export type Faces = { readonly regular: Font; readonly bold: Font }

/** What `traveller` does of the works' own liner, step by step, ready to be timed over and over. */
export type Works = {
  readonly shop: Shop
  /** Those of the paper, as the reader of fonts opens them. */
  readonly faces: Faces
  readonly reading: () => void
  readonly planning: () => Plan
  /** From the plan to the paper of every set, without the screen. */
  readonly paper: (how: { readonly tagged: boolean }) => Promise<Printed>
  /** From the plan to all that is written. */
  readonly packet: () => Promise<Printed>
}

/** The works, by the files in the present folder. Throws where the part does not plan. */
export function works(): Works {
  const world = nodeWorld()
  const { formats, ...options } = paperOptions(OPTIONS, world)
  const loaded = load(PART, OPTIONS, world)
  const { part, shop } = loaded
  if (!part || !shop) throw new Error(`${PART} does not read`)
  const planning = (): Plan => {
    const { plan } = wholePlan(part, shop, loaded, world)
    if (!plan) throw new Error(`${PART} does not plan`)
    return plan
  }
  return {
    shop,
    faces: { regular: faceOf('DejaVuSansCondensed', world), bold: faceOf('DejaVuSansCondensed-Bold', world) },
    reading: () => void load(PART, OPTIONS, world),
    planning,
    paper: ({ tagged }) => packet(planning(), { ...options, tagged, formats: { pdf: true, html: false } }),
    packet: () => packet(planning(), { ...options, formats }),
  }
}

function faceOf(name: string, world: World): Font {
  const face = create(world.readBytes(world.asset(`fonts/${name}.ttf`)) as Parameters<typeof create>[0])
  if (!('layout' in face)) throw new Error(`${name} is a collection`)
  return face
}
