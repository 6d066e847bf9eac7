import { byPlace, type Finding, hasErrors } from '../finding.ts'
import { checkPart } from './check-part.ts'
import { openDocument, present } from './open-document.ts'
import type { GeneralTolerance, Part, PartKind, StockChoice } from './part.ts'
import { readBody } from './read-body.ts'
import { readDatum } from './read-datum.ts'
import { readEngine } from './read-engine.ts'
import { readFeatures } from './read-features.ts'
import { readHardening } from './read-hardening.ts'
import { readMaterial } from './read-material.ts'
import { onBand, readPlating } from './read-plating.ts'
import { readPorts } from './read-port.ts'
import { validatePart } from './validators.ts'
import type { View } from './view.ts'
import { openYaml, type YamlSource } from './yaml-source.ts'

/** A part, when the file has no errors; the findings either way, sorted by place. */
export type ReadPart = { readonly part?: Part; readonly findings: readonly Finding[] }

/**
 * Reads a part file: YAML, then the schema, then every value with its unit, then what the values must be to each other.
 * `file` is what findings call it. Never throws on what a file says.
 */
export function readPart(text: string, file: string): ReadPart {
  const { source, findings } = openYaml(text, file)
  return source ? partFrom(source) : { findings: byPlace(findings) }
}

/** The same of a file that has been read as YAML.
 * @internal */
export function partFrom(source: YamlSource): ReadPart {
  const document = openDocument(source, validatePart)
  const part = partOf(document.root, source.places, source.file)
  if (!part || hasErrors(document.findings)) return { findings: byPlace(document.findings) }
  const all = byPlace([...document.findings, ...checkPart(part)])
  return hasErrors(all) ? { findings: all } : { part, findings: all }
}

function partOf(root: View, places: Part['places'], file: string): Part | undefined {
  const general = generalToleranceOf(root)
  const title = root.into('part')
  const number = title?.label('number')
  const name = title?.text('title')
  const revision = title?.label('revision')
  const kind = KINDS.find(known => known === title?.text('kind'))
  const engineView = root.into('engine')
  const engine = engineView && readEngine(engineView)
  const materialView = root.into('material')
  const material = materialView && readMaterial(materialView)
  const bodyView = root.into('body')
  const body = bodyView && readBody(bodyView, general)
  const datumView = bodyView?.into('datum')
  const datum = datumView && readDatum(datumView)
  const features = bodyView && body ? readFeatures(bodyView, body, general) : []
  const hardeningView = root.into('hardening')
  const hardening = hardeningView && readHardening(hardeningView)
  const platingView = root.into('plating')
  const plating = onBand(platingView && readPlating(platingView), body?.bore ?? [])
  const ports = readPorts(root, { general, hasEngine: root.has('engine') })
  const stock = readStock(root.into('stock'))
  const waive = root.each('waive').flatMap(view => {
    const rule = view.text('rule')
    const because = view.text('because')
    return rule === undefined || because === undefined ? [] : [{ rule, because, path: view.path }]
  })
  if (number === undefined || name === undefined || revision === undefined || !kind || !material || !body)
    return undefined
  return {
    number,
    title: name,
    revision,
    kind,
    material,
    ...body,
    stock,
    ports,
    features,
    generalTolerance: general,
    waive,
    places,
    file,
    ...present({ engine, hardening, plating, datum, fits: root.text('fits') }),
  }
}

const KINDS: readonly PartKind[] = ['liner', 'sleeve', 'pin', 'piston']
const CLASSES: readonly GeneralTolerance[] = ['f', 'm', 'c', 'v']

function generalToleranceOf(root: View): GeneralTolerance {
  const written = root.text('general-tolerance')
  return CLASSES.find(known => written === known || written === `ISO 2768-${known}`) ?? 'm'
}

/** On diameter; more than this is no finishing stock: the deepest case there is lies half as deep. */
const STOCK = { from: 0, upTo: 3 }

const readStock = (view: View | undefined): StockChoice =>
  present({
    outside: view?.quantity('outside', 'length', STOCK),
    bore: view?.quantity('bore', 'length', STOCK),
    hone: view?.quantity('hone', 'length', STOCK),
    lap: view?.quantity('lap', 'length', STOCK),
    preplate: view?.quantity('preplate', 'length', STOCK),
    top: view?.quantity('top', 'length', STOCK),
  })
