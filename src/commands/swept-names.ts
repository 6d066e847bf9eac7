import type { PortsPoint } from '../plan/sweep-ports.ts'

/** Of a pair the one on the side where it is drawn. */
export const namesOf = (points: readonly PortsPoint[]): readonly string[] =>
  [...new Set(points.flatMap(({ ports }) => ports.map(({ name }) => name)))].filter(
    name => !name.endsWith(', mirrored'),
  )

/** Every flow by its own name, several roles of one flow together. */
export const flowsOf = ({
  areas,
  together,
}: PortsPoint): readonly { readonly name: string; readonly timeArea?: number }[] => [
  ...areas
    .filter(({ role }) => !together.some(({ roles }) => roles.includes(role)))
    .map(({ role, specificTimeArea }) => ({
      name: role,
      ...(specificTimeArea !== undefined && { timeArea: specificTimeArea }),
    })),
  ...together.map(({ roles, specificTimeArea }) => ({
    name: roles.join(' and '),
    ...(specificTimeArea !== undefined && { timeArea: specificTimeArea }),
  })),
]
