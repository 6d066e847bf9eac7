// The codes of findings by area, from the file that lists them.

/** One block an area: what is said of it, and its codes. */
export function codesByArea(source) {
  const blocks = [...source.matchAll(/\/\*\* ([^*]*?): [^*]*\*\/\ntype \w+ =([^\n]*(?:\n {2}\|[^\n]*)*)/g)]
  const areas = blocks.map(([, said, listed]) => {
    const codes = [...listed.matchAll(/'([^']+)'/g)].map(([, code]) => `\`${code}\``)
    return `**${said.trim()}.**\n${codes.join(',\n')}\n`
  })
  return `## Codes of findings

A code once released keeps its meaning. What is found, the limit and what to do stand in the finding itself.

${areas.join('\n')}`
}
