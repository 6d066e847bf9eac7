import { fixed, inWords } from '../../figures.ts'
import { landBetween } from './land-between.ts'
import type { PortCheck } from './port-check.ts'
import { pairsOf } from './window-pairs.ts'

export const thinLand: PortCheck = {
  name: 'thin-land',
  code: 'ports/thin-land',
  severity: 'warning',
  because: 'a thin bar bows into the bore when hot, and burns',
  source: 'common practice, no source',
  test: ({ part: { engine }, windows, radius, outside }, limit) => {
    const ringed = engine?.rings !== undefined && engine.rings !== 'none'
    const least = ringed ? Math.max(limit('ringed'), limit('ofBore') * 2 * radius) : limit('least')
    return pairsOf(windows).flatMap(([a, b]) => {
      const land = Math.min(
        landBetween(a.onBore, b.onBore, radius),
        landBetween(a.onMiddle, b.onMiddle, (radius + outside(a.planned)) / 2),
        landBetween(a.onOutside, b.onOutside, outside(a.planned)),
      )
      if (land <= 0 || land >= least) return []
      return [
        {
          port: b.port,
          severity: land < limit('hopeless') ? 'error' : 'warning',
          message: `leaves a bar of ${fixed(land, 2)} mm to ${a.port === b.port ? 'its other window' : `${a.port.name} at ${inWords(a.port.at)}°`}; ${fixed(least, 1)} mm or more is usual${ringed ? ' with rings' : ''}`,
          ...(a.port === b.port ? { key: 'bridge' } : {}),
        },
      ]
    })
  },
}
