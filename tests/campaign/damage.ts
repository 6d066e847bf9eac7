import type { Random } from './random.ts'

const SIGNS: readonly string[] = [
  ...['{', '}', '[', ']', ',', ':', '#', '&', '*', '!', '|', '>', "'", '"', '%', '@', '`', '-', '?', '~', '\\'],
  ...[
    '\t',
    '\n',
    '\r',
    ' ',
    '  ',
    '\u0000',
    '\ufeff',
    '\u2028',
    '---\n',
    '...\n',
    '%YAML 1.1\n',
    '&a ',
    '*a ',
    '<<: ',
    '!!int ',
    '±',
    'é',
    '🔧',
  ],
]

/** The text of a file with slips of the keyboard in it, or cut off, or with lines out of their order. */
export function damaged(random: Random, text: string): string {
  let result = text
  for (let slips = random.whole(1, 3); slips > 0; slips--) result = slip(random, result)
  return result
}

function slip(random: Random, text: string): string {
  const at = random.whole(0, text.length)
  const lines = text.split('\n')
  const line = random.whole(0, lines.length - 1)
  switch (
    random.pick([
      'insert',
      'insert',
      'insert',
      'remove',
      'cut',
      'drop line',
      'repeat line',
      'move line',
      'indent',
      'nest',
      'bytes',
    ])
  ) {
    case 'insert':
      return text.slice(0, at) + (random.any(SIGNS) ?? '') + text.slice(at)
    case 'remove':
      return text.slice(0, at) + text.slice(at + random.whole(1, 4))
    case 'cut':
      return text.slice(0, at)
    case 'drop line':
      return lines.toSpliced(line, 1).join('\n')
    case 'repeat line':
      return lines.toSpliced(line, 0, lines[line] ?? '').join('\n')
    case 'move line':
      return lines
        .toSpliced(line, 1)
        .toSpliced(random.whole(0, lines.length - 1), 0, lines[line] ?? '')
        .join('\n')
    case 'indent':
      return lines.with(line, ' '.repeat(random.whole(1, 5)) + (lines[line] ?? '')).join('\n')
    case 'nest':
      return text.slice(0, at) + '['.repeat(random.whole(1, 2000)) + text.slice(at)
    default:
      return text.slice(0, at) + String.fromCodePoint(random.whole(0, 0xd7ff)) + text.slice(at)
  }
}
