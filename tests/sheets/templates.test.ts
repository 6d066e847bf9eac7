import Handlebars from 'handlebars'
import { describe, expect, it } from 'vitest'
import { textOf } from '../../src/sheets/markup.ts'
import { openTemplates } from '../../src/sheets/render-template.ts'
import { resultsSets } from '../../src/sheets/results-paper.ts'
import { packetSets } from '../../src/sheets/sets.ts'
import { TemplateProblem } from '../../src/sheets/template.ts'
import { readTemplate } from '../../src/sheets/template-syntax.ts'
import { paperFigures } from '../../src/sheets/views/paper-figures.ts'
import { demoPictures, demoPlan, templates } from './demo-packet.ts'
import { demoResults } from './demo-results.ts'

const plan = demoPlan()
const figures = paperFigures('mm')
const sheets = [
  ...packetSets(plan, [...demoPictures(plan).keys()], figures),
  ...resultsSets(demoResults('turned', 'milled', 'nitrided'), figures, 'mm'),
  ...resultsSets(demoResults('turned', 'nitrided', 'honed'), figures, 'mm'),
].flatMap(({ sheets }) => sheets)

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
  it.each([...templates])('%s asks only for what its sheet has', (name, { text: source }) => {
    const views = sheets.filter(({ template }) => template === name).map(({ view }) => view)
    expect(views.length).toBeGreaterThan(0)
    expect(unknownPaths(source, views)).toEqual([])
  })

  it.each([...templates])("%s is read as the works' own are", (_, template) => {
    expect(() => readTemplate(template)).not.toThrow()
  })
})

