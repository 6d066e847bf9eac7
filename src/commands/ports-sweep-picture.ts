import type { Shaded } from '../pictures/chart.ts'
import type { Panel, Run } from '../pictures/panel-chart.ts'
import type { Picture } from '../pictures/picture.ts'
import type { PortsPoint } from '../plan/sweep-ports.ts'
import type { Options } from './options.ts'
import { flowsOf, namesOf } from './swept-names.ts'
import type { World } from './world.ts'

/** Half a page of A4, in points. */
const ROOM = { width: 510, height: 420 }

/** Openings, blowdown and time-areas over the values of a sweep, shaded where nothing in the plan is an error. */
export async function portsSweepPicture(
  path: string,
  points: readonly PortsPoint[],
  { number, asMade }: { readonly number: string; readonly asMade: Options['asMade'] },
  world: World,
): Promise<Picture> {
  const [{ drawPanels }, { typefaceOf }] = await Promise.all([
    import('../pictures/panel-chart.ts'),
    import('./paper-files.ts'),
  ])
  const values = points.map(({ value }) => value)
  const shaded = stretchesOf(points)
  const held = asMade ? ' Edges as the part has them cut.' : ''
  const serves =
    shaded.length === 0
      ? 'The plan of the ports has errors at every one of these values.'
      : `Shaded: the plan of the ports has no errors ${shaded.map(inWords).join(', and ')}.`
  return drawPanels({
    panels: panelsOf(points),
    shaded,
    along: { values, title: `${path}, as in the file` },
    words: {
      caption: `${serves}${held} Specific time-area: of the flow's windows, for each volume swept.`,
      alternative: `Timing and areas of ${number} against ${path} from ${Math.min(...values)} to ${Math.max(...values)}. ${serves}`,
    },
    room: ROOM,
    measure: typefaceOf(world).measure,
  })
}

function panelsOf(points: readonly PortsPoint[]): readonly Panel[] {
  const run = (name: string, figureOf: (point: PortsPoint) => number | undefined): Run => ({
    name,
    points: points.flatMap(point => {
      const figure = figureOf(point)
      return figure === undefined ? [] : [{ value: point.value, figure }]
    }),
  })
  const names = namesOf(points)
  const flows = [...new Set(points.flatMap(point => flowsOf(point).map(({ name }) => name)))]
  const panels: readonly Panel[] = [
    {
      title: 'opens, degrees after top dead centre',
      runs: names.map(name => run(name, ({ ports }) => ports.find(port => port.name === name)?.opens)),
    },
    { title: 'blowdown, degrees', runs: [run('blowdown', ({ blowdown }) => blowdown?.angle)] },
    {
      title: 'specific time-area, s/m',
      runs: flows.map(flow => run(flow, point => flowsOf(point).find(({ name }) => name === flow)?.timeArea)),
    },
    {
      title: 'top, mm below the top face',
      runs: names.map(name => run(name, ({ ports }) => ports.find(port => port.name === name)?.top)),
    },
  ]
  // Without an engine there are only edges, with one the edges follow from the timing.
  const drawn = panels
    .slice(0, 3)
    .map(withLines)
    .filter(({ runs }) => runs.length > 0)
  return drawn.length > 0 ? drawn : panels.slice(3).map(withLines)
}

const withLines = ({ title, runs }: Panel): Panel => ({ title, runs: runs.filter(({ points }) => points.length > 0) })

/** Neighbouring values that serve. */
function stretchesOf(points: readonly PortsPoint[]): readonly Shaded[] {
  const stretches: Shaded[] = []
  for (const [i, { value, serves }] of points.entries()) {
    if (!serves) continue
    const before = stretches.at(-1)
    if (before && points[i - 1]?.serves) stretches[stretches.length - 1] = { from: before.from, to: value }
    else stretches.push({ from: value, to: value })
  }
  return stretches
}

const inWords = ({ from, to }: Shaded): string => (from === to ? `at ${from}` : `from ${from} to ${to}`)
