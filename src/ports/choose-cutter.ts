import { fixed } from '../figures.ts'
import type { Shop } from '../shop/shop.ts'
import { type Drill, type EndMill, toolsOf } from '../shop/tool.ts'
import { isOnHand, toolsToGet } from '../shop/tools-to-get.ts'
import type { Millimetre } from '../units.ts'
import { ENTRY_CLEARANCE, ENTRY_WALL } from './entry-hole.ts'
import type { PortFault } from './port-finding.ts'
import { lengthWith } from './soonest-cutter.ts'

/** What a window asks of the cutter that finishes it. */
export type CutterNeed = {
  readonly tightestCorner: Millimetre
  /** Largest cutter by the rule of practice. */
  readonly largest: Millimetre
  readonly girth: Millimetre
  /** Radius of the largest circle in the window. */
  readonly room: Millimetre
  /** Flutes, or flutes and relief, needed for a cutter and shank of these diameters. */
  readonly flutes: (cutter: Millimetre, shank: Millimetre) => Millimetre
  /** Stick-out needed. */
  readonly reach: Millimetre
  /** Stick-out with which a cutter's holder and the spindle clear everything. */
  readonly stickOut: (cutter: Millimetre) => Millimetre
  /** Whether a cutter and all over it clear what they must, the cutter and its shank what holds the part. */
  readonly clears: (tool: EndMill) => boolean
  /** Corner that a cutter leaves on the port as drawn, and the corner to draw for it. */
  readonly cornerFor: (tightest: Millimetre) => Millimetre | undefined
  /** Where the corner is measured, in words. */
  readonly cornerOn: string
  readonly corner: Millimetre
}

export type ChosenCutter = {
  readonly cutter: Millimetre
  readonly drill: Millimetre
  readonly tools: { readonly cutter?: string; readonly rougher?: string; readonly drill?: string }
  /** Diameter of the largest cutter that may go down in the entry hole. */
  readonly entered: Millimetre
  readonly faults: readonly PortFault[]
}

const bySize = <T extends { readonly diameter: Millimetre }>(tools: readonly T[]): readonly T[] =>
  tools.toSorted((a, b) => a.diameter - b.diameter)

/**
 * The largest end mill, of one diameter the stiffer with the shorter flutes, that reaches every corner and through the wall, and
 * the drill for its entry hole: of those on hand, or, where none of them does, of those that can be got.
 */
export function chooseCutter(shop: Pick<Shop, 'tools'>, need: CutterNeed): ChosenCutter {
  const mills = toolsOf(shop, 'end mill')
  const drills = toolsOf(shop, 'drill')
  const onHand = chosenOf(mills, drills, need)
  if (serves(onHand)) return onHand
  const remembered = { ...need, flutes: rememberedFlutes(need.flutes) }
  const got = chosenOf([...mills, ...toolsToGet('end mill')], [...drills, ...toolsToGet('drill')], remembered)
  if (!serves(got)) return onHand
  const missing = Object.values(got.tools).filter(name => !isOnHand(shop, name))
  return missing.length === 0 ? got : { ...got, faults: [...got.faults, toGet(missing, onHand.faults)] }
}

/** Cutter and drill are there, and nothing stops them. */
const serves = ({ tools, faults }: ChosenCutter): boolean =>
  tools.cutter !== undefined && tools.drill !== undefined && faults.every(({ severity }) => severity !== undefined)

/** What to get, and why those on hand do not serve, with what else would help. */
function toGet(names: readonly string[], [first]: readonly PortFault[]): PortFault {
  return {
    code: 'ports/to-get',
    severity: 'warning',
    message: `to get: ${[...new Set(names)].join('; ')}${first ? `; ${first.message}` : ''}`,
    hint: `planned with it: list the one that you get under \`tools:\` in the shop file, with its own figures${first?.hint ? `; or ${first.hint}` : ''}`,
    ...(first?.key !== undefined && { key: first.key }),
  }
}

