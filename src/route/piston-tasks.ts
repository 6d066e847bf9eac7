import type { Part } from '../part/part.ts'
import type { TaskSketch } from './soft-tasks.ts'

/** The open end and the pin bore, before lands and skirt are turned true to them. Common practice, no source. */
export function pistonTasks({ features, outside }: Part): readonly TaskSketch[] {
  const inside = features.filter(({ kind }) => kind === 'inside').map(({ name }) => name)
  const pin = features.filter(({ kind }) => kind === 'pin bore').map(({ name }) => name)
  const first = outside[0]?.name ?? 'outside'
  return [
    ...(inside.length > 0
      ? [
          {
            purpose: 'turn-inside',
            name: 'Turn inside and register',
            process: 'turn',
            holding: `Hold the crown end by ${first} in bored soft jaws, open end outward; inside, register and end face in one holding`,
            locatedBy: [first],
            surfaces: inside,
            why: ['the register in the open end is what every later holding takes'],
          } as const,
        ]
      : []),
    ...(pin.length > 0
      ? [
          {
            purpose: 'bore-pin',
            name: 'Bore for the pin',
            process: 'drill',
            holding:
              inside.length > 0
                ? 'Seat the register on the spigot of the fixture, clamped on the crown; take azimuth 0, the thrust direction, from the mark'
                : `Hold ${first} in the vee of the fixture; take azimuth 0, the thrust direction, from the mark`,
            locatedBy: inside,
            surfaces: pin,
            why: ['both bosses in one pass, square to the axis of the register'],
          } as const,
        ]
      : []),
  ]
}
