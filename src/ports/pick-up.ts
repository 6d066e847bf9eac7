import { clockPosition } from '../clock-position.ts'
import { crownFall, crownHeight, pivotFactor, tiltPerStack } from '../handbook/pick-up.ts'
import { sineBarStack } from '../handbook/tilted-rotary.ts'
import { fromBuiltIn, told, worked } from '../known.ts'
import { headSense, tiltShown } from '../machine-frame.ts'
import { setting } from '../shop/origin.ts'
import type { Fixture, Shop } from '../shop/shop.ts'
import type { AsMilled } from '../stock/stock.ts'
import { type Degree, type Millimetre, radians } from '../units.ts'
import type { Notebook } from '../working.ts'
import type { Grip } from './grip.ts'
import type { Body } from './height-under.ts'
import type { PlannedPort } from './port.ts'
import { safeHeight } from './safe-heights.ts'

/** What a ball in the spindle touches at tilt 0, and what the display is set to. X and Y: its middle; Z: its tip. */
export type PickUp = {
  readonly ball: Millimetre
  readonly surface: string
  readonly diameter: Millimetre
  /** Rotary with the widest whole wall on top, so that no touch falls into a window, and where that wall is seen from the head. */
  readonly rotary: Degree
  readonly clock: string
  /** Y of the ball's middle against either side once Y 0 is halved between them. */
  readonly side: Millimetre
  /** Z of the tip on the highest line of the surface. */
  readonly crown: Millimetre
  /**
   * X of the ball's middle against the top face, and the Z of its tip at which it meets the rim. A top face in the jaws is
   * touched by nothing: then the shoulder that it stops against is, with the jaws empty.
   */
  readonly face: { readonly on: 'top face' | 'shoulder in the jaws'; readonly x: Millimetre; readonly z: Millimetre }
  /** A ball fixed to the plate, read at tilt 0 and at the largest tilt of the job; absent where nothing is tilted. */
  readonly pivot?: { readonly tilt: Degree; readonly factor: number }
}

/** One tilt: how it is set, and the touch that shows whether it stands right. */
export type TiltSetting = {
  readonly tilt: Degree
  /** Where the tilt axis stands for it, as it counts itself; absent where the tilt is set by hand. */
  readonly axis?: { readonly letter: string; readonly at: Degree }
  /** Z of a tip above everything at this tilt: for every move across and every turn of the rotary. */
  readonly across: Millimetre
  readonly stack: Millimetre
  /** Which end of the plate the blocks lift. */
  readonly blocksUnder: 'none' | 'chuck end' | 'free end'
  /** Error of the tilt by a hundredth of a millimetre of the stack. */
  readonly perStack: Degree
  readonly check: {
    readonly x: Millimetre
    readonly z: Millimetre
    /** Move in +X from there, and what an indicator reads after it. */
    readonly move: Millimetre
    readonly fall: Millimetre
  }
}

/** An error of the stack to reckon with. */
export const STACK_ERROR: Millimetre = 0.01
/** Clear of an end of the surface that is touched, and the longest move along it that is worth making. */
const FROM_END: Millimetre = 5
const LONGEST_MOVE: Millimetre = 40

const LARGEST = worked('largest tilt of the job')
const STACKED = fromBuiltIn('common practice, no source')

type Asked = {
  readonly fixture: Fixture
  readonly shop: Pick<Shop, 'set'>
  /** Letter of the axis that sets the tilt, where the machine has one. */
  readonly tiltAxis: string | undefined
  readonly asMilled: AsMilled
  readonly grip: Grip
  readonly bodies: readonly Body[]
  readonly ports: readonly PlannedPort[]
  readonly tilts: readonly Degree[]
  readonly notebook: Notebook
}

export function pickUpOf({ fixture, shop, asMilled, ports, tilts, notebook }: Asked): PickUp {
  const touched = longestBand(asMilled)
  const { bore, outside } = asMilled.shape
  const rho = fixture.ball / 2
  const rim = ((bore[0]?.diameter ?? 0) + (outside[0]?.diameter ?? 0)) / 4
  const largest = tilts.reduce((far, tilt) => (Math.abs(tilt) > Math.abs(far) ? tilt : far), 0)
  const wall = widestWall(ports)
  const s = headSense(fixture)
  const upright = 0 - s * wall
  return {
    ball: fixture.ball,
    surface: touched.name,
    diameter: touched.diameter,
    rotary: fixture.positiveRotary === 'Y to Z' ? upright : 0 - upright,
    clock: clockPosition(wall),
    side: touched.diameter / 2 + rho,
    crown: crownAt({ fixture, shop, radius: touched.diameter / 2, x: 0, tilt: 0, notebook }),
    // Either looks toward +X, as the chuck does.
    face: {
      on: s > 0 ? 'top face' : 'shoulder in the jaws',
      x: fixture.faceDistance + rho,
      z: fixture.pivotHeight + rim - rho,
    },
    ...(largest === 0
      ? {}
      : {
          pivot: {
            tilt: largest,
            factor: notebook.use(pivotFactor, told(LARGEST, { tilt: largest }), { about: 'pivot' }),
          },
        }),
  }
}

