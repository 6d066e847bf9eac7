import { angle, area, fixed, percent, volume } from '../../figures.ts'
import type { Plan } from '../../plan/plan.ts'
import type { Reference } from '../../ports/gas-exchange.ts'
import { DASH } from './paper-figures.ts'

/** What the ports do together, and beside it what books and workshops name. */
export type GasView = {
  readonly together: readonly { readonly figure: string; readonly value: string; readonly unit: string }[]
  readonly references: readonly {
    readonly what: string
    readonly value: string
    readonly range: string
    readonly source: string
  }[]
}

export function gasView({ gasExchange: gas }: Pick<Plan, 'gasExchange'>): GasView {
  if (!gas) return { together: [], references: [] }
  const row = (figure: string, value: number | undefined, unit: string, written: (value: number) => string) =>
    value === undefined ? [] : [{ figure, value: written(value), unit }]
  const ratio = (value: number): string => fixed(value, 2)
  const timeArea = (value: number): string => fixed(value, 5)
  const { blowdown } = gas
  return {
    together: [
      ...row('swept volume', gas.sweptVolume, 'cm³', volume),
      ...row('trapped above the exhaust', gas.trappedVolume, 'cm³', volume),
      ...row('head volume', gas.headVolume, 'cm³', volume),
      ...row('compression ratio, trapped', gas.trappedRatio, '', ratio),
      ...row('compression ratio, whole stroke', gas.geometricRatio, '', ratio),
      ...row('mean piston speed', gas.meanPistonSpeed, 'm/s', ratio),
      ...row('blowdown', blowdown?.angle, '°', value => angle(value, 1)),
      ...row('blowdown, time', blowdown?.time, 'ms', ratio),
      ...row('blowdown, angle-area', blowdown?.angleArea, 'mm²·deg', area),
      ...row('blowdown, specific time-area', blowdown?.specificTimeArea, 's/m', timeArea),
      ...gas.areas.flatMap(({ role, angleArea, specificTimeArea, meanAreaTimeArea }) => [
        ...row(`${role}, angle-area`, angleArea, 'mm²·deg', area),
        ...row(`${role}, specific time-area`, specificTimeArea, 's/m', timeArea),
        ...row(`${role}, by mean area`, meanAreaTimeArea, 's/m', timeArea),
      ]),
      ...gas.together.flatMap(({ roles, angleArea, specificTimeArea, meanAreaTimeArea }) => [
        ...row(`${roles.join(' and ')}, angle-area`, angleArea, 'mm²·deg', area),
        ...row(`${roles.join(' and ')}, specific time-area`, specificTimeArea, 's/m', timeArea),
        ...row(`${roles.join(' and ')}, by mean area`, meanAreaTimeArea, 's/m', timeArea),
      ]),
      ...gas.streams.flatMap(({ port, behind, fraction }) => [
        ...row(`${port}: streams meet behind the axis`, behind, 'mm', ratio),
        ...row(`${port}: from the exhaust side`, fraction, '% of the bore', value => percent(value)),
      ]),
    ],
    references: gas.references.map(reference => ({
      what: reference.what,
      value: `${written(reference, reference.value)}${unitOf(reference)}`,
      range: `${written(reference, reference.from)} to ${written(reference, reference.to)}`,
      source: reference.source || DASH,
    })),
  }
}

const written = ({ unit }: Reference, value: number): string =>
  unit === 's/m' ? fixed(value, 5) : fixed(value, unit === 'deg' ? 1 : 2)
const unitOf = ({ unit }: Reference): string => (unit === '' ? '' : unit === 'deg' ? '°' : ` ${unit}`)
