import { acuteEdge } from './acute-edge.ts'
import { auxExhaustTiming } from './aux-exhaust-timing.ts'
import { blowdownInClass } from './blowdown-in-class.ts'
import { blowdownTime } from './blowdown-time.ts'
import { boostAfterMain } from './boost-after-main.ts'
import { boostRise } from './boost-rise.ts'
import { durationAsDrawn } from './duration-as-drawn.ts'
import { edgeFallsAway } from './edge-falls-away.ts'
import { exhaustBeforeTransfer } from './exhaust-before-transfer.ts'
import { exhaustWidth } from './exhaust-width.ts'
import { farWallStrike } from './far-wall-strike.ts'
import { floorAtBottom } from './floor-at-bottom.ts'
import { freePort } from './free-port.ts'
import { holderClearance } from './holder-clearance.ts'
import { inletMasked } from './inlet-masked.ts'
import { landToFlange } from './land-to-flange.ts'
import { landToGroove } from './land-to-groove.ts'
import { mainRise } from './main-rise.ts'
import { offsetSymmetry } from './offset-symmetry.ts'
import { pairSymmetry } from './pair-symmetry.ts'
import type { PortCheck } from './port-check.ts'
import { portingShare } from './porting-share.ts'
import { ringCorner } from './ring-corner.ts'
import { ringCrossesBridge } from './ring-crosses-bridge.ts'
import { ringPeg } from './ring-peg.ts'
import { shortCircuit } from './short-circuit.ts'
import { shoulderClearance } from './shoulder-clearance.ts'
import { streamsMeet } from './streams-meet.ts'
import { thinLand } from './thin-land.ts'
import { thinWall } from './thin-wall.ts'
import { timingInClass } from './timing-in-class.ts'
import { transferNearExhaust } from './transfer-near-exhaust.ts'
import { transferWidth } from './transfer-width.ts'
import { trappedRatio } from './trapped-ratio.ts'
import { windowsOverlap } from './windows-overlap.ts'

/** Every rule about ports, in the order in which they are tried. A new rule is one file and one line here. */
export const PORT_CHECKS: readonly PortCheck[] = [
  durationAsDrawn,
  exhaustBeforeTransfer,
  blowdownTime,
  blowdownInClass,
  auxExhaustTiming,
  boostAfterMain,
  timingInClass,
  trappedRatio,
  pairSymmetry,
  offsetSymmetry,
  windowsOverlap,
  thinLand,
  exhaustWidth,
  ringCorner,
  ringCrossesBridge,
  ringPeg,
  transferWidth,
  portingShare,
  landToFlange,
  landToGroove,
  floorAtBottom,
  freePort,
  inletMasked,
  shortCircuit,
  streamsMeet,
  boostRise,
  mainRise,
  transferNearExhaust,
  thinWall,
  farWallStrike,
  shoulderClearance,
  holderClearance,
  edgeFallsAway,
  acuteEdge,
]
