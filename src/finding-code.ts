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
type RouteCode = 'route/cannot-order'

/** Sizes, stock and case: src/stock. */
type StockCode = 'stock/thin' | 'stock/deep' | 'stock/impossible'

/** Port geometry and fixture: src/ports. */
type PortCode = 'ports/edge-outside-stroke'

/** Cutters, speeds, feeds, grinding and honing: src/cutting. */
type CuttingCode = 'cutting/no-cutter'

/** Start quantity and bar: src/batch. */
type BatchCode = 'batch/no-bar'

/** Gauges and samples: src/inspection. */
type InspectionCode = 'inspection/no-gauge'