describe('a template of the works', () => {
  const fill = (text: string, view = {}) => openTemplates(new Map([['own', { file: 'own.hbs', text }]]))('own', view)
  const view = { holding: 'by the seat', rows: [{ size: '48' }], picture: 'map', code: 'OX-1' }
  const deep = (open: string, close: string, times: number) => open.repeat(times) + close.repeat(times)

  it.each([
    ['a name that the sheet lacks', '<p>\n{{holdng}}</p>', '2:3', 'asks for view.holdng'],
    ['a name that the sheet lacks, in a question', '{{#if holdng}}<p>x</p>{{/if}}', '1:7', 'asks for view.holdng'],
    ['a name that the sheet lacks, in a list', '{{#each holdng}}<p>x</p>{{/each}}', '1:9', 'asks for view.holdng'],
    ['a name that a row lacks', '{{#each rows}}<p>{{sise}}</p>{{/each}}', '1:20', 'asks for view.rows.0.sise'],
    ['a name of the language', '<p>{{constructor}}</p>', '1:6', 'asks for view.constructor'],
    ['a name under the language', '<p>{{__proto__}}</p>', '1:6', 'asks for view.__proto__'],
    ['a list printed as a text', '<p>{{rows}}</p>', '', 'prints view.rows'],
    ['a group printed as a text', '<p>{{this}}</p>', '', 'prints view'],
    ['logic', '<p>x</p>\n  {{#unless holding}}<p>x</p>{{/unless}}', '2:3', 'nothing else in braces'],
    ['a helper that is not there', '<p>{{upper holding}}</p>', '1:4', 'nothing else in braces'],
    ['a helper within a question', '{{#if (eq holding "x")}}<p>x</p>{{/if}}', '1:1', '{{#if}} takes one name'],
    ['a question of two names', '{{#if holding rows}}<p>x</p>{{/if}}', '1:1', '{{#if}} takes one name'],
    ['a question of none', '{{#if}}<p>x</p>{{/if}}', '1:1', '{{#if}} takes one name'],
    ['a list with a name for its rows', '{{#each rows as |row|}}<p>x</p>{{/each}}', '1:1', '{{#each}} takes one name'],
    ['a number of its own', '<p>{{5}}</p>', '1:4', 'nothing else in braces'],
    ['a text of its own', '<p>{{"x"}}</p>', '1:4', 'nothing else in braces'],
    ['the number of a row', '{{#each rows}}<p>{{@index}}</p>{{/each}}', '1:18', 'nothing else in braces'],
    ['the root', '<p>{{@root.holding}}</p>', '1:4', 'nothing else in braces'],
    ['a template within', '{{> other}}', '1:1', 'nothing else in braces'],
    ['a block template within', '{{#> other}}x{{/other}}', '1:1', 'nothing else in braces'],
    ['a template of its own', '{{#*inline "x"}}<p>x</p>{{/inline}}', '1:1', 'nothing else in braces'],
    ['a decorator', '{{* mark}}', '1:1', 'nothing else in braces'],
    ['text that is not escaped', '<p>{{{holding}}}</p>', '1:4', 'text must be escaped'],
    ['text that is not escaped, with &', '<p>{{& holding}}</p>', '1:4', 'text must be escaped'],
    ['text that is not escaped, behind a tilde', '<p>{{~{holding}~}}</p>', '1:4', 'text must be escaped'],
    ['text that is not escaped, with & behind a tilde', '<p>{{~& holding}}</p>', '1:4', 'text must be escaped'],
    ['braces that are not closed', '<p>{{holding</p>', '1:1', 'its braces do not fit together'],
    ['a block that is not closed', '{{#if holding}}<p>x</p>', '1:1', 'never closed'],
    ['a block closed by another', '{{#if holding}}\n<p>x</p>{{/each}}', '1:4', '{{#if}} is closed by {{/each}}'],
    ['a close of nothing', '<p>x</p>{{/if}}', '1:1', 'its braces do not fit together'],
    ['blocks in blocks without end', deep('{{#if holding}}', '{{/if}}', 3000), '', ''],
    ['a file that is no template', '<p>x</p>'.repeat(20_000), '', 'at most 100000 are read'],
    ['an element outside the subset', '<p>x</p>\n  <script>x</script>', '2:3', '<script> is outside the markup'],
    ['an element in capitals', '<P>x</P>', '1:1', '<P> is outside the markup'],
    ['an element that is not closed', '<div>\n<p>{{holding}}\n</div>', '2:1', '<p> is not closed'],
    ['an element that cannot stand there', '<p>\n\n<table></table></p>', '3:1', '<table> cannot stand in <p>'],
    ['elements without end', deep('<div>', '</div>', 200), '1:251', 'nested too deeply'],
    ['text where none is shown', '<table>\nlost</table>', '1:1', 'the text "lost" cannot stand in <table>'],
    [
      'a word that no line and no column holds',
      `<p>a</p><p>${'x'.repeat(1500)}</p>`,
      '1:9',
      'a word of more than 1000',
    ],
    ['a class that no style knows', '<p>x</p><p class="blue">x</p>', '1:9', 'class "blue" of <p> is unknown'],
    ['a style with an address', '<p style="background:url(x)">x</p>', '1:1', 'style "background:url(x)"'],
    ['a width beyond any page', '<div style="min-height:99999mm"></div>', '1:1', 'style "min-height:99999mm"'],
    ['a cell over more columns than there are', '<p colspan="999999">x</p>', '1:1', 'colspan "999999"'],
    ['an attribute that acts', '<p onclick="x">x</p>', '1:1', 'attribute onclick of <p> is unknown'],
    ['a picture that no packet has', '<p>x</p>\n<figure data-picture="mpa"/>', '2:1', 'data-picture "mpa"'],
    ['a code of another kind', '<figure data-code="qr" data-text="{{code}}"/>', '1:1', 'data-code "qr"'],
    ['a figure of nothing', '<figure/>', '1:1', '<figure> has neither data-picture nor data-text'],
    ['a processing instruction', '<?php x ?>', '', '<?php> is outside the markup'],
    ['a section of raw text', '<p><![CDATA[ <b> ]]></p>', '1:1', 'CDATA'],
  ])('is refused for %s, with file and place', (_, text, place, why) => {
    let problem: unknown
    try {
      fill(text, view)
    } catch (error) {
      problem = error
    }
    expect(problem).toBeInstanceOf(TemplateProblem)
    const { message } = problem as TemplateProblem
    expect(message).toContain(why)
    expect(message.startsWith(place === '' ? 'own.hbs' : `own.hbs:${place}: `)).toBe(true)
    expect(message.length).toBeLessThan(300)
  })

  it('is filled in with marks of markup escaped', () => {
    const [paragraph] = fill('<p>{{holding}}</p>', { holding: '<b>' })
    expect(paragraph && textOf(paragraph)).toBe('<b>')
  })

  it('may say all that ours say, comments and other branches too', () => {
    const text =
      '{{! ours }}{{!-- {{x}} --}}<!-- too -->{{#if holding}}<p>a</p>{{else if code}}<p>b</p>{{else}}<p>c</p>{{/if}}'
    expect(fill(text, { ...view, holding: '' }).map(textOf)).toEqual(['b'])
  })
})
