import type { PortRole } from '../part/part.ts'
import type { GasExchange } from '../ports/gas-exchange.ts'

/** What a port may be solved for. */
export type PortFigure = {
  readonly unit: string
  readonly meaning: string
  readonly of: (gas: GasExchange, role: PortRole) => number | undefined
}

const flowOf = ({ areas, together }: GasExchange, role: PortRole) =>
  together.find(({ roles }) => roles.includes(role)) ?? areas.find(area => area.role === role)

/** By the name that the user writes. Time-areas are those of the whole flow that the port belongs to. */
export const PORT_FIGURES: Readonly<Record<string, PortFigure>> = {
  'time-area': {
    unit: 's/m',
    meaning: 'specific time-area of all ports of its flow, by the integral',
    of: (gas, role) => flowOf(gas, role)?.specificTimeArea,
  },
  'mean-time-area': {
    unit: 's/m',
    meaning: 'the same by the mean area, as the published targets count it',
    of: (gas, role) => flowOf(gas, role)?.meanAreaTimeArea,
  },
  blowdown: {
    unit: '°',
    meaning: 'crank angle from exhaust to transfer opening',
    of: ({ blowdown }) => blowdown?.angle,
  },
  'blowdown-time': { unit: 'ms', meaning: 'the same in time', of: ({ blowdown }) => blowdown?.time },
  'blowdown-time-area': {
    unit: 's/m',
    meaning: 'specific time-area of the exhaust over the blowdown',
    of: ({ blowdown }) => blowdown?.specificTimeArea,
  },
}
