// Puts the real output of every command into README.md: `node .build/readme.mjs`. A block that ends in `…` shows the first lines.
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const LINES = 46
const desk = mkdtempSync(join(tmpdir(), 'readme-'))

const output = command => {
  const argv = command.replace('my-sleeve.yaml', join(desk, 'my-sleeve.yaml')).split(' ').slice(1)
  const run = [
    '-c',
    'node dist/main.cjs "$@" 2>&1 || true',
    'sh',
    ...argv,
    ...(argv[0] === 'new' ? [] : ['--date', '2026-11-25']),
  ]
  const text = execFileSync(
    'sh',
    [...run, ...(argv[0] === 'traveller' || argv[0] === 'subcontract' ? ['--force'] : [])],
    { encoding: 'utf8' },
  )
  const lines = text.replaceAll(`${desk}/`, '').trimEnd().split('\n')
  return (lines.length > LINES ? [...lines.slice(0, LINES), '…'] : lines).join('\n')
}

const readme = readFileSync('README.md', 'utf8')
  .replace(
    /```console\n\$ (.*)\n(?:[^`][\s\S]*?)?```/g,
    (_, command) => `\`\`\`console\n$ ${command}\n${output(command)}\n\`\`\``,
  )
  .replace(
    /<!-- file: (.*) -->\n```yaml\n[\s\S]*?```/g,
    (_, file) => `<!-- file: ${file} -->\n\`\`\`yaml\n${readFileSync(file, 'utf8')}\`\`\``,
  )
writeFileSync('README.md', readme)
