import { expect, it } from 'vitest'
import { nineWindows } from './nine-windows.ts'
import { askedOfPdfkit, rawPdf } from './raw-pdf.ts'
import { works } from './works.ts'

it('the work that the bench times is the work: a map, and a program for every set-up', () => {
  const { map, programs } = nineWindows(works().shop)()
  expect(map.marks.length).toBeGreaterThan(100)
  expect(programs.length).toBeGreaterThan(6)
})

it('the floor asks the writer for what the packet asks for, document by document, page by page', async () => {
  const { paper, faces } = works()
  const pages: number[] = []
  const asked = await askedOfPdfkit(async () => {
    const { documents } = await paper({ tagged: false })
    for (const { pdf } of documents) pages.push(Buffer.from(pdf).toString('latin1').split('/Type /Page\n').length - 1)
  })
  expect(pages.length).toBeGreaterThan(3)
  expect(asked.map(document => document.length)).toEqual(pages)
  expect(asked.flatMap(document => document.flatMap(({ runs }) => runs.map(([, text]) => text)))).toContain('OX-098-21')
  const floor = await askedOfPdfkit(async () => {
    for (const document of asked) await rawPdf(document, faces)
  })
  expect(floor).toEqual(asked)
})
