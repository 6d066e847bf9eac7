/** A grey, 0 black to 1 white, as SVG and PDF write a colour. */
export function tone(grey: number): string {
  const level = Math.round(Math.min(1, Math.max(0, grey)) * 255)
    .toString(16)
    .padStart(2, '0')
  return `#${level}${level}${level}`
}
