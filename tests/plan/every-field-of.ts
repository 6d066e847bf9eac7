/** Every field there, those that may be absent too: a field added to the Plan does not compile here until it is. */
export type EveryField<T> = T extends string | number | boolean
  ? T
  : T extends readonly (infer Item)[]
    ? readonly EveryField<Item>[]
    : { readonly [K in keyof T]-?: EveryField<T[K]> }
