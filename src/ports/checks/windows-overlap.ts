import { inWords } from '../../figures.ts'
import { landBetween } from './land-between.ts'
import type { PortCheck } from './port-check.ts'
import { pairsOf } from './window-pairs.ts'

export const windowsOverlap: PortCheck = {
  name: 'windows-overlap',
  code: 'ports/windows-overlap',
  severity: 'error',
  because: 'two windows that run into each other leave no wall between them',
  source: 'derived: geometry',
  test: ({ windows, radius, outside }, limit) =>
    pairsOf(windows).flatMap(([a, b]) => {
      const onBore = landBetween(a.onBore, b.onBore, radius)
      const onOutside = landBetween(a.onOutside, b.onOutside, outside(a.planned))
      const within = landBetween(a.onMiddle, b.onMiddle, (radius + outside(a.planned)) / 2)
      if (Math.min(onBore, within, onOutside) > limit('least')) return []
      const where =
        onBore <= limit('least') ? 'on the bore' : onOutside <= limit('least') ? 'on the outside' : 'inside the wall'
      return [{ port: b.port, message: `runs into ${a.port.name} (at ${inWords(a.port.at)}°) ${where}` }]
    }),
}
