/**
 * Every code a finding may carry, by area. A code once released keeps its meaning.
 * Each area keeps its own block, sorted; beside each stands what it means and what a user does, for the manual.
 */
export type FindingCode =
  | InputCode
  | RouteCode
  | StockCode
  | FeatureCode
  | CaseCode
  | PlatingCode
  | PortCode
  | CuttingCode
  | BatchCode
  | InspectionCode
  | ResultsCode
  | TrialCode

/** Reading of part and shop files: src/part. */
type InputCode =
  | 'input/alias' // The file uses YAML anchors or aliases, which are not read: write the value out at each place.
  | 'input/bands' // Bands of a surface overlap, leave a gap or are a groove that no tool turns: set their lengths or depths right.
  | 'input/choose-one' // Two keys say the same thing, or one lacks its partner: keep one way of saying it.
  | 'input/converted' // A hardness was converted to HV by a table: read the HV and give HV where it matters.
  | 'input/decimal-comma' // A number has a comma: write a point.
  | 'input/duplicate-key' // A key stands twice: delete one.
  | 'input/empty' // The file has nothing in it: start from what `new` writes.
  | 'input/feature' // A chamfer, groove, hole or cut-out cannot be placed as it is written: correct the key that is named.
  | 'input/fit' // A fit is not known, or is that of a shaft on a hole: correct it, or write the two deviations.
  | 'input/hardness-scale' // A hardness has no scale: write HV, HRC or HB after it.
  | 'input/implausible' // A size is far from any such part: see whether inches were read as millimetres.
  | 'input/letters' // A text has letters that the typeface of the paper lacks: write it in letters that print.
  | 'input/linkage' // The crank cannot turn with this rod and offset: give the rod from centre to centre.
  | 'input/missing-key' // Something that the file needs is not there: add the key that is named.
  | 'input/name-twice' // Two things have one name: give each its own.
  | 'input/near-grade' // The grade is near one of the handbook's and planned as that: have analysis and condition confirmed.
  | 'input/needs-engine' // A crank angle is given, but there is no engine: add one, or give the depth in mm.
  | 'input/no-solution' // No value in the range gives what was asked of `--solve`: widen the range, or ask for less.
  | 'input/no-tolerance' // The limits of a size leave no tolerance: give it two limits that differ.
  | 'input/not-a-mapping' // The file is a list or a text: begin with keys, as `part:`.
  | 'input/not-finite' // A number is too large to work with, or is none: write it anew.
  | 'input/not-one-of' // A word is not one of those known: take one of the list.
  | 'input/not-used' // Something is given that this part has no use for: delete it.
  | 'input/out-of-range' // A number lies outside what can be: set it within the limits that are named.
  | 'input/pocket-twice' // Two tools that differ stand in one pocket: give each the pocket that it stands in.
  | 'input/port' // A port cannot be placed as it is written: correct the key that is named.
  | 'input/port-role' // The name of a port does not say what flows through it: add `role:`.
  | 'input/schema' // A value is of the wrong kind: write what is wanted there.
  | 'input/tab' // A tab indents a line: indent with spaces.
  | 'input/too-deep' // Values are nested too deeply: this is another kind of file.
  | 'input/too-large' // The file is too long, or too much of it is wrong to list: see whether it is the right file.
  | 'input/unknown-key' // A key is not known: correct its spelling, or delete it.
  | 'input/unknown-material' // The handbook has no such grade: take one of those it knows.
  | 'input/unknown-setting' // `--set`, `--sweep` or `--solve` names something that cannot be set: take a key of the part file.
  | 'input/unknown-surface' // A surface is named that the part does not have: take one of its own.
  | 'input/unreadable' // A value cannot be read: write it as the hint shows.
  | 'input/wall' // No wall is left between bore and outside: see whether the sizes are diameters.
  | 'input/wrong-unit' // A unit does not go with the size: write one that does, or none.
  | 'input/yaml' // The file is not YAML at that place: correct the line, or the one above it.
  | 'input/yaml-version' // The file asks for another YAML than 1.2: delete the line that does.

