// Writes src/commands/MANUAL.md (the help of every command with a short real output, the keys of the files from their schemas,
// the library, the codes of findings) and the real output in README.md: `npm run manual`. With --tables, what does not come
// from running the command goes to standard output.
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { codesByArea } from './manual-codes.mjs'
import { keysOf, toolsByKind } from './manual-keys.mjs'
import { HEAD, LIBRARY, PART_FILE, SHOP_FILE } from './manual-text.mjs'

const MANUAL = 'src/commands/MANUAL.md'
const PART = 'parts/OX-098-21.yaml'
const BATCH = '--batch parts/batch-2631.yaml'

/** What --svg of ports draws, beside the port map that README.md has. */
const PICTURES = `
![Streams of the demo liner's ports in plan](../../out/sample/plan-view.svg)
![Uncovered area of its ports against the crank angle](../../out/sample/areas.svg)
`

/** Of every command, what is run for its sample, and how many lines of it are shown. */
const SAMPLES = {
  new: ['new sleeve my-sleeve.yaml', 4],
  check: [`check parts/OX-112-03.yaml parts/OX-131-07.yaml`, 8],
  route: [`route ${PART} --operation 110`, 16],
  stock: [`stock ${PART} --sweep stock.bore=0.10:0.40:0.04`, 14],
  ports: [`ports ${PART}`, 17],
  plan: ['plan parts/OX-112-03.yaml', 20],
  workings: [`workings ${PART} --operation 130`, 14],
  traveller: [`traveller parts/OX-112-03.yaml ${BATCH}`, 8],
  subcontract: [`subcontract ${PART} --operation 90 ${BATCH}`, 8],
  quote: [`quote ${PART} --quantity 6,12,24 --start 2026-12-07 ${BATCH}`, 60],
  record: [`record parts/OX-112-03.yaml ${BATCH}`, 8],
  compare: [`compare ${PART} parts/revision-C/OX-098-21.yaml ${BATCH}`, 30],
  trial: ['trial parts/trial-2655.yaml', 20],
}

const run = words => {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['dist/main.cjs', ...words], { encoding: 'utf8' })
  if (status !== 0) throw new Error(`${words.join(' ')} ends with ${status}: ${stderr}`)
  return stdout
}

/** The first lines of what a command prints. Findings beside the result are left out: `check` shows what they look like. */
function sample(line, most, desk) {
  const words = line.replace('my-sleeve.yaml', join(desk, 'my-sleeve.yaml')).split(' ')
  const paper = ['traveller', 'subcontract', 'record'].includes(words[0]) ? ['--out', join(desk, 'out')] : []
  const dated = ['new', 'trial'].includes(words[0]) ? [] : ['--date', '2026-11-25']
  const lines = run([...words, ...paper, ...dated])
    .replaceAll(`${desk}/`, '')
    .trimEnd()
    .split('\n')
  const shown = lines.length > most ? [...lines.slice(0, most), '…'] : lines
  return `\`\`\`console\n$ linerwright ${line}\n${shown.join('\n')}\n\`\`\`\n`
}

const schemaOf = name => JSON.parse(readFileSync(`src/part/${name}.schema.json`, 'utf8'))

function tables() {
  const shop = schemaOf('shop')
  return `## The part file

${PART_FILE}${keysOf(schemaOf('part'))}
## The shop file

${SHOP_FILE}${keysOf(shop)}
Every tool has a \`name\` and a \`kind\`, and what its kind needs:

${toolsByKind(shop)}
## The batch file

${keysOf(schemaOf('batch'))}
## The bench file

A liner as it was measured, for \`ports --measured\`. Ports go by the names of the part file.

${keysOf(schemaOf('bench'))}
## The results file

What was measured of a batch, for \`record\`. A list in CSV has one reading a line, and in its first line the names of its columns:
\`part,revision,batch,serial,operation,feature,depth,direction,value,unit,gauge,gauge-id,temperature,date,by,note\`; needed are
\`serial\`, \`feature\` and \`value\`. A tray of pistons has \`serial\` and \`size\`, and may have \`wants\`, \`grade\`, \`ring-gap\` and \`master\`.

${keysOf(schemaOf('results'))}
## The trial file

Runs of two or three liners in one engine, for \`trial\`. It is begun before the first run: what would matter, how often each liner is
fitted and in which order are settled then. One line a run, in the order in which they were made.

${keysOf(schemaOf('trial'))}
${LIBRARY}
${codesByArea(readFileSync('src/finding-code.ts', 'utf8'))}`
}

function commands() {
  const desk = mkdtempSync(join(tmpdir(), 'manual-'))
  try {
    return Object.entries(SAMPLES)
      .map(
        ([name, [line, most]]) =>
          `### ${name}\n\n\`\`\`text\n${run([name, '--help'])}\`\`\`\n\n${sample(line, most, desk)}${name === 'ports' ? PICTURES : ''}`,
      )
      .join('\n')
  } finally {
    rmSync(desk, { recursive: true, force: true })
  }
}

/**
 * The blocks of README.md that begin with `$ npx linerwright`, run one after the other on one desk. A comment
 * `<!-- edit: one => other -->` before a block changes the file as somebody would who follows it.
 */
function readme() {
  const desk = mkdtempSync(join(tmpdir(), 'readme-'))
  const file = join(desk, 'my-liner.yaml')
  const command = join(process.cwd(), 'dist/main.cjs')
  const PIECES = /<!-- edit: (.*?) => (.*?) -->|```console\n\$ npx linerwright ([^\n]*)\n[^`]*```/g
  try {
    return readFileSync('README.md', 'utf8').replace(PIECES, (whole, from, to, line) => {
      if (line === undefined) {
        writeFileSync(file, readFileSync(file, 'utf8').replace(from, to))
        return whole
      }
      const { stdout } = spawnSync(process.execPath, [command, ...line.split(' ')], { encoding: 'utf8', cwd: desk })
      const lines = stdout.trimEnd().split('\n')
      const shown = lines.length > 8 ? [...lines.slice(0, 5), '…', ...lines.slice(-1)] : lines
      return `\`\`\`console\n$ npx linerwright ${line}\n${shown.join('\n')}\n\`\`\``
    })
  } finally {
    rmSync(desk, { recursive: true, force: true })
  }
}

if (process.argv[2] === '--tables') process.stdout.write(tables())
else {
  execFileSync(process.execPath, ['.build/bundle.mjs'])
  writeFileSync(MANUAL, `${HEAD}${commands()}\n${tables()}`)
  writeFileSync('README.md', readme())
}
