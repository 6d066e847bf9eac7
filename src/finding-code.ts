/**
 * Every code a finding may carry, by area. A code once released keeps its meaning.
 * Each area keeps its own block, sorted.
 */
export type FindingCode =
  | InputCode
  | ShopCode
  | RouteCode
  | StockCode
  | PortCode
  | CuttingCode
  | BatchCode
  | InspectionCode

/** Reading of part and shop files: src/part. */
type InputCode = 'input/schema' | 'input/unknown-key'

/** Things the shop file lacks: src/shop. */
type ShopCode = 'shop/no-machine' | 'shop/no-firm'

/** Order of operations: src/route. */
type RouteCode =
  | 'route/cannot-order'
  | 'route/no-place'
  | 'route/not-planned'
  | 'route/unknown-rule'
  | 'route/waived'

/** Sizes, stock and case: src/stock. */
type StockCode = 'stock/thin' | 'stock/deep' | 'stock/impossible'

/** Port geometry and fixture: src/ports. */
type PortCode =
  | 'ports/back-on-centre-line'
  | 'ports/beyond-part'
  | 'ports/bridge-too-wide'
  | 'ports/corner-in-cutter-plane'
  | 'ports/corner-near-cutter'
  | 'ports/corner-too-large'
  | 'ports/corner-too-tight'
  | 'ports/cutter-too-short'
  | 'ports/edge-outside-stroke'
  | 'ports/edges-crossed'
  | 'ports/inlet-by-skirt'
  | 'ports/knife-edge'
  | 'ports/linkage-locks'
  | 'ports/misses-bore'
  | 'ports/misses-outside'
  | 'ports/no-bore'
  | 'ports/no-drill'
  | 'ports/no-engine'
  | 'ports/no-entry'
  | 'ports/no-end-mill'
  | 'ports/reaches-flange'
  | 'ports/rotary-limits'
  | 'ports/tilt-limits'
  | 'ports/too-steep'
  | 'ports/two-bore-bands'
  | 'ports/two-outside-bands'
  | 'ports/wider-than-bore'

/** Cutters, speeds, feeds, grinding and honing: src/cutting. */
type CuttingCode = 'cutting/no-cutter'

/** Start quantity and bar: src/batch. */
type BatchCode = 'batch/no-bar'

/** Gauges and samples: src/inspection. */
type InspectionCode = 'inspection/no-gauge'