/** Order of operations: src/route. */
type RouteCode =
  | 'route/cannot-order' // Rules contradict each other on this part: waive one of them, with a reason.
  | 'route/no-place' // Neither a machine nor a firm does a process: add it to one of them in the shop file.
  | 'route/not-planned' // This kind of part or process is not planned: plan it by hand, or draw it otherwise.
  | 'route/out-of-reach' // A tolerance, roughness or form is finer than its process reaches: ask for no more than the part needs.
  | 'route/unknown-rule' // A waiver names no rule there is: take a name that `route` prints.
  | 'route/waived' // A rule is waived, with the reason given: see that the reason still holds.

/** Chamfers, undercuts, grooves, holes, cut-outs: src/features. */
type FeatureCode =
  | 'feature/clearance' // A piston has too little or too much clearance in the liner that it fits: turn it smaller or larger, or hold both closer.
  | 'feature/growth-over-tolerance' // What grows or is ground off after a feature is cut varies by more than its tolerance: widen it, mask it, or measure a first article.

/** Sizes, stock and case: src/stock. */
type StockCode =
  | 'stock/chain-open' // An edge comes out wider than its limits at the worst: hold the sizes of the chain closer, or allow more.
  | 'stock/deep' // More comes off than the case can lose: leave less stock, or ask for less depth.
  | 'stock/growth-over-tolerance' // Growth takes most of the tolerance of a surface left as hardened: grind it, widen it, or mask it.
  | 'stock/heavy' // More comes off a hard surface than is usual: finish closer before hardening.
  | 'stock/honed-alone' // The bore cannot be honed alone after nitriding: grind it first.
  | 'stock/impossible' // No stock both cleans up and leaves the case: cut run-out and distortion, or ask for less.
  | 'stock/marginal' // The stock is short by less than can be told in the work: leave a little more, or accept it.
  | 'stock/more-than-lapped' // A lap would have to take more than it does: grind closer to size.
  | 'stock/release' // A side finished first moves when the case of the other is ground: grind that other side first.
  | 'stock/rests-on-growth' // A surface is cut past its finished size and counts on growth: measure the growth on a first article.
  | 'stock/thin' // The stock does not clean up at the worst place: leave more, or hold the set-up truer.
  | 'stock/turned-closer' // The last soft cut is planned closer than usual, or the case would be too deep: turn it so, or ask for less.
  | 'stock/unused' // Stock is given for an operation that the route does not have: leave it out.

/** Plated surfaces: src/plating, src/part. */
type PlatingCode =
  | 'plating/bake' // The bake against hydrogen is waived: see that somebody answers for it.
  | 'plating/bake-unknown' // Without the hardness of the bar nobody can tell whether to bake: write it.
  | 'plating/hardness' // The layer is asked to be harder or softer than it is: ask for what it reaches.
  | 'plating/hone-stock' // The plating to be honed off again is not what is usual: hold the bore closer, or leave less.
  | 'plating/material' // The plating takes badly on this material, or it is not known: agree it with the plater.
  | 'plating/no-honing-data' // There are no figures for honing this layer: ask the maker of the stones.
  | 'plating/on-case' // Plating goes over the case: mask the bore in hardening, or tell the plater.
  | 'plating/port-edges' // Edges are broken too little under the plating, which flakes there: break them more.
  | 'plating/port-timing' // The chamfer under the plating widens the windows: draw them smaller by it, and check the timing.
  | 'plating/surface' // Only a bore is planned to be plated: name one.
  | 'plating/thickness' // The thickness is not what is usual: agree it with the plater.
  | 'plating/too-thick' // More plating may be left than is allowed: aim at less, or allow more.

