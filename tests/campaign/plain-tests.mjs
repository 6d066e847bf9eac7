// Just as much of a test library as runs a file of ours in a bare process: what it collects is run in order, up to the first failure.
import { readFileSync } from 'node:fs'
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  GLOBAL_EXPECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect'
import * as chai from 'chai'

chai.use(JestExtend)
chai.use(JestChaiExpect)
chai.use(JestAsymmetricMatchers)
let current = ''
chai.use((_, { addMethod }) => {
  addMethod(chai.Assertion.prototype, 'toMatchFileSnapshot', function (path) {
    const reviewed = readFileSync(new URL(path, current), 'utf8')
    this.assert(this._obj === reviewed, `differs from ${path}`, `is ${path}`)
  })
})
const expect = Object.assign(
  (value, message) => chai.expect(value, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
)
globalThis[GLOBAL_EXPECT] = expect
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect)

const SKIPPED = Symbol('skipped')
const skip = () => {
  throw SKIPPED
}
const bodyOf = rest => rest.find(each => typeof each === 'function')
const eachOf =
  take =>
  table =>
  (name, ...rest) => {
    const body = bodyOf(rest)
    for (const row of table)
      take(`${name} (${String(row).slice(0, 40)})`, () => body(...(Array.isArray(row) ? row : [row])))
  }
const anyType = new Proxy(() => anyType, { get: () => anyType })

/** What a file imports as its test library, and the run of what it has collected meanwhile. */
export function collector(url) {
  const tests = []
  let group = { before: [], after: [] }
  const groups = [group]

  const describe = (_, ...rest) => {
    const outer = group
    group = { outer, before: [], after: [] }
    groups.push(group)
    bodyOf(rest)()
    group = outer
  }
  const it = (name, ...rest) => tests.push({ name, group, body: bodyOf(rest) })
  const opened = async of => {
    if (!of || of.isOpen) return
    of.isOpen = true
    await opened(of.outer)
    for (const hook of of.before) await hook()
  }
  return {
    library: {
      describe: Object.assign(describe, { each: eachOf(describe) }),
      it: Object.assign(it, { each: eachOf(it) }),
      expect,
      expectTypeOf: anyType,
      beforeAll: hook => group.before.push(hook),
      afterAll: hook => group.after.push(hook),
      vi: undefined,
    },
    /** The first test that fails and why, or nothing. */
    async failure() {
      current = url
      try {
        for (const { name, group: of, body } of tests) {
          try {
            await opened(of)
            await body({ skip })
          } catch (error) {
            if (error !== SKIPPED) return `${name}: ${String(error?.message ?? error).split('\n')[0]}`
          }
        }
        return undefined
      } finally {
        for (const { after, isOpen } of groups) if (isOpen) for (const hook of after) await hook()
      }
    },
  }
}
