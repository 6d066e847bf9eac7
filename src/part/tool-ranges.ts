import type { ToolKind } from '../shop/tool.ts'
import type { Range } from './quantity.ts'

/** A figure of a tool, by its key in the shop file. */
export type ToolFigure =
  | 'diameter'
  | 'flute-length'
  | 'edge-length'
  | 'neck'
  | 'shank'
  | 'reach'
  | 'nose-radius'
  | 'length'
  | 'point'

/** What tools of any kind are made in, mm. */
const ANY: Readonly<Record<ToolFigure, Range>> = {
  diameter: { from: 0.1, upTo: 1000 },
  'flute-length': { from: 0.1, upTo: 1000 },
  'edge-length': { from: 0.1, upTo: 200 },
  neck: { from: 0.1, upTo: 63 },
  shank: { from: 0.5, upTo: 200 },
  reach: { from: 0.1, upTo: 1000 },
  'nose-radius': { from: 0.05, upTo: 10 },
  length: { from: 0.1, upTo: 1000 },
  point: { from: 60, upTo: 180 },
}

/** Where a kind is narrower: by its forces and its bending, or by the machine that takes it. Common practice, no source. */
const OWN: Readonly<Partial<Record<ToolKind, Readonly<Partial<Record<ToolFigure, Range>>>>>> = {
  'end mill': {
    diameter: { from: 0.2, upTo: 63 },
    'flute-length': { from: 0.2, upTo: 200 },
    shank: { from: 1, upTo: 63 },
    reach: { from: 1, upTo: 300 },
  },
  drill: { diameter: { from: 0.5, upTo: 120 } },
  'centreless wheel': { diameter: { from: 50, upTo: 1000 } },
  'regulating wheel': { diameter: { from: 50, upTo: 600 } },
}

/** The range that a figure of a tool is read in: what the formulas of its cut take. */
export const toolRange = (kind: string | undefined, key: ToolFigure): Range => ownOf(kind)?.[key] ?? ANY[key]

const ownOf = (kind: string | undefined) => Object.entries(OWN).find(([known]) => known === kind)?.[1]
