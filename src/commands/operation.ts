import { UsageProblem } from './world.ts'

type Numbered = { readonly number: number; readonly name: string }

/** The operation of that number. One that the route does not have is refused with the list of those that it has. */
export function operationOf<O extends Numbered>(operations: readonly O[], number: number): O {
  const found = operations.find(operation => operation.number === number)
  if (found) return found
  throw new UsageProblem(`there is no operation ${number}: ${operationList(operations)}`)
}

const operationList = (operations: readonly Numbered[]): string =>
  operations.map(({ number, name }) => `${number} ${name}`).join(', ')

/** All of them, or with `--operation` the one of that number. */
export const chosenOf = <O extends Numbered>(operations: readonly O[], number: number | undefined): readonly O[] =>
  number === undefined ? operations : [operationOf(operations, number)]
