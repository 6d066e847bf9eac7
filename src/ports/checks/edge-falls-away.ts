import { fixed } from '../../figures.ts'
import type { PortCheck } from './port-check.ts'

export const edgeFallsAway: PortCheck = {
  name: 'edge-falls-away',
  code: 'ports/edge-falls-away',
  severity: 'warning',
  because: 'a straight cut that rises opens at one point, not along its edge',
  source: 'derived: geometry; threshold: common practice, no source',
  test: ({ ports }, limit) =>
    ports.flatMap(({ port, planned }) => {
      if (planned.cut !== 'straight') return []
      const falls = planned.windows.map(({ roofFall = 0 }) => roofFall)
      const fall = Math.max(0, ...falls)
      if (fall <= limit('most')) return []
      const late =
        planned.dAnglePerTenth === undefined ? '' : `, ${fixed((fall / 0.1) * planned.dAnglePerTenth, 2)}° later`
      return [
        {
          port,
          message: `cut straight, its top edge falls away by ${fixed(fall, 3)} mm${late} from the highest point to the lowest of the roof`,
          hint: 'write `cut: level`, or time it by the highest point',
          key: 'cut',
        },
      ]
    }),
}