/** What the hardener is asked for: src/hardening. */
type CaseCode =
  | 'case/bridge-eaten' // A bridge is thin for the case it takes on four sides: make it wider, or order less depth.
  | 'case/core-tension' // The core bears too much tension against the case: thicken the wall, or order less depth.
  | 'case/core-softens' // What nitriding does to the core cannot be told, or it softens: nitride cooler, or take another steel.
  | 'case/deeper-than-usual' // The case ordered is deeper than is usual: take off less after hardening, or agree it with the hardener.
  | 'case/depth-not-asked' // No depth is asked for and a usual one is planned: write the one that must be left.
  | 'case/depth-share' // Finishing takes too great a share of the case: cut run-out and distortion first.
  | 'case/edges-to-break' // Port edges take case from two sides and chip: break them as the note says.
  | 'case/grade-unknown' // The handbook lacks figures of this grade in this process: get them from the hardener into `reached:`.
  | 'case/hardness-after' // What is left after finishing may be softer than asked: take off less, or order more depth.
  | 'case/hardness-out-of-reach' // The depth cannot be read at the hardness it ends at: ask for another, or change the bar's.
  | 'case/layer-kept' // A surface keeps its compound layer: finish it, or agree with the hardener what may stay.
  | 'case/long-cycle' // The case takes long in the furnace: take off less, or agree it with the hardener.
  | 'case/no-coupon' // No coupon goes with the charge: name one in the shop file.
  | 'case/one-sided' // Only one side of a thin wall is treated and it bends: treat both, or measure a first article.
  | 'case/process-limited' // The process does this grade with limits only: agree with the hardener before the bar is bought.
  | 'case/process-refused' // The process is refused for this part or grade: choose another process or material.
  | 'case/record-passed-over' // A record of the works was not used for growth, and why: nothing, if the reason is right.
  | 'case/record-undivided' // A record has one growth for all surfaces: measure outside, bore and length apart.
  | 'case/stress-relief-near-temper' // Stress relief comes near the temper of the bar: keep to its temperature, or buy bar tempered hotter.
  | 'case/stress-relief-window' // No stress-relief temperature lies between nitriding and temper: nitride cooler, or buy bar tempered hotter.
  | 'case/temper-margin' // Nitriding comes close to the temper of the bar: nitride cooler, or buy bar tempered hotter.
  | 'case/temper-unknown' // The temper of the bar is not given: read it from the certificate into `temper:`.
  | 'case/temperature-outside-process' // The process does not run at this temperature: write one that it does, or none.
  | 'case/too-deep' // The case needed is deeper than can be ordered: take off less, or ask for less.
  | 'case/wall-eaten' // The wall is hardened through: ask for less depth, or choose nitriding.

