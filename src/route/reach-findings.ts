import type { Band, Surface } from '../band.ts'
import type { Finding } from '../finding.ts'
import {
  BORING_LIMITS,
  FINISHING_LIMITS,
  LEAST_TURNED_BORE,
  type LimitGroup,
  PROCESS_LIMITS_SOURCE,
  type ProcessLimits,
  SMALL_BORE,
  TURNING_LIMITS,
} from '../handbook/process-limits.ts'
import { toleranceOf } from '../limits.ts'
import { type Part, placeOf } from '../part/part.ts'
import { figure } from './needs.ts'
import type { Operation, Purpose } from './operation.ts'
import { limitGroup } from './turned-last.ts'

/** Size, roughness and form that the process which makes a surface last does not reach: a drawing that nobody can keep. */
export function reachFindings(part: Part, operations: readonly Operation[]): readonly Finding[] {
  const group = limitGroup(part)
  const last = (surface: string): Purpose | undefined =>
    operations.findLast(({ purpose, surfaces }) => MAKES.has(purpose) && surfaces.includes(surface))?.purpose
  const bands = [
    ...part.outside.map(band => ({ band, limits: outsideLimits(part, group, last(band.name)) })),
    ...part.bore.map(band => ({ band, limits: boreLimits(band, group, last(band.name)) })),
  ]
  const faces = (['top', 'bottom'] as const).map(name => ({
    face: part[name],
    limits: last(name) === 'grind-top' ? FINISHING_LIMITS['grind-top'] : TURNING_LIMITS[group],
    name,
  }))
  return [
    ...bands.flatMap(({ band, limits }) => (limits ? bandFindings(part, band, limits) : [])),
    ...faces.flatMap(({ face, limits, name }) =>
      surfaceFindings({ part, name, surface: face, limits, path: face.path }),
    ),
    ...part.bore.flatMap(band => tooSmall(part, band)),
  ]
}

const MAKES: ReadonlySet<Purpose> = new Set([
  'finish-turn',
  'turn',
  'grind-outside',
  'grind-bore',
  'grind-top',
  'hone-bore',
  'lap-outside',
])

function outsideLimits({ kind }: Part, group: LimitGroup, last: Purpose | undefined): ProcessLimits | undefined {
  if (last === 'lap-outside') return FINISHING_LIMITS['lap-outside']
  if (last === 'grind-outside') return FINISHING_LIMITS[kind === 'pin' ? 'centreless' : 'grind-outside']
  return last === 'finish-turn' || last === 'turn' ? TURNING_LIMITS[group] : undefined
}

function boreLimits({ size }: Band, group: LimitGroup, last: Purpose | undefined): ProcessLimits | undefined {
  if (last === 'hone-bore') return FINISHING_LIMITS[group === 'iron' ? 'hone-bore, iron' : 'hone-bore']
  if (last === 'grind-bore') return FINISHING_LIMITS['grind-bore']
  if (last !== 'finish-turn' && last !== 'turn') return undefined
  const limits = BORING_LIMITS[group]
  return size.nominal <= SMALL_BORE.upTo ? { ...limits, tolerance: SMALL_BORE.tolerance } : limits
}

function bandFindings(part: Part, band: Band, limits: ProcessLimits): readonly Finding[] {
  const tolerance = toleranceOf(band.size)
  const short =
    tolerance < limits.tolerance - 1e-9
      ? [
          outOfReach({
            part,
            path: `${band.path}/size`,
            asked: `${band.name}: a tolerance of ${figure(tolerance)} mm`,
            limits,
            key: 'tolerance',
          }),
        ]
      : []
  return [...short, ...surfaceFindings({ part, name: band.name, surface: band, limits, path: band.path })]
}

function surfaceFindings({
  part,
  name,
  surface: { roughness, roundness, cylindricity, flatness },
  limits,
  path,
}: {
  readonly part: Part
  readonly name: string
  readonly surface: Surface
  readonly limits: ProcessLimits
  readonly path: string
}): readonly Finding[] {
  const rough =
    roughness !== undefined && roughness < limits.roughness - 1e-9
      ? [
          outOfReach({
            part,
            path: `${path}/Ra`,
            asked: `${name}: Ra ${figure(roughness)} µm`,
            limits,
            key: 'roughness',
          }),
        ]
      : []
  const forms = Object.entries({ roundness, cylindricity, flatness }).flatMap(([key, zone]) =>
    zone !== undefined && zone < limits.form - 1e-9
      ? [
          outOfReach({
            part,
            path: `${path}/${key}`,
            asked: `${name}: a ${key} of ${figure(zone)} mm`,
            limits,
            key: 'form',
          }),
        ]
      : [],
  )
  return [...rough, ...forms]
}

const UNIT = { tolerance: 'mm', roughness: 'µm Ra', form: 'mm' } as const

const outOfReach = ({
  part,
  path,
  asked,
  limits,
  key,
}: {
  readonly part: Part
  readonly path: string
  readonly asked: string
  readonly limits: ProcessLimits
  readonly key: 'tolerance' | 'roughness' | 'form'
}): Finding => ({
  code: 'route/out-of-reach',
  severity: 'error',
  message: `${asked} is asked of ${limits.process}, which reaches ${figure(limits[key])} ${UNIT[key]} at best (${PROCESS_LIMITS_SOURCE})`,
  at: placeOf(part, path),
  hint: 'ask for no more than the part needs, or have it made by agreement',
})

function tooSmall(part: Part, { name, size, path }: Band): readonly Finding[] {
  if (size.nominal >= LEAST_TURNED_BORE) return []
  return [
    {
      code: 'route/out-of-reach',
      severity: 'error',
      message: `${name} is ${figure(size.nominal)} mm; a bore under ${LEAST_TURNED_BORE} mm is not turned (${PROCESS_LIMITS_SOURCE})`,
      at: placeOf(part, `${path}/size`),
      hint: 'draw it as a hole, or have it made by agreement',
    },
  ]
}
