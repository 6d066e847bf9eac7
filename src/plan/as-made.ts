import type { Part, Port } from '../part/part.ts'
import type { PlannedPort } from '../ports/port.ts'

/**
 * The part with every port that is given by its opening held at the depth where it was cut: what is in the metal stays where
 * it is when a gasket, a rod or a stroke changes. A port whose opening is itself another keeps that.
 */
export function asMade<P extends Part>(part: P, was: Pick<Part, 'ports'>, cut: readonly PlannedPort[]): P {
  return {
    ...part,
    ports: part.ports.map((port): Port => {
      const before = was.ports.find(({ name }) => name === port.name)
      const made = cut.find(({ name }) => name === port.name)
      if (port.opens === undefined || !made || before?.opens !== port.opens) return port
      const { opens: _, duration: __, ...rest } = port
      return { ...rest, top: made.top }
    }),
  }
}
