import { byPlace, type Finding, hasErrors } from '../finding.ts'
import { BUILT_IN_SHOP } from '../shop/built-in-shop.ts'
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
import { openYaml, type YamlSource } from './yaml-source.ts'

/** A shop, when the file has no errors; the findings either way, sorted by place. */
export type ReadShop = { readonly shop?: Shop; readonly findings: readonly Finding[] }

/**
 * Reads a shop file over the built-in shop: a list that the file has stands in place of the built-in one, the fixture and
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
  const machines = root.has('machines') ? readMachines(root) : built.machines
  const shop: Shop = {
    name: works?.text('name') ?? built.name,
    ...readContact(works),
    ...readWorking(works),
    ...(hours !== undefined && { hours }),
    ...readMoney(root, machines),
    fixture: readFixture(root, built.fixture),
    machines,
    tools: root.has('tools') ? readTools(root) : built.tools,
    gauges: root.has('gauges') ? readGauges(root) : built.gauges,
    firms: root.has('firms') ? readFirms(root) : built.firms,
    measured: readMeasured(root),
    habits: readHabits(root, built.habits),
    reached: readReached(root),
    ...readPortChecks(root),
    ...readNcWords(root),
    set: new Set([...source.places.keys()].filter(pointer => pointer !== '')),
    places: source.places,
    file: source.file,
  }
  const sorted = byPlace(findings)
  return hasErrors(sorted) ? { findings: sorted } : { shop, findings: sorted }
}
