import Handlebars from 'handlebars'
import { describe, expect, it } from 'vitest'
import { packetSheets } from '../../src/sheets/packet.ts'
import { openTemplates } from '../../src/sheets/render-template.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { demoPictures, demoPlan, templates } from './demo-packet.ts'

const plan = demoPlan()
const sheets = packetSheets(plan, [...demoPictures(plan).keys()], paperFigures('mm'))

/** Every path of a template that none of the values it may meet has, with its line. */
function unknownPaths(source: string, views: readonly unknown[]): readonly string[] {
  const unknown: string[] = []
  const walk = (program: hbs.AST.Program, scopes: readonly (readonly unknown[])[]): void => {
    const values = (expression: hbs.AST.Expression): readonly unknown[] => {
      const { original, depth, parts, loc } = expression as hbs.AST.PathExpression
      const from = scopes[scopes.length - 1 - depth] ?? []
      const found = parts.reduce<readonly unknown[]>(
        (all, part) => all.flatMap(value => (isRecord(value) && Object.hasOwn(value, part) ? [value[part]] : [])),
        from,
      )
      if (from.length > 0 && found.length === 0) unknown.push(`${original}, line ${loc.start.line}`)
      return found
    }
    for (const statement of program.body) {
      if (statement.type === 'MustacheStatement')
        values((statement as hbs.AST.MustacheStatement).path as hbs.AST.Expression)
      if (statement.type !== 'BlockStatement') continue
      const { path, params, program: inner, inverse } = statement as hbs.AST.BlockStatement
      const name = (path as hbs.AST.PathExpression).original
      if (name !== 'each' && name !== 'if') unknown.push(`{{#${name}}} is more logic than a template may hold`)
      const given = params[0] ? values(params[0]) : []
      const within = name === 'each' ? [...scopes, given.flatMap(value => (Array.isArray(value) ? value : []))] : scopes
      walk(inner, within)
      if (inverse) walk(inverse, scopes)
    }
  }
  walk(Handlebars.parse(source), [views])
  return unknown
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null

describe('every template', () => {
  it.each([...templates])('%s asks only for what its sheet has', (name, source) => {
    const views = sheets.filter(({ template }) => template === name).map(({ view }) => view)
    expect(views.length).toBeGreaterThan(0)
    expect(unknownPaths(source, views)).toEqual([])
  })

  it.each([...templates])('%s lets no text through unescaped', (_, source) => {
    expect(source).not.toMatch(/\{\{\{|\{\{&/)
  })
})

describe('a template of the works', () => {
  const fill = (text: string, view = {}) => openTemplates(new Map([['own', text]]))('own', view)

  it.each([
    ['a name that the sheet lacks', '<p>{{holdng}}</p>'],
    ['a name that the sheet lacks, in a question', '{{#if holdng}}<p>x</p>{{/if}}'],
    ['a name that the sheet lacks, in a list', '{{#each holdng}}<p>x</p>{{/each}}'],
    ['logic', '{{#unless holding}}<p>x</p>{{/unless}}'],
    ['text that is not escaped', '<p>{{{holding}}}</p>'],
  ])('is refused for %s, by its name', (_, text) => {
    expect(() => fill(text, { holding: 'by the seat' })).toThrow(/template own: /)
  })

  it('is filled in with marks of markup escaped', () => {
    expect(fill('<p>{{holding}}</p>', { holding: '<b>' })).toBe('<p>&lt;b&gt;</p>')
  })
})
