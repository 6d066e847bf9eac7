import fc from 'fast-check'

/** Once for all tests, so that a run can be repeated. */
fc.configureGlobal({ seed: 20_261_125, numRuns: 200 })
