import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'
import { suggestionOrList } from './suggestion.ts'

/** What a surface is called when nobody names it, and so no name for another. */
const RESERVED = ['top', 'bottom', 'length', 'outside', 'bore']

/** Every surface and port has a name of its own, since sizes, operations and masks go by it. */
export function checkNames(part: Part): readonly PartFault[] {
  const named = [
    ...part.outside.map(({ name, path }) => ({ name, path, own: 'outside' })),
    ...part.bore.map(({ name, path }) => ({ name, path, own: 'bore' })),
    ...part.ports.map(({ name, path }) => ({ name, path, own: '' })),
    ...part.features.map(({ name, path }) => ({ name, path, own: '' })),
  ]
  const first = new Map<string, string>()
  const faults: PartFault[] = []
  for (const { name, path, own } of named) {
    const key = name.toLowerCase()
    if (first.has(key)) {
      const message = `two surfaces are called "${name}"`
      faults.push({ code: 'input/name-twice', message, hint: 'give each its own name', path: `${path}/name` })
    } else if (key !== own && RESERVED.includes(key)) {
      const message = `"${name}" is already what the ${key === 'length' ? 'length' : `${key} surface`} is called`
      faults.push({ code: 'input/name-twice', message, hint: 'choose another name', path: `${path}/name` })
    }
    first.set(key, path)
  }
  return [
    ...faults,
    ...unknownPlated(part),
    ...unknownDatum(part),
    ...unknownMasks(part, [...new Set([...RESERVED.filter(n => n !== 'length'), ...named.map(n => n.name)])]),
  ]
}

function unknownMasks({ hardening }: Part, known: readonly string[]): readonly PartFault[] {
  const masked = hardening?.masked ?? []
  return masked.flatMap((name, index) => {
    if (known.includes(name)) return []
    const message = `masked: the part has no surface "${name}"`
    const path = `${hardening?.path}/masked/${index}`
    return [{ code: 'input/unknown-surface', message, hint: suggestionOrList(name, known, 'surfaces'), path }]
  })
}

/** A datum is cut into the outside. */
function unknownDatum({ datum, outside }: Part): readonly PartFault[] {
  if (!datum || outside.some(({ name }) => name === datum.on)) return []
  const names = outside.map(({ name }) => name)
  const message = `datum: the outside has no band "${datum.on}"`
  return [
    {
      code: 'input/unknown-surface',
      message,
      hint: suggestionOrList(datum.on, names, 'bands'),
      path: `${datum.path}/on`,
    },
  ]
}

/** Only a bore is plated. */
function unknownPlated({ plating, bore, outside }: Part): readonly PartFault[] {
  if (!plating || bore.some(({ name }) => name === plating.surface)) return []
  const { surface, path } = plating
  const names = bore.map(({ name }) => name)
  const elsewhere = ['outside', 'top', 'bottom', 'length', ...outside.map(({ name }) => name)].includes(surface)
  return elsewhere
    ? [
        {
          code: 'plating/surface',
          message: `plating is planned for a bore only, not for ${surface}`,
          hint: names.length > 0 ? `one of: ${names.join(', ')}` : 'give body: bore:',
          path: `${path}/surface`,
        },
      ]
    : [
        {
          code: 'input/unknown-surface',
          message: `plating: the part has no bore "${surface}"`,
          hint: names.length > 0 ? suggestionOrList(surface, names, 'bores') : 'give body: bore:',
          path: `${path}/surface`,
        },
      ]
}
