import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { expect, it } from 'vitest'
import { layOutDocument } from '../../src/sheets/lay-out-document.ts'
import * as packets from '../../src/sheets/packet.ts'
import { openTemplates } from '../../src/sheets/render-template.ts'
import { demoPlan, templates, typeface } from '../sheets/demo-packet.ts'

type Page = { readonly texts: readonly string[]; readonly shapes: readonly number[] }
type PacketPages = (program: object, plan: object, options: object) => readonly (readonly Page[])[]

it('the floor of the bench has the documents, pages and words of the packet that is printed', async () => {
  const { packetPages }: { packetPages: PacketPages } = await import(
    new URL('./packet-pages.mjs', import.meta.url).href
  )
  const plan = demoPlan('OX-112-03')
  const formats = { pdf: true, html: false }
  const options = { templates, typeface, formats, paper: 'a4', units: 'mm' } as const
  const timed = packetPages({ ...packets, layOutDocument, openTemplates }, plan, options)
  const { documents } = await packets.packet(plan, options)
  expect(timed).toHaveLength(documents.length)
  for (const [index, { name, pdf }] of documents.entries()) {
    const { numPages } = await getDocument({ data: pdf.slice(), verbosity: 0 }).promise
    expect(timed[index], name).toHaveLength(numPages)
    for (const { texts, shapes } of timed[index] ?? [])
      expect(Math.min(texts.length, shapes.length), name).toBeGreaterThan(0)
  }
})