/** Port geometry and fixture: src/ports. */
type PortCode =
  | 'ports/acute-edge' // An edge is acute, burrs and chips: break it with care, or turn the port less.
  | 'ports/aux-exhaust-timing' // An auxiliary exhaust opens before the exhaust or after the transfers: see its timing.
  | 'ports/back-on-centre-line' // A port on the plane of symmetry cannot be turned back: leave `back` out.
  | 'ports/beyond-part' // A port runs to the end of the part or past it: leave land at either end.
  | 'ports/blowdown-in-class' // The blowdown angle is unusual for the speed: see the openings of exhaust and transfer.
  | 'ports/blowdown-time' // The blowdown is short in time at this speed: open the exhaust earlier, or turn slower.
  | 'ports/boost-after-main' // A boost port opens before the main transfers: let it open with them or after.
  | 'ports/boost-rise' // A boost stream rises too little: draw it steeper.
  | 'ports/bridge-too-wide' // The bridges leave no window: draw them narrower, or the port wider.
  | 'ports/clearance-not-checked' // A body by the cutter is not measured, so no clearance to it is known: measure it into the shop file.
  | 'ports/clocking-error' // The datum brings azimuth 0 back too coarsely: cut it wider or further out, or keep one clamping.
  | 'ports/corner-in-cutter-plane' // A straight cut has its corners in the cutter's plane: write `corner: {cut: …}`.
  | 'ports/corner-near-cutter' // The cutter nearly fills the corner and chatters: draw a larger corner, or slow the feed there.
  | 'ports/corner-too-large' // The corners meet before the edges end: draw smaller ones.
  | 'ports/corner-too-tight' // No cutter on hand turns in the corner: get a smaller one, or draw a larger corner.
  | 'ports/cutter-too-short' // No cutter that reaches the corners reaches through the wall: get a longer one, or draw a larger corner.
  | 'ports/duration-as-drawn' // A duration does not go with its opening: correct one of the two.
  | 'ports/edge-falls-away' // A straight cut opens at one point, not along its edge: cut it level, or let it rise less.
  | 'ports/edge-outside-stroke' // An edge lies where no piston passes it: give the opening in degrees after top dead centre.
  | 'ports/edges-crossed' // The bottom edge does not lie below the top edge: correct one of them.
  | 'ports/exhaust-before-transfer' // The exhaust does not open before the transfers: correct the openings.
  | 'ports/exhaust-width' // The exhaust is wide for the rings: draw it narrower, or with a bridge.
  | 'ports/far-wall-strike' // The cutter strikes the other side of the bore: draw the port flatter, or shorten the plunge.
  | 'ports/fixture-not-measured' // Settings stand on built-in figures of the fixture: measure it into the shop file before a program is written.
  | 'ports/floor-at-bottom' // The floor of a port is not level with the crown at bottom dead centre: move the bottom edge.
  | 'ports/free-port' // The skirt opens the exhaust to the crankcase at top dead centre: lengthen it, or lower the port.
  | 'ports/grip-on-port' // The jaws stand over a port: hold the other end, or leave a stub.
  | 'ports/holder-clearance' // Shank, holder or head comes too near the part or the fixture: let the tool stick out more, or turn the part round.
  | 'ports/inlet-masked' // The skirt does not leave the inlet open as it should: move its edges.
  | 'ports/knife-edge' // The wall of a port runs out to a knife edge: turn it back less, or draw it narrower.
  | 'ports/land-to-flange' // A window comes too near the flange: lower it, or draw it flatter.
  | 'ports/land-to-groove' // A window comes too near a groove: move one of them.
  | 'ports/linkage-locks' // The rod cannot carry the stroke past a quarter turn: give it from centre to centre.
  | 'ports/main-rise' // Main streams rise steeply: draw them flatter.
  | 'ports/misses-bore' // A port does not come into the bore with its whole width: turn it back less, or draw it narrower.
  | 'ports/misses-outside' // A port does not come out of the outside: draw it flatter or narrower.
  | 'ports/no-bore' // There is no bore at the depth of a port: correct its edges.
  | 'ports/no-drill' // No drill on hand makes the entry hole: list one of that size.
  | 'ports/no-end-mill' // The works has no end mill: list one.
  | 'ports/no-engine' // An opening in crank degrees needs an engine: give it, or the depth in mm.
  | 'ports/no-entry' // There is no room for the entry hole that the cutter needs: use a smaller cutter, or widen the window.
  | 'ports/no-timing-datum' // Nothing on the part brings azimuth 0 back, so each piece stays clamped: a flat, notch or hole would save time.
  | 'ports/offset-symmetry' // With a pin offset the openings are not even about bottom dead centre: reckon with both ends.
  | 'ports/pair-symmetry' // The two of a pair differ: draw them alike.
  | 'ports/place-open' // Clocking, rotary and Y together may set a port off round the bore by more than is inspected: take a better datum, or one clamping.
  | 'ports/porting-share' // The windows take too much of the bore's round: draw them narrower.
  | 'ports/reaches-flange' // A port breaks out into the flange: lower it, or draw it flatter.
  | 'ports/ring-corner' // Corners of the exhaust are tight for the rings: draw larger ones.
  | 'ports/ring-crosses-bridge' // Rings run over a bridge that bows when hot: relieve the bridge in the bore.
  | 'ports/ring-peg' // The ends of a ring pass a window: move the peg or the window.
  | 'ports/rotary-limits' // The rotary does not go that far: turn the part round, or clock azimuth 0 elsewhere.
  | 'ports/short-circuit' // A stream is aimed at the exhaust: turn it back more.
  | 'ports/shoulder-clearance' // The shank comes near the flange: take a longer cutter, or lower the port.
  | 'ports/short-grip' // The jaws hold too little to mill the ports: hold more, or by the other end.
  | 'ports/streams-meet' // The streams of a pair do not meet: turn them back less, if they should.
  | 'ports/thin-land' // The wall between two windows is thin: move them apart, or draw them narrower.
  | 'ports/thin-wall' // The wall of the liner at the ports is thin: draw the outside larger.
  | 'ports/tilt-limits' // The fixture does not tilt that far: turn the part round, or draw the port flatter.
  | 'ports/tilting-clearance' // While it tilts the fixture comes near the tool: take the tool out before every change of tilt.
  | 'ports/timing-in-class' // An opening is unusual for the speed of the engine: see whether it is a slip of the pen.
  | 'ports/to-get' // The works has no such cutter: buy or borrow the one that is named, and list it in the shop file.
  | 'ports/too-steep' // A stream runs along the wall: let it rise less.
  | 'ports/transfer-near-exhaust' // A transfer lies close to the exhaust: move it away.
  | 'ports/transfer-width' // A transfer is wide for the rings: draw it narrower.
  | 'ports/trapped-ratio' // The compression above the exhaust's edge is unusual: see the opening and the head.
  | 'ports/two-bore-bands' // A port runs over two bores: keep it in one.
  | 'ports/two-outside-bands' // A port breaks out into two bands of the outside: lower it, or draw it flatter.
  | 'ports/wider-than-bore' // A port is wider than the bore: draw it narrower.
  | 'ports/windows-overlap' // Two windows run into each other: move them apart.

