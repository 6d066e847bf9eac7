import { byPlace, type Finding, hasErrors } from '../finding.ts'
import { BUILT_IN_SHOP } from '../shop/built-in-shop.ts'
import { builtInOf } from '../shop/origin.ts'
import type { Shop } from '../shop/shop.ts'
import { openDocument } from './open-document.ts'
import { readContact, readWorking } from './read-contact.ts'
import { readFirms } from './read-firms.ts'
import { readFixture } from './read-fixture.ts'
import { readHabits } from './read-habits.ts'
import { readMeasured, readReached } from './read-measured.ts'
import { readMoney } from './read-money.ts'
import { readNcWords, readPortChecks } from './read-port-settings.ts'
import { readGauges, readMachines } from './read-shop-lists.ts'
import { readTools } from './read-tools.ts'
import { validateShop } from './validators.ts'
import type { View } from './view.ts'
import { openYaml, type YamlSource } from './yaml-source.ts'

/** A shop, when the file has no errors; the findings either way, sorted by place. */
export type ReadShop = { readonly shop?: Shop; readonly findings: readonly Finding[] }

/**
 * Reads a shop file over the built-in shop: a list that the file has stands in place of the built-in one, or adds to it where
 * `built-in` is among its entries; the fixture and
 * the habits are laid over it key by key. `set` has the pointers of the file's own values, so that a plan can say of each
 * figure whether the works gave it.
 */
export function readShop(text: string, file: string): ReadShop {
  const { source, findings } = openYaml(text, file)
  return source ? shopFrom(source) : { findings }
}

/** The same of a file that has been read as YAML.
 * @internal */
export function shopFrom(source: YamlSource): ReadShop {
  const { root, findings } = openDocument(source, validateShop)
  const built = BUILT_IN_SHOP
  const works = root.into('shop')
  const hours = works?.quantity('hours', 'hours', { over: 0, upTo: 24 })
  const added: string[] = []
  const listOf = <T extends { readonly name: string }>(
    list: List,
    read: (root: View) => readonly T[],
    builtIn: readonly T[],
  ): readonly T[] => {
    if (!root.has(list)) return builtIn
    const own = read(root)
    if (!addsTo(source, list)) return own
    // One of the same name is the works' own, with its own figures.
    const more = builtIn.filter(({ name }) => !own.some(other => other.name === name))
    added.push(...more.map(({ name }) => builtInOf(list, name)))
    return [...own, ...more]
  }
  const machines = listOf('machines', readMachines, built.machines)
  const shop: Shop = {
    name: works?.text('name') ?? built.name,
    ...readContact(works),
    ...readWorking(works),
    ...(hours !== undefined && { hours }),
    ...readMoney(root, machines),
    fixture: readFixture(root, built.fixture),
    machines,
    tools: listOf('tools', readTools, built.tools),
    gauges: listOf('gauges', readGauges, built.gauges),
    firms: listOf('firms', readFirms, built.firms),
    measured: readMeasured(root),
    habits: readHabits(root, built.habits),
    reached: readReached(root),
    ...readPortChecks(root),
    ...readNcWords(root),
    set: new Set([...[...source.places.keys()].filter(pointer => pointer !== ''), ...added]),
    places: source.places,
    file: source.file,
  }
  const sorted = byPlace(findings)
  return hasErrors(sorted) ? { findings: sorted } : { shop, findings: sorted }
}

type List = 'machines' | 'tools' | 'gauges' | 'firms'

/** Whether a list of the file has `built-in` among its entries. */
function addsTo({ data }: YamlSource, list: List): boolean {
  const entries = data[list]
  return Array.isArray(entries) && entries.includes('built-in')
}
