/** A figure in a remark or a finding: three digits, no trailing zeros. */
export const figure = (value: number, digits = 3): string => String(Number(value.toPrecision(digits)))
