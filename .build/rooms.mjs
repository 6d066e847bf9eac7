// Writes the table of rooms (rooms.json) into DEVELOPERS.md; with --print, to standard output.
import { readFileSync, writeFileSync } from 'node:fs'

const { rooms } = JSON.parse(readFileSync(new URL('./rooms.json', import.meta.url), 'utf8'))

const words = names => (names.length === 0 ? 'the ground floor' : names.join(', '))
const face = names => names.map(name => (/^[\w]+$/.test(name) ? `\`${name}\`` : name)).join(' ')

/** One row a room: what it holds, its public functions, what it may import. */
function roomsTable() {
  return [
    '| folder | what it holds | public function | may import | only types of | packages |',
    '|---|---|---|---|---|---|',
    ...rooms.map(
      ({ room, holds, face: names, values, types, packages = [] }) =>
        `| \`src/${room}/\` | ${holds} | ${face(names)} | ${words(values)} | ${types.join(', ')} | ${packages.join(', ')} |`,
    ),
  ].join('\n')
}

if (process.argv[2] === '--print') {
  process.stdout.write(roomsTable())
} else {
  const text = readFileSync('DEVELOPERS.md', 'utf8')
  writeFileSync(
    'DEVELOPERS.md',
    text.replace(/\| folder \|[\s\S]*?\n(?=\n)/, () => `${roomsTable()}\n`),
  )
}
