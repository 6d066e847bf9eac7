import { fixed, inWords } from '../figures.ts'
import type { NcText } from './nc-text.ts'
import type { Written } from './programmed.ts'

/** What a machinist must know before the first block, one thing a line. */
export function writeHead(nc: NcText, { plan, fixture, setUp, asMilled }: Written): void {
  const { part, shop, fingerprint } = plan
  const datum = plan.clocking?.datum
  const set = plan.fixture?.tilts.find(({ tilt }) => tilt === setUp.tilt)
  const lines: readonly (readonly [string, string | undefined])[] = [
    ['part', part.number],
    ['revision', part.revision],
    ['fingerprint', fingerprint],
    ['set-up', `${setUp.number} of ${plan.setUps.length}`],
    ['operation', String(setUp.operation)],
    ['work', setUp.work],
    ['bore as milled', fixed(asMilled.boreDiameter, 3)],
    ['top face over finished', fixed(asMilled.topStock, 3)],
    ['tilt', fixed(setUp.tilt, 3)],
    [
      'tilt set by',
      set?.axis
        ? `axis ${set.axis.letter} at ${fixed(set.axis.at, 3)}`
        : `sine bar ${inWords(fixture.sineBar)}, blocks ${fixed(set?.stack ?? 0, 3)}${set && set.stack > 0 ? ` under the ${set.blocksUnder}` : ''}`,
    ],
    ['clear at Z', set && fixed(set.across, 3)],
    ['clear of any tilt at Z', plan.fixture?.tilting && fixed(plan.fixture.tilting.tip, 3)],
    ['tool', setUp.tool],
    ['pocket', setUp.pocket === undefined ? undefined : String(setUp.pocket)],
    ['cutter', fixed(setUp.diameter, 3)],
    ['stick-out', setUp.stickOut === undefined ? undefined : fixed(setUp.stickOut, 1)],
    ['wall stock', setUp.wallStock > 0 ? fixed(setUp.wallStock, 3) : undefined],
    ['slug', setUp.slug === 'none' ? undefined : setUp.slug],
    ['head-faces', fixture.headFaces],
    ['face-distance', fixed(fixture.faceDistance, 3)],
    ['pivot-height', fixed(fixture.pivotHeight, 3)],
    ['positive-rotary', fixture.positiveRotary],
    ['positive-tilt', shop.ncWords?.tiltAxis === undefined ? undefined : fixture.positiveTilt],
    ['clocked by', datum?.name],
    ['on top at rotary', datum && fixed(datum.rotary, 3)],
    ['origin', 'tilt pivot'],
    ['X Y Z', 'middle of the cutter at its tip'],
  ]
  for (const [key, value] of lines) if (value !== undefined) nc.comment(`${key}: ${value}`)
  nc.comment('caution: check axes and signs in the manual of the machine,')
  nc.comment('which has the last word')
  nc.comment('caution: run it dry first, above the work,')
  nc.comment('with the proving moves of the setting sheet')
}