/** Many cutters of one diameter and shank ask for the same. */
function rememberedFlutes(flutes: CutterNeed['flutes']): CutterNeed['flutes'] {
  const known = new Map<string, Millimetre>()
  return (cutter, shank) => {
    const key = `${cutter} ${shank}`
    const value = known.get(key) ?? flutes(cutter, shank)
    known.set(key, value)
    return value
  }
}

function chosenOf(tools: readonly EndMill[], allDrills: readonly Drill[], need: CutterNeed): ChosenCutter {
  const mills = bySize(tools)
  const smallest = mills[0]
  if (!smallest) {
    const message = `the works has no end mill: the window needs one of at most ${fixed(need.largest, 2)} mm`
    return none(need, [{ code: 'ports/no-end-mill', message, hint: 'list it under `tools:` in the shop file' }])
  }
  const reaching = mills.filter(({ diameter }) => diameter <= need.largest + 1e-9)
  const near = mills.filter(({ diameter }) => diameter < 2 * need.tightestCorner - 1e-9)
  // Every cutter of the smallest diameter: a short one that is listed first must not hide a long one.
  const cornerwise = reaching.length > 0 ? reaching : near.filter(({ diameter }) => diameter === near[0]?.diameter)
  if (cornerwise.length === 0) return none(need, [tooTight(need, smallest.diameter)])

  const longEnough = cornerwise.filter(tool => reachesThrough(tool, need))
  if (longEnough.length === 0) return none(need, [tooShort(need, cornerwise)])
  const drills = bySize(allDrills)
  const entered = longEnough
    .toReversed()
    .flatMap(tool => entriesFor(drills, tool, need).map(drill => ({ tool, drill })))
    .toSorted((a, b) => b.tool.diameter - a.tool.diameter || a.tool.fluteLength - b.tool.fluteLength)
  const clears = ({ tool }: { readonly tool: EndMill }): boolean => tool.reach >= need.stickOut(tool.diameter)
  const best = entered.find(clears) ?? entered[0]
  const cutterOnly = longEnough.toSorted((a, b) => b.diameter - a.diameter || a.fluteLength - b.fluteLength)[0]
  const tool = best?.tool ?? cutterOnly ?? smallest
  const rougher = best && rougherThan(tool, mills, drills, need)
  const drill = rougher?.drill ?? best?.drill
  return {
    cutter: tool.diameter,
    drill: drill?.diameter ?? tool.diameter + ENTRY_CLEARANCE,
    tools: {
      cutter: tool.name,
      ...(rougher ? { rougher: rougher.tool.name } : {}),
      ...(drill ? { drill: drill.name } : {}),
    },
    entered: rougher?.tool.diameter ?? tool.diameter,
    faults: [
      ...(drill ? [] : [noEntry(need, tool)]),
      ...(reaching.length > 0 ? [] : [nearCorner(need, tool.diameter)]),
    ],
  }
}

/**
 * Of the end mills over the one that reaches every corner those that reach through the wall and clear the work, with a drill:
 * the one with which the window is soonest done, if it is sooner than with the small one alone.
 */
function rougherThan(
  finisher: EndMill,
  mills: readonly EndMill[],
  drills: readonly Drill[],
  need: CutterNeed,
): { readonly tool: EndMill; readonly drill: Drill } | undefined {
  const alone = lengthWith(finisher, finisher, need)
  return mills
    .filter(tool => tool.diameter > finisher.diameter + 1e-9)
    .map(tool => ({ tool, length: lengthWith(tool, finisher, need) }))
    .filter(({ tool, length }) => length < alone && reachesThrough(tool, need))
    .filter(({ tool }) => tool.reach >= need.stickOut(tool.diameter))
    .flatMap(({ tool, length }) => entriesFor(drills, tool, need).map(drill => ({ tool, drill, length })))
    .toSorted((a, b) => a.length - b.length || a.tool.fluteLength - b.tool.fluteLength)
    .find(({ tool }) => need.clears(tool))
}

