import { fixed } from '../figures.ts'
import { sineBarStack } from '../handbook/tilted-rotary.ts'
import { drilledTo, highestUnder } from '../ports/path/drill-depth.ts'
import type { Pass, ToolPath } from '../ports/path/tool-path.ts'
import { windowWalls } from '../ports/path/window-walls.ts'
import type { Millimetre } from '../units.ts'
import type { CuttingData } from './cutting-data.ts'
import type { NcRequest, NcWindow, SetUp } from './nc-programs.ts'
import { type NcText, openNcText } from './nc-text.ts'

type Written = {
  readonly request: NcRequest
  readonly setUp: SetUp
  /** With their paths where they are milled. */
  readonly windows: readonly (NcWindow & { readonly path?: ToolPath })[]
  readonly data: CuttingData
  readonly safe: Millimetre
}

/** One program: head, tool, every window in turn, end. */
export function writeProgram({ request, setUp, windows, data, safe }: Written): string {
  const nc = openNcText()
  const words = request.shop.ncWords ?? {}
  writeHead(nc, request, setUp)
  nc.block('G17 G21 G40 G90 G94')
  nc.block('G54')
  nc.block((words.toolChange ?? 'T{tool} M6').replaceAll('{tool}', String(setUp.tool)))
  nc.block(`S${fixed(data.spindleSpeed, 0)} M3`)
  nc.move('G0', { Z: safe })
  if (words.tiltAxis !== undefined) nc.block(`G0 ${words.tiltAxis}${fixed(setUp.tilt, 3)}`)
  nc.block(words.coolantOn ?? 'M8')
  for (const { port, window, number, path } of windows) {
    nc.comment(`${port.name} at ${fixed(port.at, 2)}, window ${number} of ${port.windows.length}`)
    if (words.unclamp === undefined) nc.comment('unclamp rotary')
    else nc.block(words.unclamp)
    nc.move('G0', { A: window.rotary })
    if (words.clamp === undefined) nc.comment('clamp rotary')
    else nc.block(words.clamp)
    nc.move('G0', { X: window.entryHole.x, Y: window.entryHole.y })
    if (!path) {
      const walls = windowWalls(window)
      const top = highestUnder(walls, window.entryHole, setUp.cutter)
      nc.move('G0', { Z: top + 1 })
      nc.move('G1', { Z: drilledTo(walls, window.entryHole), F: data.feed })
    } else {
      writeMilling(nc, path, data)
    }
    nc.move('G0', { Z: safe })
  }
  nc.block(words.coolantOff ?? 'M9')
  nc.block('M5')
  nc.block('M30')
  return nc.text()
}

function writeMilling(nc: NcText, path: ToolPath, { feed }: CuttingData): void {
  nc.move('G0', { Z: path.feedFrom })
  nc.comment('rough')
  writePasses(nc, path, path.rough, feed)
  nc.comment('finish')
  writePasses(nc, path, path.finish, feed)
  nc.comment('spring pass')
  writePasses(nc, path, [path.spring], feed)
}

/** Down in the drilled hole, across to the pass, round it, and back to the hole. */
function writePasses(nc: NcText, { entry }: ToolPath, passes: readonly Pass[], feed: number): void {
  for (const pass of passes) {
    const [first] = pass
    if (!first) continue
    nc.move('G1', { X: entry.x, Y: entry.y, F: feed })
    nc.move('G1', { Z: first.z, F: feed })
    for (const { x, y, z } of pass) nc.move('G1', { X: x, Y: y, Z: z, F: feed })
    nc.move('G1', { X: entry.x, Y: entry.y, F: feed })
  }
}

function writeHead(nc: NcText, { part, shop, asMilled, fingerprint, slug }: NcRequest, setUp: SetUp): void {
  const { fixture } = shop
  const stack = sineBarStack.value({ tilt: Math.abs(setUp.tilt), l: 100 })
  nc.comment(`part: ${part.number}`)
  nc.comment(`revision: ${part.revision}`)
  nc.comment(`fingerprint: ${fingerprint}`)
  nc.comment(
    `stock state: bore ${fixed(asMilled.boreDiameter, 3)}, top face ${fixed(asMilled.topStock, 3)} over finished`,
  )
  nc.comment(`work: ${setUp.kind === 'drill' ? 'drill entry holes' : 'mill windows'}`)
  nc.comment(`tilt: ${fixed(setUp.tilt, 3)}`)
  nc.comment(`tilt set by: ${shop.ncWords?.tiltAxis ?? `hand, sine bar 100, blocks ${fixed(stack, 3)}`}`)
  nc.comment(`cutter: ${fixed(setUp.cutter, 3)}`)
  if (setUp.toolName !== undefined) nc.comment(`tool: T${setUp.tool} ${setUp.toolName}`)
  nc.comment(`head-faces: ${fixture.headFaces}`)
  nc.comment(`face-distance: ${fixed(fixture.faceDistance, 3)}`)
  nc.comment(`pivot-height: ${fixed(fixture.pivotHeight, 3)}`)
  nc.comment(`positive-rotary: ${fixture.positiveRotary}`)
  nc.comment('origin: tilt pivot; X Y Z are the middle of the cutter at its tip')
  if (setUp.kind === 'mill')
    nc.comment(`slug: ${slug === 'kept' ? 'kept by a skin, catch it at the finishing pass' : 'cut away'}`)
  nc.comment('caution: check the axes and signs against the manual of the machine, which has the last word')
  nc.comment('caution: run it dry first, above the work, with the proving moves of the setting sheet')
  if (setUp.kind === 'drill')
    nc.comment('caution: a drill wanders on a slope; mill a flat for it first where the wall leans')
}
