/**
 * The planning half of the library: reads, plans, draws and writes programs from text to text. It knows no file, no clock and
 * no process, so that it runs wherever the language does; `linerwright/browser` is this alone, in one file.
 */

export type { Batch, BatchRequest } from './batch/batch.ts'
export { jsonText } from './commands/json.ts'
export type { Units } from './figures.ts'
export { byPlace, type Finding, hasErrors, type Place, printed as printedFinding, type Severity } from './finding.ts'
export type { FindingCode } from './finding-code.ts'
export { type NcProgram, ncPrograms } from './nc/nc-programs.ts'
export type { Part, PartKind } from './part/part.ts'
export { partTemplate } from './part/part-template.ts'
export { type BatchFile, type ReadBatch, readBatch } from './part/read-batch.ts'
export { type ReadPart, readPart } from './part/read-part.ts'
export { type ReadShop, readShop } from './part/read-shop.ts'
export { drawPictures } from './pictures/draw-pictures.ts'
export { measureText } from './pictures/measure-text.ts'
export type { Mark, Measure, Picture } from './pictures/picture.ts'
export { pictureSvg, type SvgOptions } from './pictures/picture-svg.ts'
export { type Issue, makePlan, type Planned, type PlanRequest } from './plan/make-plan.ts'
export type { Plan, PlannedOperation } from './plan/plan.ts'
export { BUILT_IN_SHOP } from './shop/built-in-shop.ts'
export type { Shop } from './shop/shop.ts'
export type { Working } from './working.ts'