const reachesThrough = ({ diameter, shank, fluteLength, reach }: EndMill, need: CutterNeed): boolean =>
  reach >= need.reach && fluteLength >= need.flutes(diameter, shank)

const entriesFor = (drills: readonly Drill[], tool: EndMill, need: CutterNeed): readonly Drill[] =>
  drills
    .filter(({ diameter, reach }) => {
      const larger = diameter >= tool.diameter + ENTRY_CLEARANCE - 1e-9
      return larger && diameter / 2 + ENTRY_WALL <= need.room + 1e-9 && reach >= need.reach
    })
    .slice(0, 1)

const none = (need: CutterNeed, faults: readonly PortFault[]): ChosenCutter => ({
  cutter: need.largest,
  drill: need.largest + ENTRY_CLEARANCE,
  tools: {},
  entered: need.largest,
  faults,
})

function tooTight(need: CutterNeed, smallest: Millimetre): PortFault {
  const leaves = need.cornerFor(smallest / 2)
  const draw = need.cornerFor(smallest / 1.6)
  const left = leaves === undefined ? '' : `, which leaves ${fixed(leaves, 2)} mm ${need.cornerOn}`
  return {
    code: 'ports/corner-too-tight',
    message: `the corner of ${need.corner} mm is ${fixed(need.tightestCorner, 3)} mm at its tightest in the cutter's plane; the largest cutter that reaches it is ${fixed(need.largest, 2)} mm, the smallest on hand ${smallest} mm${left}`,
    hint:
      draw === undefined
        ? `use an end mill of at most ${fixed(need.largest, 2)} mm`
        : `draw the corner ${fixed(Math.ceil(draw * 20) / 20, 2)} mm or more, or use an end mill of at most ${fixed(need.largest, 2)} mm`,
    key: 'corner',
  }
}

const nearCorner = (need: CutterNeed, cutter: Millimetre): PortFault => ({
  code: 'ports/corner-near-cutter',
  severity: 'warning',
  message: `the ${cutter} mm cutter turns in a corner of ${fixed(need.tightestCorner, 3)} mm and will chatter there; by the rule of practice it should be at most ${fixed(need.largest, 2)} mm`,
  hint: 'draw a larger corner, or slow the feed in the corners',
  key: 'corner',
})

function tooShort(need: CutterNeed, tools: readonly EndMill[]): PortFault {
  const has = tools.map(tool => {
    const flutes = need.flutes(tool.diameter, tool.shank)
    return `${tool.name} has ${tool.fluteLength} of ${fixed(flutes, 2)} mm below its shank of ${tool.shank} mm, ${tool.reach} of ${fixed(need.reach, 1)} mm stick-out`
  })
  const longest = tools.toSorted((a, b) => b.diameter - a.diameter || b.fluteLength - a.fluteLength)[0]
  const wanted = longest
    ? `get one of ${longest.diameter} mm with ${fixed(Math.ceil(need.flutes(longest.diameter, longest.shank) * 2) / 2, 1)} mm or more below a shank of ${longest.shank} mm, and list it in the shop file`
    : 'list a longer or relieved end mill in the shop file'
  return {
    code: 'ports/cutter-too-short',
    message: `no cutter that reaches the corners reaches through the wall: ${has.at(-1) ?? ''}`,
    hint: `${wanted}; or draw a larger corner for a larger cutter`,
  }
}

function noEntry(need: CutterNeed, tool: EndMill): PortFault {
  const most = 2 * (need.room - ENTRY_WALL)
  const least = tool.diameter + ENTRY_CLEARANCE
  return most < least
    ? {
        code: 'ports/no-entry',
        message: `there is room for an entry hole of ${fixed(most, 2)} mm, but the ${tool.diameter} mm cutter needs ${fixed(least, 2)} mm`,
        hint: 'use a smaller cutter or widen the window',
      }
    : {
        code: 'ports/no-drill',
        severity: 'warning',
        message: `no drill on hand for the entry hole: it may be ${fixed(least, 2)} to ${fixed(most, 2)} mm`,
        hint: 'list a drill of that size in the shop file',
      }
}
