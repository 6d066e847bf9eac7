// Times the program against floors measured in the same run: an empty Node start, and raw pdfkit drawing as many text runs,
// lines and pages as the packet has. The least of each, since whatever else the machine does only adds to a time, and their ratios
// beside what is aimed at: absolute times are this machine's own.
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { create } from 'fontkit'
import PDFDocument from 'pdfkit'
import { bundled } from './bundled.mjs'
import { nineWindows } from './nine-windows.mjs'
import { packetPages } from './packet-pages.mjs'

const root = fileURLToPath(new URL('../../', import.meta.url))
process.chdir(root)
const desk = mkdtempSync(join(root, 'node_modules/.bench-'))
const least = values => Math.min(...values)

/** Two commands in turn, so that a drift of the machine meets both. Least wall time of each, ms. */
function shellTimes(commands, runs) {
  const times = commands.map(() => [])
  for (let run = -1; run < runs; run++) {
    commands.forEach((argv, i) => {
      const start = process.hrtime.bigint()
      execFileSync(process.execPath, argv, { stdio: ['ignore', 'ignore', 'ignore'] })
      if (run >= 0) times[i].push(Number(process.hrtime.bigint() - start) / 1e6)
    })
  }
  return times.map(least)
}

async function warmTime(work, runs) {
  const times = []
  for (let run = -5; run < runs; run++) {
    const start = performance.now()
    await work(run)
    if (run >= 0) times.push(performance.now() - start)
  }
  return least(times)
}

/** Several works in turn, so that a drift of the machine meets all of them. Least of each, ms. */
async function inTurn(works, rounds) {
  const times = works.map(() => [])
  for (let round = -3; round < rounds; round++) {
    for (const [i, work] of works.entries()) {
      const start = performance.now()
      await work()
      if (round >= 0) times[i].push(performance.now() - start)
    }
  }
  return times.map(least)
}

/** The floor of the packet: in as many documents the same runs, as many shapes of as many segments, and the same pages, by pdfkit's plainest calls. */
const rawPdfs = async (documents, faces) => {
  for (const pages of documents) await rawPdf(pages, faces)
}

function rawPdf(pages, faces) {
  return new Promise(resolve => {
    const pdf = new PDFDocument({ margin: 0, autoFirstPage: false, font: null, size: 'A4' })
    let size = 0
    pdf.on('data', chunk => {
      size += chunk.length
    })
    pdf.on('end', () => resolve(size))
    pdf.registerFont('regular', faces.regular).registerFont('bold', faces.bold)
    for (const { texts, shapes } of pages) {
      pdf.addPage()
      for (const [i, text] of texts.entries()) {
        pdf
          .font('regular')
          .fontSize(8)
          .text(text, 40 + (i % 5) * 100, 40 + (i % 70) * 11, { lineBreak: false, baseline: 'alphabetic' })
      }
      for (const [i, segments] of shapes.entries()) {
        pdf.moveTo(40, 40 + (i % 700))
        for (let segment = 1; segment <= segments; segment++) pdf.lineTo(40 + segment * 2.5, 40 + (i % 700))
        pdf.stroke()
      }
    }
    pdf.end()
  })
}

try {
  // A script, as the command is.
  const empty = join(desk, 'empty.cjs')
  writeFileSync(empty, '')
  const part = 'parts/OX-098-21.yaml'
  const [start, stock, traveller] = shellTimes(
    [
      [empty],
      ['dist/main.cjs', 'stock', part],
      ['dist/main.cjs', 'traveller', part, '--out', desk, '--date', '2026-11-25', '--force'],
    ],
    11,
  )

  const program = await bundled(root, desk, 'program', [
    './src/part/read-part.ts',
    './src/part/read-shop.ts',
    './src/plan/make-plan.ts',
    './src/sheets/packet.ts',
    './src/sheets/typeface.ts',
    './src/sheets/lay-out-document.ts',
    './src/sheets/render-template.ts',
    './src/commands/paper.ts',
    './src/commands/node-world.ts',
  ])
  const partText = readFileSync(part, 'utf8')
  const shopText = readFileSync('parts/shop.yaml', 'utf8')
  const read = program.readPart(partText, part).part
  const shop = program.readShop(shopText, 'parts/shop.yaml').shop
  const issue = { date: '2026-11-25', fingerprint: '000000000000', program: 'bench' }
  const batch = { number: '2631', quantity: 24 }
  const planOnce = () => program.makePlan({ part: read, shop, batch, issue }).plan
  const planning = await warmTime(planOnce, 50)
  const reading = await warmTime(() => program.readPart(partText, part), 20)

  const windows = await warmTime(await nineWindows(root, desk, shopText), 20)

  const world = program.nodeWorld()
  const options = program.paperOptions({ format: 'pdf', paper: 'a4', units: 'mm' }, world)
  const plan = planOnce()
  const documents = packetPages(program, plan, options)
  const pages = documents.flat()
  const runs = pages.reduce((sum, { texts }) => sum + texts.length, 0)
  const shapes = pages.flatMap(page => page.shapes)
  const segments = shapes.reduce((sum, each) => sum + each, 0)
  const face = name => create(world.readBytes(world.asset(`fonts/${name}.ttf`)))
  const rawFaces = { regular: face('DejaVuSansCondensed'), bold: face('DejaVuSansCondensed-Bold') }
  const packetOnce = async tagged => {
    const fresh = planOnce()
    await program.packet(fresh, { ...options, tagged })
  }
  const [floor, quick, whole] = await inTurn(
    [() => rawPdfs(documents, rawFaces), () => packetOnce(false), () => packetOnce(true)],
    9,
  )

  const ms = value => `${value.toFixed(1)} ms`
  const row = (what, time, over, aim) => {
    const ratio = over ? `${(time / over.time).toFixed(2)} x ${over.name}` : ''
    console.log(
      `${what.padEnd(26)}${ms(time).padStart(10)}   ${ratio.padEnd(24)}${aim ? `aim: at most ${aim}` : ''}`.trimEnd(),
    )
  }
  const anEmptyStart = { name: 'an empty start', time: start }
  const theRawFloor = { name: 'the raw floor', time: floor }
  console.log(
    `packet: ${documents.length} documents, ${pages.length} pages, ${runs} text runs, ${shapes.length} shapes of ${segments} segments\n`,
  )
  row('empty start of Node', start)
  row('stock, from the shell', stock)
  row('  of it, over that start', stock - start, anEmptyStart, 1.2)
  row('traveller, from the shell', traveller, anEmptyStart, 10)
  row('reading, warm', reading, anEmptyStart)
  row('planning, warm', planning, anEmptyStart, 0.4)
  row('nine windows, warm', windows, anEmptyStart, 0.8)
  row('raw pdfkit floor, warm', floor)
  row('plan to PDF, no tags', quick, theRawFloor, 1.8)
  row('plan to PDF, tagged', whole, theRawFloor)
} finally {
  rmSync(desk, { recursive: true, force: true })
}
