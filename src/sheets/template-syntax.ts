import Handlebars from 'handlebars'
import { type Spot, type Template, TemplateProblem } from './template.ts'

/** Characters; our own have two or three thousand. */
const LARGEST = 100_000

const ALLOWED = 'a template says {{name}}, {{#if name}} and {{#each name}}, and nothing else in braces'

/** Reads the braces of a template. Names, `if` and `each` alone: whatever could reckon, or let text through as markup, is refused. */
export function readTemplate({ file, text }: Template): hbs.AST.Program {
  if (text.length > LARGEST) throw new TemplateProblem(file, `${text.length} characters; at most ${LARGEST} are read`)
  const program = parsed({ file, text })
  const refuse = (what: string, { loc }: hbs.AST.Node): never => {
    throw new TemplateProblem(file, what, spotOf(loc))
  }
  try {
    holdToNames(program, refuse)
  } catch (error) {
    throw error instanceof TemplateProblem ? error : new TemplateProblem(file, 'its blocks are nested too deeply')
  }
  return program
}

/** Where a template first asks for a field of that name. */
export function firstAskedFor(program: hbs.AST.Program, name: string): Spot | undefined {
  let found: Spot | undefined
  const look = (expression: hbs.AST.Expression): void => {
    if (isPath(expression) && expression.parts.includes(name)) found ??= spotOf(expression.loc)
  }
  eachPath(program, look)
  return found
}

const spotOf = ({ start }: hbs.AST.SourceLocation): Spot => ({ line: start.line, column: start.column + 1 })

function parsed({ file, text }: Template): hbs.AST.Program {
  try {
    return Handlebars.parse(text)
  } catch (error) {
    const { message } = error instanceof Error ? error : { message: String(error) }
    const { lineNumber, column } = Object(error)
    const line = Number(lineNumber ?? /on line (\d+)/.exec(message)?.[1])
    const at = Number.isInteger(line) ? { line, column: Number.isInteger(column) ? column + 1 : 1 } : undefined
    const fitting = /^(\S+) doesn't match (\S+)/.exec(message)
    const what = fitting
      ? `{{#${fitting[1]}}} is closed by {{/${fitting[2]}}}`
      : `its braces do not fit together: ${/got '(\w+)'/.exec(message)?.[1] === 'EOF' ? 'one that is opened is never closed' : ALLOWED}`
    throw new TemplateProblem(file, what, at)
  }
}

type Refuse = (what: string, node: hbs.AST.Node) => never

function holdToNames({ body }: hbs.AST.Program, refuse: Refuse): void {
  for (const statement of body) {
    if (isMustache(statement)) {
      const { path, params, hash, escaped } = statement
      if (!escaped) refuse('text must be escaped, so no {{{ and no {{&', statement)
      if (!isName(path) || params.length > 0 || hash) refuse(ALLOWED, statement)
    } else if (isBlock(statement)) {
      const { path, params, hash, program, inverse } = statement
      const [subject, ...more] = params
      if (path.original !== 'if' && path.original !== 'each') refuse(ALLOWED, statement)
      if (subject === undefined || !isName(subject) || more.length > 0 || hash || program.blockParams) {
        refuse(`{{#${path.original}}} takes one name; ${ALLOWED}`, statement)
      }
      holdToNames(program, refuse)
      if (inverse) holdToNames(inverse, refuse)
    } else if (statement.type !== 'ContentStatement' && statement.type !== 'CommentStatement') {
      refuse(ALLOWED, statement)
    }
  }
}

function eachPath({ body }: hbs.AST.Program, see: (expression: hbs.AST.Expression) => void): void {
  for (const statement of body) {
    if (isMustache(statement)) see(statement.path)
    if (!isBlock(statement)) continue
    for (const param of statement.params) see(param)
    eachPath(statement.program, see)
    if (statement.inverse) eachPath(statement.inverse, see)
  }
}

const isMustache = (node: hbs.AST.Node): node is hbs.AST.MustacheStatement => node.type === 'MustacheStatement'
const isBlock = (node: hbs.AST.Node): node is hbs.AST.BlockStatement => node.type === 'BlockStatement'
const isPath = (node: hbs.AST.Node): node is hbs.AST.PathExpression => node.type === 'PathExpression'
/** `@index` and its like are logic. */
const isName = (node: hbs.AST.Node): boolean => isPath(node) && !node.data

/**
 * The template with a comment before every tag that says where it stands, so that a slip in the markup that comes out can be
 * traced to its place. Only made when there is a slip.
 */
export function withPlaces(text: string): string {
  let out = ''
  let line = 1
  let begins = 0
  let within = ''
  for (let at = 0; at < text.length; at++) {
    const ends = within === '' ? undefined : text.startsWith(within, at)
    if (ends) {
      out += within
      at += within.length - 1
      within = ''
      continue
    }
    if (within !== '}}' && within !== '--}}' && text.startsWith('{{', at)) {
      // Braces in an attribute are passed over whole; the tag goes on behind them.
      const close = text.startsWith('{{!--', at) ? '--}}' : '}}'
      const end = text.indexOf(close, at)
      if (end < 0) return out + text.slice(at)
      const passed = text.slice(at, end + close.length)
      line += passed.split('\n').length - 1
      if (passed.includes('\n')) begins = at + passed.lastIndexOf('\n') + 1
      out += passed
      at += passed.length - 1
      continue
    }
    if (within === '' && text.startsWith('<!--', at)) within = '-->'
    else if (within === '' && /^<[/a-zA-Z]/.test(text.slice(at, at + 2))) {
      out += placeMark(line, at - begins + 1)
      within = '>'
    }
    if (text[at] === '\n') {
      line++
      begins = at + 1
    }
    out += text[at]
  }
  return out
}

const placeMark = (line: number, column: number): string => `<!--@${line}:${column}-->`

/** What a comment of `withPlaces` says. */
export function placeIn(comment: string): Spot | undefined {
  const found = /^@(\d+):(\d+)$/.exec(comment)
  return found ? { line: Number(found[1]), column: Number(found[2]) } : undefined
}