/** How each tilt is set, and the check touch for it. */
export function tiltSettings(asked: Asked): readonly TiltSetting[] {
  const { fixture, tiltAxis, bodies, tilts, notebook } = asked
  return tilts.map(tilt => {
    const about = { about: `tilt ${tilt}°` }
    const l = told(setting(asked.shop, 'fixture', 'sine-bar'), { l: fixture.sineBar })
    const by = told(worked('tilt of the set-up'), { tilt })
    return {
      tilt,
      ...(tiltAxis === undefined ? {} : { axis: { letter: tiltAxis, at: tiltShown(fixture, tilt) } }),
      across: safeHeight(fixture, bodies, tilt),
      stack: notebook.use(
        sineBarStack,
        { ...told(worked('tilt of the set-up'), { tilt: Math.abs(tilt) }), ...l },
        about,
      ),
      blocksUnder: tilt === 0 ? 'none' : tilt > 0 ? 'chuck end' : 'free end',
      perStack: notebook.use(tiltPerStack, { ...told(STACKED, { e: STACK_ERROR }), ...l, ...by }, about),
      check: checkTouch(asked, tilt),
    }
  })
}

/** Between the jaws and the far end of the longest band, on its highest line: a whole millimetre of X, whole tens of move. */
function checkTouch({ fixture, shop, asMilled, grip, notebook }: Asked, tilt: Degree): TiltSetting['check'] {
  const { from, to, diameter } = longestBand(asMilled)
  const s = headSense(fixture)
  const along = [from, to].map(depth => fixture.faceDistance - s * (depth + asMilled.topStock))
  const radius = diameter / 2
  const xOf = (station: Millimetre): Millimetre =>
    station * Math.cos(radians(tilt)) + (fixture.pivotHeight + radius) * Math.sin(radians(tilt))
  const near = Math.ceil(xOf(Math.max(grip.chuckFace, Math.min(...along)) + FROM_END))
  const far = xOf(Math.max(...along) - FROM_END)
  const move = Math.max(0, Math.min(LONGEST_MOVE, Math.floor((far - near) / 10) * 10))
  return {
    x: near,
    z: crownAt({ fixture, shop, radius, x: near, tilt, notebook }),
    move,
    fall:
      notebook.use(
        crownFall,
        {
          ...told(worked('move chosen along the surface'), { dX: move }),
          ...told(worked('tilt of the set-up'), { tilt }),
        },
        { about: `tilt ${tilt}°` },
      ) + 0,
  }
}

function crownAt({
  fixture,
  shop,
  radius,
  x,
  tilt,
  notebook,
}: {
  readonly fixture: Fixture
  readonly shop: Pick<Shop, 'set'>
  readonly radius: Millimetre
  readonly x: Millimetre
  readonly tilt: Degree
  readonly notebook: Notebook
}): Millimetre {
  const given = {
    ...told(setting(shop, 'fixture', 'pivot-height'), { H: fixture.pivotHeight }),
    ...told(worked('surface touched, as it stands'), { R: radius }),
    ...told(setting(shop, 'fixture', 'ball'), { rho: fixture.ball / 2 }),
    ...told(worked('place of the touch chosen'), { X: x }),
    ...told(worked('tilt of the set-up'), { tilt }),
  }
  return notebook.use(crownHeight, given, { about: `tilt ${tilt}°` })
}

function longestBand({ shape }: AsMilled): AsMilled['shape']['outside'][number] {
  const [first, ...others] = shape.outside
  if (!first) throw new Error('a part without an outside has no ports')
  return others.reduce((long, band) => (band.to - band.from > long.to - long.from ? band : long), first)
}

/** Azimuth in the middle of the widest wall between windows on the outside. */
function widestWall(ports: readonly PlannedPort[]): Degree {
  const azimuths = ports
    .flatMap(({ windows }) => windows.flatMap(({ outline }) => outline.outside.map(({ azimuth }) => azimuth)))
    .map(azimuth => ((azimuth % 360) + 360) % 360)
    .toSorted((a, b) => a - b)
  const walls = azimuths.map((from, i) => ({ from, width: (azimuths[i + 1] ?? (azimuths[0] ?? 0) + 360) - from }))
  const widest = walls.toSorted((a, b) => b.width - a.width || a.from - b.from)[0]
  if (!widest) return 0
  const middle = widest.from + widest.width / 2
  // To the whole degree: the head is set by hand here, and the wall is wide.
  return Math.round(middle > 180 ? middle - 360 : middle)
}
