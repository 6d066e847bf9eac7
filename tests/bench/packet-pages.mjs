// What the packet of a plan has on its pages: for each document its pages, for each page its text runs, and the line segments of
// each shape.

/** Line segments of what is drawn; each bar of a code is a shape of four. */
function segmentsOf(item) {
  if (item.kind === 'bars') return item.bars.rectangles.map(() => 4)
  return item.kind === 'path' ? item.steps.length : item.kind === 'cell' || item.kind === 'circle' ? 4 : 1
}

/** Lays the whole packet out by the same way as it is printed. */
export function packetPages(program, plan, options) {
  const fill = program.openTemplates(options.templates)
  return program
    .documentsOf(plan, options, program.wholePacket(options))
    .filter(({ onPaper }) => onPaper)
    .map(document =>
      program.layOutDocument(document, fill, options.typeface).pages.map(items => {
        const flat = items.flatMap(item => (item.kind === 'picture' ? item.picture.marks : [item]))
        const texts = flat.flatMap(item => (typeof item.text === 'string' ? [item.text] : []))
        return { texts, shapes: flat.filter(item => typeof item.text !== 'string').flatMap(segmentsOf) }
      }),
    )
}