/** Cutters, speeds, feeds, grinding and honing: src/cutting. */
type CuttingCode =
  | 'cutting/bar-bends' // The boring bar gives way by much of the tolerance: take a thicker or carbide one, or a lighter last cut.
  | 'cutting/bar-overhang' // The boring bar stands out too far: take carbide, or bore from both ends.
  | 'cutting/burn-screen' // Grinding comes near what burns: less infeed, a faster work speed, a sharper wheel, more coolant.
  | 'cutting/chip-too-thin' // The chip is thinner than the edge is round: draw a larger corner for a larger cutter.
  | 'cutting/cutter-bends' // The cutter bends by too much of the edge's tolerance: take a shorter or thicker one.
  | 'cutting/from-both-ends' // No tool goes through from one end: turn the part round, and clock it true by what was cut first.
  | 'cutting/grip-too-light' // The jaws may not hold against the cut: press more, grip more, or carry the free end.
  | 'cutting/hardness-missing' // The hardness of the bar is not given and speeds hang on it: write it.
  | 'cutting/jaws-bend-wall' // Jaws that hold bend the wall out of round: hold it right round or endwise, or cut lighter.
  | 'cutting/lap-leaves-more' // No lap leaves so fine a finish: ask for what it leaves.
  | 'cutting/no-boring-bar' // No boring bar on hand goes in and reaches: list one.
  | 'cutting/no-data' // The handbook has no cutting data of this material: take a grade or a hardness that it has.
  | 'cutting/no-drill' // No drill on hand makes the hole that is bored: list one.
  | 'cutting/no-hone' // No hone on hand suits the bore: list one.
  | 'cutting/no-lap' // No lap on hand suits the pin: make one as the note says, or list one.
  | 'cutting/no-groove-tool' // No insert cuts a groove as narrow and deep as drawn: draw it wider or shallower.
  | 'cutting/no-tool' // The works has no turning tool: list one.
  | 'cutting/no-wheel' // No wheel on hand goes into the bore: list one.
  | 'cutting/port-at-reversal' // The wheel turns back over a port: set the reversal clear of it.
  | 'cutting/quill-overhang' // The quill is too short or too slender: take a thicker or carbide one, or grind from both ends.
  | 'cutting/slow-cutter' // The spindle is too slow for the cutter: use a faster spindle or a larger cutter, not more feed.
  | 'cutting/stones-and-ports' // The stones are short for the belt of ports and tip in: list longer ones.
  | 'cutting/stones-leave-more' // No stones on hand leave so fine a finish: list finer ones.
  | 'cutting/to-get' // The works has no such tool: buy or borrow the one that is named, and list it in the shop file.
  | 'cutting/too-fine-to-turn' // The roughness asks for a feed at which the tool rubs: take a larger nose, or grind.
  | 'cutting/too-hard-to-cut' // The bar is too hard for small end mills: buy it softer.
  | 'cutting/wheel-and-bore' // The wheel is too large or too small for the bore: mount one of the size that is named.
  | 'cutting/wheel-and-ports' // The wheel is narrow for the ports and dips in: mount a wider one, or spark out longer.

