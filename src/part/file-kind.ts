import shop from './shop.schema.json' with { type: 'json' }

export type FileKind = 'part' | 'shop' | 'batch' | 'bench' | 'results' | 'trial'

const OF_SHOP = new Set(Object.keys(shop.properties))

/** What a file is, by the keys that begin its lines; a file that says nothing of itself is taken for a part and judged as one. */
export function kindOfFile(text: string): FileKind {
  const keys = [...text.matchAll(/^([a-z][a-z-]*)\s*:/gm)].map(([, key = '']) => key)
  if (keys.includes('part') || keys.includes('body')) return 'part'
  if (keys.includes('results')) return 'results'
  if (keys.includes('trial')) return 'trial'
  if (keys.includes('batch')) return 'batch'
  if (keys.includes('bench')) return 'bench'
  return keys.some(key => OF_SHOP.has(key)) ? 'shop' : 'part'
}
