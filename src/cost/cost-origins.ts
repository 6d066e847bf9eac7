import { type Origin, worked } from '../known.ts'

export const ROUTE: Origin = worked('pieces expected to come to the operation, by the yields of those before')
export const TIMES: Origin = worked('times of the steps')