/** Start quantity and bar: src/batch. */
type BatchCode =
  | 'batch/bar-too-short' // A bar gives no blank: set a longer bar length in the shop file.
  | 'batch/hardness-for-section' // Bar of that section is not delivered so hard or so soft: agree it with the supplier.
  | 'batch/no-bar' // No bar is large enough: plan from another blank by hand, or change the grade.
  | 'batch/one-heat' // The blanks take several bars: buy all of one heat.
  | 'batch/one-load' // One furnace load holds the whole batch: harden in two where the delivery cannot wait.
  | 'batch/yield-too-low' // Too few pieces come out good: split the batch, or better the worst operation.

/** Gauges and samples: src/inspection. */
type InspectionCode =
  | 'inspection/mirror-bore' // The bore is asked so smooth that it holds little oil: ask for a plateau.
  | 'inspection/narrow-acceptance' // The gauge leaves little of the tolerance to accept: take a finer one.
  | 'inspection/no-gauge' // No gauge of the works can judge a size: add a finer one, or have it measured outside.
  | 'inspection/roughness-out-of-reach' // The last process does not leave so fine a finish: ask for what it leaves, or add a finer one.
  | 'inspection/to-get' // The works has no gauge that can judge it: buy, borrow or hire the one that is named.

/** What came back measured: src/record. */
type ResultsCode =
  | 'results/all-alike' // All readings of a column are one value: see whether they were read one by one.
  | 'results/deviation' // A deviation stands where the full size is due: write the size.
  | 'results/exchanged' // Two pieces stand off to opposite sides, and exchanging their later sizes puts both right: read their numbers again.
  | 'results/far-off' // A size is far from its limits: see the unit and the piece, and measure again.
  | 'results/measure-again' // One value stands off from the others: measure again; both results stay in the book.
  | 'results/missing' // Fewer pieces are measured than the plan asks: measure the rest, or say why not.
  | 'results/moved-on' // The part, shop or batch file is no longer what the plan was issued from: pieces are judged by the plan as issued.
  | 'results/no-operation' // Nobody says which operation left a size so: add it.
  | 'results/no-partner' // A piece was measured after hardening and not before, or the other way round: it teaches nothing about growth.
  | 'results/no-temperature' // A fine tolerance was read and no temperature is given: add it.
  | 'results/other-batch' // The results are of another part or batch: give the plan that they belong to.
  | 'results/other-revision' // The results name another revision than the plan as issued: see which drawing the pieces have.
  | 'results/too-early' // A measurement is dated before the plan was issued: correct the date.
  | 'results/too-fine' // A reading has more places than its gauge: say which gauge was used.
  | 'results/too-warm' // A fine tolerance was read too warm, or part and gauge apart: let them soak and measure again.
  | 'results/twice' // One place of one piece stands twice: delete one, or both count.
  | 'results/unknown-feature' // Something was measured that the plan does not measure there: take one of its names.
  | 'results/unknown-gauge' // The shop file has no such gauge: write its name as there, or its uncertainty.
  | 'results/unknown-operation' // The plan has no operation of that number: take one of its own.
  | 'results/unknown-serial' // The batch has no such piece: correct the number.

/** Engine trials: src/trial, src/part. */
type TrialCode =
  | 'trial/air' // The air is not read, or moved more than a correction is good for: read it at every run, and run in one sitting.
  | 'trial/bare-budget' // Nothing but the spread of fittings is in the budget: add what else may have moved power.
  | 'trial/doubtful' // Something speaks against a run, which counts all the same: see the result without such runs, and run them again.
  | 'trial/drift' // The order run does not keep a drift of the engine out of the difference: fit in the order that the plan gives.
  | 'trial/extended' // More fittings were run than were settled beforehand: say so wherever the result is told.
  | 'trial/fitting' // The number, liner or block of a fitting does not go with the other runs: correct it.
  | 'trial/load' // The load did not stay the same, or its law does not hold: see what is named.
  | 'trial/order' // The order is not one of the liners, or was not kept: correct it, the order run is what counts.
  | 'trial/run-in' // The liners were not run in alike: run the newer in first, bedding-in is no drift of the engine.
  | 'trial/time' // A run is earlier than the one before it: write the runs in their order.
  | 'trial/too-few' // There are too few fittings to tell anything: fit every liner at least twice.
