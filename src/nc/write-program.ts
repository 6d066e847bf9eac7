import { clampedByHand } from '../clamped-by-hand.ts'
import type { SetUpWindow, WindowCut } from '../cutting/set-up.ts'
import { fixed } from '../figures.ts'
import { tiltShown } from '../machine-frame.ts'
import { cutPath } from '../ports/path/cut-path.ts'
import type { PortWindow } from '../ports/port.ts'
import type { NcWords } from '../shop/shop.ts'
import type { Degree, Millimetre } from '../units.ts'
import { type NcText, openNcText } from './nc-text.ts'
import type { Programmed, Written } from './programmed.ts'
import { writeHead } from './write-head.ts'

/** Plane of X and Y, millimetres, no cutter compensation, absolute, mm/min. */
const MODES = 'G17 G21 G40 G90 G94'

/** One program: head, tool, every window in turn, end. Every feed, depth and place is that of the set-up's own cuts. */
export function writeProgram(written: Written): string {
  const { plan, setUp, safe } = written
  const nc = openNcText()
  const words = plan.shop.ncWords ?? {}
  const spindle = `S${fixed(setUp.spindleSpeed, 0)} M3`
  writeHead(nc, written)
  nc.block(MODES)
  nc.block('G54')
  spindleUp(nc, words.spindleUp, words.tiltAxis !== undefined)
  turnTilt(nc, written, setUp.tilt)
  if (setUp.pocket === undefined) {
    nc.comment(`load by hand, T to be filled in: ${setUp.tool}`)
    nc.block('M0')
  } else {
    nc.block((words.toolChange ?? 'T{tool} M6').replaceAll('{tool}', String(setUp.pocket)))
  }
  nc.move('G0', { Z: safe })
  for (const item of setUp.windows) {
    // Where a run is taken up again, nothing of what went before holds.
    nc.forget()
    nc.comment(`${item.name}, at ${fixed(item.at, 2)}`)
    nc.label()
    nc.block(MODES)
    nc.block('G54')
    nc.move('G0', { Z: safe })
    if (clampedByHand(words).includes('rotary')) stopSpindle(nc, words)
    clampOr(nc, words, words.unclamp, 'unclamp rotary')
    nc.move('G0', { A: item.rotary })
    clampOr(nc, words, words.clamp, 'clamp rotary')
    nc.block(spindle)
    nc.block(words.coolantOn ?? 'M8')
    const window = windowOf(plan, item)
    for (const cut of item.cuts) {
      writeCut(nc, window, cut, safe)
      if (cut.kind === 'cut through' && item.slug === 'kept') {
        stopSpindle(nc, words)
        nc.comment('stop: take the slug out of the bore')
        nc.block('M0')
        nc.block(spindle)
        nc.block(words.coolantOn ?? 'M8')
      }
    }
  }
  stopSpindle(nc, words)
  // Over all that rises on the way to any other tilt: where nobody says how, as far up as the program knows.
  const { tilting } = plan.fixture ?? {}
  if (tilting) nc.move('G0', { Z: Math.max(tilting.tip, safe) })
  spindleUp(nc, words.spindleUp, words.tiltAxis !== undefined)
  turnTilt(nc, written, 0)
  nc.block('M30')
  return nc.text()
}

/** A spindle left at the safe height of one tilt stands in the way of the next. */
function spindleUp(nc: NcText, word: string | undefined, stops: boolean): void {
  nc.comment('spindle fully up before any tilt')
  if (word !== undefined) nc.block(word)
  else if (stops) nc.block('M0')
}

/** By the machine's own axis, which counts its own way. */
function turnTilt(nc: NcText, { plan, fixture }: Written, tilt: Degree): void {
  const words = plan.shop.ncWords ?? {}
  const { tiltAxis, tiltClamp, tiltUnclamp } = words
  if (tiltAxis === undefined) return
  clampOr(nc, words, tiltUnclamp, 'unclamp tilt')
  nc.block(`G0 ${tiltAxis}${fixed(tiltShown(fixture, tilt), 3)}`)
  clampOr(nc, words, tiltClamp, 'clamp tilt')
}

/** By the word of the control; without one by hand, for which the program stops, or by the axis itself as it turns. */
function clampOr(nc: NcText, { clamping }: NcWords, word: string | undefined, says: string): void {
  if (word !== undefined) nc.block(word)
  else if (clamping !== 'automatic') {
    nc.comment(`stop: ${says}`)
    nc.block('M0')
  }
}

function stopSpindle(nc: NcText, { coolantOff }: NcWords): void {
  nc.block('M5')
  nc.block(coolantOff ?? 'M9')
}

function windowOf({ ports }: Programmed, { port, at, window }: SetUpWindow): PortWindow {
  const found = ports.find(known => known.name === port && known.at === at)?.windows[window - 1]
  if (!found) throw new Error(`a set-up names ${port} at ${at}, window ${window}, which the plan does not have`)
  return found
}

function writeCut(nc: NcText, window: PortWindow, cut: WindowCut, safe: Millimetre): void {
  const { entry, from, follow } = cutPath(window, cut.shape)
  nc.forget()
  nc.comment(cut.kind)
  nc.label()
  nc.move('G0', { X: entry.x, Y: entry.y })
  nc.move('G0', { Z: from })
  follow(({ x, y, z }, share) => nc.move('G1', { X: x, Y: y, Z: z, F: share * cut.feed }))
  nc.move('G0', { Z: safe })
}
