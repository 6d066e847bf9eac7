// Every small fault that can be put into a source text, found in its syntax tree, so that no comment, text or type is touched.
import { parseAst } from 'vitest/node'

const LOOSER_OR_STRICTER = { '<': '<=', '<=': '<', '>': '>=', '>=': '>' }
const OTHER_WAY = { '<': '>=', '<=': '>', '>': '<=', '>=': '<', '===': '!==', '!==': '===' }
const ARITHMETIC = { '+': '-', '-': '+', '*': '/', '/': '*', '%': '*' }
const CALLED = { min: 'max', max: 'min', floor: 'ceil', ceil: 'floor', some: 'every', every: 'some' }
const LISTS = ['map', 'filter', 'flatMap', 'toSorted', 'slice']

const nudged = value => (Number.isInteger(value) ? value + 1 : Number((value * 1.1).toPrecision(6)))
const isText = node => node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node.value === 'string')

/** The mutations of a source text: from and to in the text, and what stands there instead. */
export function mutationsOf(text) {
  const found = []
  const of = node => text.slice(node.start, node.end)
  const put = (node, to) => found.push({ start: node.start, end: node.end, to })
  /** With the parentheses that stand about its sides. */
  const joined = ({ start, end, left, right, operator }, other) => {
    const between = text.slice(left.end, right.start).replace(operator, other)
    return `(${text.slice(start, left.end)}${between}${text.slice(right.start, end)})`
  }

  const emptied = returned => {
    const isList =
      (returned?.type === 'ArrayExpression' && returned.elements.length > 0) ||
      (returned?.type === 'CallExpression' && LISTS.includes(returned.callee.property?.name))
    if (isList) put(returned, '[]')
  }

  const kinds = {
    BinaryExpression: node => {
      if (isText(node.left) || isText(node.right)) {
        if (node.operator in OTHER_WAY) put(node, joined(node, OTHER_WAY[node.operator]))
        return
      }
      for (const table of [LOOSER_OR_STRICTER, OTHER_WAY, ARITHMETIC])
        if (node.operator in table) put(node, joined(node, table[node.operator]))
    },
    LogicalExpression: node => {
      if (node.operator === '&&') put(node, joined(node, '||'))
      if (node.operator === '||') put(node, joined(node, '&&'))
    },
    ConditionalExpression: node => put(node, `((${of(node.test)}) ? ${of(node.alternate)} : ${of(node.consequent)})`),
    IfStatement: node => put(node.test, `!(${of(node.test)})`),
    UnaryExpression: node => {
      if (node.operator === '-' || node.operator === '!') put(node, `(${of(node.argument)})`)
    },
    Literal: node => {
      // A guard against rounding, as 1e-6, guards as well when it is a tenth wider.
      const isGuard = node.raw?.includes('e-')
      if (typeof node.value === 'number' && !isGuard) put(node, String(nudged(node.value)))
    },
    CallExpression: node => {
      const name = node.callee.type === 'MemberExpression' ? node.callee.property : undefined
      if (name?.name in CALLED) put(name, CALLED[name.name])
    },
    ReturnStatement: node => emptied(node.argument),
    ArrowFunctionExpression: node => emptied(node.body),
  }

  const walk = node => {
    if (Array.isArray(node)) for (const each of node) walk(each)
    if (Array.isArray(node) || node === null || typeof node !== 'object') return
    if (node.type === 'ImportDeclaration') return
    const isType = node.type?.startsWith('TS') && node.expression === undefined
    if (isType) return
    kinds[node.type]?.(node)
    for (const [key, child] of Object.entries(node)) if (key !== 'typeAnnotation') walk(child)
  }
  walk(parseAst(text, { lang: 'ts' }))
  return found
    .filter(({ start, end, to }) => text.slice(start, end) !== to)
    .sort((one, other) => one.start - other.start || one.end - other.end)
}

/** The text with one mutation in it. */
export const mutated = (text, { start, end, to }) => text.slice(0, start) + to + text.slice(end)

/** The line of a mutation, from 1. */
export const lineOf = (text, { start }) => text.slice(0, start).split('\n').length
