// The notices of the packages whose code is in the bundles: name, version, and the whole text of every licence.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** The folders of the packages that these files come from. */
export const packagesOf = files => [
  ...new Set(files.flatMap(file => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0] ?? [])),
]

/** One text for all of them, in the order of their names. A package without a licence text may not be bundled. */
export function noticesOf(folders) {
  const notices = folders.map(folder => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
    const files = readdirSync(folder).filter(file => /^(licen[cs]e|notice|copying)/i.test(file))
    if (files.length === 0) throw new Error(`${folder}: no licence text, so it cannot go into the bundle`)
    const texts = files.toSorted().map(file => readFileSync(join(folder, file), 'utf8').trim())
    return { title: `${name} ${version}${/^SEE /.test(license) ? '' : ` (${license})`}`, texts }
  })
  const byTitle = notices.toSorted((a, b) => (a.title < b.title ? -1 : 1))
  const line = '='.repeat(80)
  return [
    'The files of this folder contain code and typefaces of others, each under its own licence:',
    byTitle.map(({ title }) => `- ${title}`).join('\n'),
    ...byTitle.map(({ title, texts }) => [line, title, line, ...texts].join('\n\n')),
    '',
  ].join('\n\n')
}
