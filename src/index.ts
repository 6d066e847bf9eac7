/**
 * The library: everything that the command does, as functions of what they are given. Part and shop are text, the plan is
 * plain data, and the paper is bytes; what it is printed with is handed in, or loaded by `linerwright/node`.
 */

export * from './browser.ts'
export { type PacketOptions, packet } from './sheets/packet.ts'
export type { Formats, Printed, PrintOptions } from './sheets/print-document.ts'
export { subcontract } from './sheets/subcontract.ts'
export { type Template, TemplateProblem } from './sheets/template.ts'
export type { Paper } from './sheets/theme.ts'
export { type Fonts, openTypeface, type Typeface } from './sheets/typeface.ts'
