import type { Abrasive, BarMaterial, Tool, ToolKind, ToolOf } from '../shop/tool.ts'
import { present } from './open-document.ts'
import { noneTwice } from './read-shop-lists.ts'
import { type ToolFigure, toolRange } from './tool-ranges.ts'
import type { View } from './view.ts'

/** A drill whose point is not given: common practice, no source, for carbide. */
const USUAL_POINT = 140

type Fields<T> = { readonly [k in keyof T]: T[k] | undefined }

/** All of it, or nothing where a key is missing or cannot be read: the schema or the view has said so. */
const whole = <T extends object>(fields: Fields<T>): T | undefined =>
  Object.values(fields).includes(undefined) ? undefined : (fields as T)

const length = (view: View, key: ToolFigure) => view.quantity(key, 'length', toolRange(view.text('kind'), key))

const shanked = (view: View) => ({
  diameter: length(view, 'diameter'),
  fluteLength: length(view, 'flute-length'),
  // A straight shank, where none is given.
  shank: length(view, view.has('shank') ? 'shank' : 'diameter'),
  reach: length(view, 'reach'),
})

const marked = (view: View) => ({
  diameter: length(view, 'diameter'),
  width: length(view, 'length'),
  grade: view.text('grade') ?? 'as fitted',
})

/** What each kind says of itself. The schema asks for the keys that have no usual value. */
const OF_KIND: { readonly [K in ToolKind]: (view: View) => Omit<ToolOf<K>, 'kind' | 'name'> | undefined } = {
  'end mill': view => {
    const mill = whole({ ...shanked(view), teeth: view.count('teeth') })
    if (!mill) return undefined
    if (mill.reach < mill.fluteLength) {
      const message = `stands out ${mill.reach} mm, less than its flutes of ${mill.fluteLength} mm`
      view.report(
        { code: 'input/out-of-range', message, hint: 'reach is measured from the holder to the tip' },
        'reach',
      )
    }
    const neck = whole({ diameter: length(view, 'neck'), edges: length(view, 'edge-length') })
    if (!neck) return mill
    const hint = 'a neck is thinner than the cutter, and its edges end below the shank'
    if (neck.diameter >= mill.diameter) {
      const message = `has a neck of ${neck.diameter} mm, no thinner than its ${mill.diameter} mm`
      view.report({ code: 'input/out-of-range', message, hint }, 'neck')
    }
    if (neck.edges >= mill.fluteLength) {
      const message = `has edges of ${neck.edges} mm, as long as its flutes and neck of ${mill.fluteLength} mm`
      view.report({ code: 'input/out-of-range', message, hint }, 'edge-length')
    }
    return { ...mill, neck }
  },
  drill: view =>
    whole({
      ...shanked(view),
      point: view.has('point') ? view.quantity('point', 'angle', toolRange('drill', 'point')) : USUAL_POINT,
    }),
  'turning tool': view => whole({ noseRadius: length(view, 'nose-radius') }),
  'boring bar': view =>
    whole({
      diameter: length(view, 'diameter'),
      reach: length(view, 'reach'),
      noseRadius: length(view, 'nose-radius'),
      material: barMaterial(view.text('grade')),
    }),
  'parting blade': view => whole({ width: length(view, 'length'), reach: length(view, 'reach') }),
  'grinding wheel': view => whole(marked(view)),
  'internal wheel': view => {
    const wheel = whole(marked(view))
    const quill = whole({ diameter: length(view, 'shank'), length: length(view, 'reach') })
    return wheel && { ...wheel, ...present({ quill }) }
  },
  'face wheel': view => whole({ diameter: length(view, 'diameter'), grade: view.text('grade') ?? 'as fitted' }),
  'centreless wheel': view => whole(marked(view)),
  'regulating wheel': view => whole({ diameter: length(view, 'diameter') }),
  hone: view => {
    const stones = whole({ count: view.count('teeth'), length: length(view, 'length'), ...stoneMark(view) })
    return stones && { stones }
  },
  'ring lap': view =>
    whole({
      diameter: length(view, 'diameter'),
      length: length(view, 'length'),
      grade: view.text('grade'),
      grit: compoundGrit(view),
    }),
}

export function readTools(root: View): readonly Tool[] {
  const views = root.each('tools')
  noneTwice(views, 'name')
  noPocketTwice(views)
  return views.flatMap(view => {
    const name = view.text('name')
    const kind = view.text('kind')
    if (name === undefined || kind === undefined || !isKind(kind)) return []
    const own = OF_KIND[kind](view)
    // Each reader gives the fields of its own kind.
    const pocket = present({ pocket: view.count('pocket') })
    return own ? [{ ...own, ...pocket, kind, name } as Tool] : []
  })
}

/** A pocket holds one tool; the same tool may be listed twice, of two grades. A program that calls the pocket trusts its length. */
function noPocketTwice(views: readonly View[]): void {
  const held = new Map<number, View>()
  for (const view of views) {
    const pocket = view.count('pocket')
    if (pocket === undefined) continue
    const first = held.get(pocket)
    if (!first) {
      held.set(pocket, view)
      continue
    }
    const differs = [
      ...(first.text('kind') === view.text('kind') ? [] : ['kind']),
      ...(['diameter', 'reach'] as const).filter(key => length(first, key) !== length(view, key)),
    ]
    if (differs.length === 0) continue
    const message = `pocket ${pocket} holds "${first.text('name')}" already, which is of another ${differs.join(', ')}`
    view.report({ code: 'input/pocket-twice', message, hint: 'give each tool the pocket that it stands in' }, 'pocket')
  }
}

const isKind = (kind: string): kind is ToolKind => Object.hasOwn(OF_KIND, kind)

const barMaterial = (grade = ''): BarMaterial =>
  /damped/i.test(grade)
    ? 'damped'
    : /carbide/i.test(grade)
      ? 'carbide'
      : /heavy|tungsten/i.test(grade)
        ? 'heavyMetal'
        : 'steel'

/** Written `A 220`, `C 150`, `CBN 280`. */
function stoneMark(view: View): { readonly abrasive: Abrasive | undefined; readonly grit: number | undefined } {
  const written = view.text('grade')
  const [, abrasive, grit] = /^(A|C|CBN)\s*(\d{2,4})\b/.exec(written ?? '') ?? []
  if (written !== undefined && grit === undefined) unreadable(view, written, 'a marking such as "A 280"')
  return { abrasive: abrasive as Abrasive | undefined, grit: grit === undefined ? undefined : Number(grit) }
}

function compoundGrit(view: View): number | undefined {
  const written = view.text('grade')
  const grit = /\bF\s*(\d{2,4})\b/.exec(written ?? '')?.[1]
  if (written !== undefined && grit === undefined) unreadable(view, written, 'a compound such as "A F500"')
  return grit === undefined ? undefined : Number(grit)
}

const unreadable = (view: View, written: string, wanted: string): void =>
  view.report(
    { code: 'input/unreadable', message: `grade cannot be read: "${written}"`, hint: `wanted: ${wanted}` },
    'grade',
  )
