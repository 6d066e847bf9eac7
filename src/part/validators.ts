import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js'
import batch from './batch.schema.json' with { type: 'json' }
import bench from './bench.schema.json' with { type: 'json' }
import part from './part.schema.json' with { type: 'json' }
import results from './results.schema.json' with { type: 'json' }
import shop from './shop.schema.json' with { type: 'json' }
import trial from './trial.schema.json' with { type: 'json' }

// The bundle has this module compiled ahead: see .build/validators.mjs, which has the same options.
const ajv = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true, verbose: true })

export const validatePart: ValidateFunction = ajv.compile(part)
export const validateShop: ValidateFunction = ajv.compile(shop)
export const validateBatch: ValidateFunction = ajv.compile(batch)
export const validateBench: ValidateFunction = ajv.compile(bench)
export const validateResults: ValidateFunction = ajv.compile(results)
export const validateTrial: ValidateFunction = ajv.compile(trial)
