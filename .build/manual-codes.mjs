// The codes of findings by area, from the file that lists them with what each means.

/** One block an area: what is said of it, and its codes with their sentences. */
export function codesByArea(source) {
  const blocks = [...source.matchAll(/\/\*\* ([^*]*?): [^*]*\*\/\ntype \w+ =([^\n]*(?:\n {2}\|[^\n]*)*)/g)]
  const areas = blocks.map(([, said, listed]) => {
    const codes = codesIn(listed).map(({ code, sentence }) => `- \`${code}\`: ${sentence}`)
    return `**${said.trim()}.**\n\n${codes.join('\n')}\n`
  })
  return `## Codes of findings

A code once released keeps its meaning. What is found, the limit and what to do stand in the finding itself.

${areas.join('\n')}`
}

/** Every code of a list, with the sentence beside it: empty where it has none. */
const codesIn = listed =>
  [...listed.matchAll(/'([a-z]+\/[a-z-]+)'(?: \/\/ (.*))?/g)].map(([, code, sentence = '']) => ({ code, sentence }))
