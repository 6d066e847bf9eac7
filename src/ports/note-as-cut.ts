import { depthOnCylinder, ignoredShiftAngle } from '../handbook/port-window.ts'
import { fromPart, told, worked } from '../known.ts'
import type { Port } from '../part/part.ts'
import type { Degree } from '../units.ts'
import type { Notebook } from '../working.ts'
import { heightOn } from './cut-frame.ts'
import { extremesOn } from './edges-on.ts'
import type { PortDesign } from './port-design.ts'
import type { Crank } from './timing.ts'
import { type AsCut, milledContour } from './walls-as-milled.ts'

/** Shows how the edges to measure at the milling follow from the finished ones, and what ignoring the shift would do. */
export function noteAsCut({
  port,
  design: { frame, windows, radius, top },
  asCut,
  crank,
  notebook,
}: {
  readonly port: Port
  readonly design: PortDesign
  readonly asCut: AsCut
  readonly crank: Crank | undefined
  readonly notebook: Notebook
}): { readonly ignoredShift?: Degree } {
  const about = { about: port.name }
  const late: Degree[] = []
  for (const { contour: drawn } of windows) {
    const contour = milledContour(drawn, asCut)
    const { highest, lowest } = extremesOn(frame, contour, asCut.bore, 0)
    const [high] = [highest, lowest].map(({ point }) =>
      notebook.use(
        depthOnCylinder,
        {
          ...told(worked('point of the window on the finished bore, geometry'), {
            h: -heightOn(frame, radius, point),
            l: point.l,
          }),
          ...told(fromPart(`${port.path}/up`), { beta: port.up }),
          ...told(worked('bore and top face as they stand when the ports are milled'), {
            q: asCut.bore,
            g: asCut.topStock,
          }),
          ...told(fromPart('/body/bore'), { r: radius }),
        },
        about,
      ),
    )
    if (crank && port.role !== 'inlet' && high !== undefined && port.up !== 0) {
      const dx_dtheta = crank.perDegree(crank.opensAt(top, about), about)
      late.push(
        notebook.use(
          ignoredShiftAngle,
          { ...told(worked('edge as cut, less the finished'), { dh: top - (high - asCut.topStock) }), dx_dtheta },
          about,
        ),
      )
    }
  }
  return late.length === 0 ? {} : { ignoredShift: Math.max(...late) }
}
