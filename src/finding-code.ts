/**
 * Every code a finding may carry, by area. A code once released keeps its meaning.
 * Each area keeps its own block, sorted.
 */
export type FindingCode =
  | InputCode
  | ShopCode
  | RouteCode
  | StockCode
  | CaseCode
  | PlatingCode
  | PortCode
  | CuttingCode
  | BatchCode
  | InspectionCode

/** Reading of part and shop files: src/part. */
type InputCode =
  | 'input/alias'
  | 'input/bands'
  | 'input/choose-one'
  | 'input/converted'
  | 'input/decimal-comma'
  | 'input/duplicate-key'
  | 'input/empty'
  | 'input/fit'
  | 'input/hardness-scale'
  | 'input/implausible'
  | 'input/letters'
  | 'input/linkage'
  | 'input/missing-key'
  | 'input/name-twice'
  | 'input/needs-engine'
  | 'input/no-tolerance'
  | 'input/not-a-mapping'
  | 'input/not-finite'
  | 'input/not-one-of'
  | 'input/not-used'
  | 'input/out-of-range'
  | 'input/port'
  | 'input/port-role'
  | 'input/schema'
  | 'input/tab'
  | 'input/too-deep'
  | 'input/too-large'
  | 'input/unknown-key'
  | 'input/unknown-material'
  | 'input/unknown-setting'
  | 'input/unknown-surface'
  | 'input/unreadable'
  | 'input/wall'
  | 'input/wrong-unit'
  | 'input/yaml'
  | 'input/yaml-version'

/** Things the shop file lacks: src/shop. */
type ShopCode = 'shop/no-machine' | 'shop/no-firm'

/** Order of operations: src/route. */
type RouteCode =
  | 'route/cannot-order'
  | 'route/no-place'
  | 'route/not-planned'
  | 'route/out-of-reach'
  | 'route/unknown-rule'
  | 'route/waived'

/** Sizes, stock and case: src/stock. */
type StockCode =
  | 'stock/chain-open'
  | 'stock/deep'
  | 'stock/growth-over-tolerance'
  | 'stock/heavy'
  | 'stock/impossible'
  | 'stock/more-than-lapped'
  | 'stock/thin'
  | 'stock/unused'

/** Plated surfaces: src/plating, src/part. */
type PlatingCode =
  | 'plating/bake'
  | 'plating/bake-unknown'
  | 'plating/hardness'
  | 'plating/hone-stock'
  | 'plating/material'
  | 'plating/no-honing-data'
  | 'plating/on-case'
  | 'plating/port-edges'
  | 'plating/port-timing'
  | 'plating/surface'
  | 'plating/thickness'
  | 'plating/too-thick'

/** What the hardener is asked for: src/hardening. */
type CaseCode =
  | 'case/bridge-eaten'
  | 'case/core-softens'
  | 'case/cycle-beyond-process'
  | 'case/depth-not-asked'
  | 'case/depth-share'
  | 'case/edges-to-break'
  | 'case/grade-unknown'
  | 'case/hardness-after'
  | 'case/hardness-out-of-reach'
  | 'case/long-cycle'
  | 'case/no-coupon'
  | 'case/one-sided'
  | 'case/process-limited'
  | 'case/process-not-planned'
  | 'case/process-refused'
  | 'case/stress-relief-window'
  | 'case/temper-margin'
  | 'case/temper-unknown'
  | 'case/temperature-outside-process'
  | 'case/too-deep'
  | 'case/wall-eaten'

/** Port geometry and fixture: src/ports. */
type PortCode =
  | 'ports/acute-edge'
  | 'ports/aux-exhaust-timing'
  | 'ports/back-on-centre-line'
  | 'ports/beyond-part'
  | 'ports/blowdown-in-class'
  | 'ports/blowdown-time'
  | 'ports/boost-after-main'
  | 'ports/boost-rise'
  | 'ports/bridge-too-wide'
  | 'ports/corner-in-cutter-plane'
  | 'ports/corner-near-cutter'
  | 'ports/corner-too-large'
  | 'ports/corner-too-tight'
  | 'ports/cutter-too-short'
  | 'ports/duration-as-drawn'
  | 'ports/edge-falls-away'
  | 'ports/edge-outside-stroke'
  | 'ports/edges-crossed'
  | 'ports/exhaust-before-transfer'
  | 'ports/exhaust-width'
  | 'ports/far-wall-strike'
  | 'ports/fixture-not-measured'
  | 'ports/floor-at-bottom'
  | 'ports/free-port'
  | 'ports/holder-clearance'
  | 'ports/inlet-masked'
  | 'ports/knife-edge'
  | 'ports/land-to-flange'
  | 'ports/land-to-groove'
  | 'ports/linkage-locks'
  | 'ports/main-rise'
  | 'ports/misses-bore'
  | 'ports/misses-outside'
  | 'ports/no-bore'
  | 'ports/no-drill'
  | 'ports/no-end-mill'
  | 'ports/no-engine'
  | 'ports/no-entry'
  | 'ports/offset-symmetry'
  | 'ports/pair-symmetry'
  | 'ports/porting-share'
  | 'ports/reaches-flange'
  | 'ports/ring-corner'
  | 'ports/ring-crosses-bridge'
  | 'ports/ring-peg'
  | 'ports/rotary-limits'
  | 'ports/short-circuit'
  | 'ports/shoulder-clearance'
  | 'ports/streams-meet'
  | 'ports/thin-land'
  | 'ports/thin-wall'
  | 'ports/tilt-limits'
  | 'ports/timing-in-class'
  | 'ports/too-steep'
  | 'ports/transfer-near-exhaust'
  | 'ports/transfer-width'
  | 'ports/trapped-ratio'
  | 'ports/two-bore-bands'
  | 'ports/two-outside-bands'
  | 'ports/wider-than-bore'
  | 'ports/windows-overlap'

/** Cutters, speeds, feeds, grinding and honing: src/cutting. */
type CuttingCode =
  | 'cutting/bar-bends'
  | 'cutting/bar-overhang'
  | 'cutting/burn-screen'
  | 'cutting/chip-too-thin'
  | 'cutting/cutter-bends'
  | 'cutting/hardness-missing'
  | 'cutting/jaws-bend-wall'
  | 'cutting/lap-leaves-more'
  | 'cutting/no-boring-bar'
  | 'cutting/no-data'
  | 'cutting/no-drill'
  | 'cutting/no-hone'
  | 'cutting/no-lap'
  | 'cutting/no-tool'
  | 'cutting/no-wheel'
  | 'cutting/port-at-reversal'
  | 'cutting/quill-overhang'
  | 'cutting/slow-cutter'
  | 'cutting/stones-and-ports'
  | 'cutting/stones-leave-more'
  | 'cutting/too-fine-to-turn'
  | 'cutting/too-hard-to-cut'
  | 'cutting/wheel-and-bore'
  | 'cutting/wheel-and-ports'

/** Start quantity and bar: src/batch. */
type BatchCode =
  | 'batch/bar-too-short'
  | 'batch/hardness-for-section'
  | 'batch/no-bar'
  | 'batch/one-heat'
  | 'batch/one-load'
  | 'batch/yield-too-low'

/** Gauges and samples: src/inspection. */
type InspectionCode =
  | 'inspection/mirror-bore'
  | 'inspection/narrow-acceptance'
  | 'inspection/no-gauge'
  | 'inspection/roughness-out-of-reach'
