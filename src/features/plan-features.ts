import type { Feature } from '../feature.ts'
import type { Finding } from '../finding.ts'
import type { Growth } from '../hardening/growth.ts'
import type { OperationSize } from '../operation-size.ts'
import { type Part, placeOf } from '../part/part.ts'
import type { Operation, Purpose } from '../route/operation.ts'
import type { Shape } from '../shape.ts'
import type { StockEntry } from '../stock/stock.ts'
import { openNotebook } from '../working.ts'
import type { FeaturePlan } from './feature-plan.ts'
import type { FeaturesGiven } from './given.ts'
import type { MadeFeature } from './made-feature.ts'
import { planChamfer } from './plan-chamfer.ts'
import { planGroove } from './plan-groove.ts'
import { planCutOut, planHole } from './plan-hole.ts'
import { planDome, planInside, planOval, planPinBore } from './plan-piston.ts'
import { planUndercut, planUnderside } from './plan-undercut.ts'

/** Every feature of the drawing: where it is made, how large it is cut, and what it must measure at the end. */
export function planFeatures({
  part,
  operations,
  entries,
  shapes,
  growth,
}: {
  readonly part: Part
  readonly operations: readonly Operation[]
  readonly entries: readonly StockEntry[]
  readonly shapes: ReadonlyMap<number, Shape>
  readonly growth?: Growth | undefined
}): FeaturePlan {
  const notebook = openNotebook()
  const findings: Finding[] = []
  const turning = operations.find(({ purpose }) => purpose === 'finish-turn' || purpose === 'turn')?.number
  const turned = turning === undefined ? undefined : shapes.get(turning)
  const milling = operations.find(({ purpose }) => purpose === 'mill-ports' || purpose === 'mill-features')?.number
  if (turning === undefined || !turned || part.features.length === 0)
    return { features: [], sizes: new Map(), findings: [], workings: [] }
  const given: FeaturesGiven = {
    part,
    operations,
    entries,
    turned,
    turning,
    growth,
    notebook,
    report: ({ path, ...rest }) => {
      findings.push({ ...rest, severity: 'warning', at: placeOf(part, path) })
    },
  }
  const made = part.features.flatMap(feature => madeOf(given, feature, milling ?? turning) ?? [])
  const last = operations.at(-1)?.number ?? turning
  const sizes = new Map<number, readonly OperationSize[]>()
  for (const { planned, cut, finished } of made) {
    sizes.set(planned.operation, [...(sizes.get(planned.operation) ?? []), ...cut])
    sizes.set(last, [...(sizes.get(last) ?? []), ...finished])
  }
  return { features: made.map(({ planned }) => planned), sizes, findings, workings: notebook.workings }
}

function madeOf(given: FeaturesGiven, feature: Feature, milling: number): MadeFeature | undefined {
  switch (feature.kind) {
    case 'chamfer':
    case 'lead':
      return planChamfer(given, feature)
    case 'undercut':
      return planUndercut(given, feature)
    case 'underside':
      return planUnderside(given, feature)
    case 'groove':
      return planGroove(given, feature)
    case 'hole':
      return planHole(given, feature, milling)
    case 'cut-out':
      return planCutOut(given, feature, milling)
    case 'inside':
      return planInside(given, feature, numberOf(given, 'turn-inside'))
    case 'pin bore':
      return planPinBore(given, feature, numberOf(given, 'bore-pin'))
    case 'dome':
      return planDome(given, feature)
    case 'oval':
      return planOval(given, feature)
  }
}

const numberOf = ({ operations, turning }: FeaturesGiven, wanted: Purpose): number =>
  operations.find(({ purpose }) => purpose === wanted)?.number ?? turning
