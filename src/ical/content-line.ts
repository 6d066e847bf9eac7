/** Octets of a line, its break not counted (RFC 5545, 3.1). */
const LONGEST = 75

/**
 * A content line as it stands in the file: folded where it is too long, never inside a letter, each part as long as it may be;
 * the next begins with one space, which counts. Ends in CRLF.
 */
export function contentLine(line: string): string {
  const parts: string[] = []
  let part = ''
  let octets = 0
  for (const letter of line) {
    const size = new TextEncoder().encode(letter).length
    if (octets + size > LONGEST) {
      parts.push(part)
      part = ' '
      octets = 1
    }
    part += letter
    octets += size
  }
  return `${[...parts, part].join('\r\n')}\r\n`
}

/** A value of type TEXT (RFC 5545, 3.3.11). */
export const asText = (text: string): string => text.replace(/[\\;,]/g, sign => `\\${sign}`).replace(/\r?\n/g, '\\n')
