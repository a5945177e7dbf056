/**
 * Random tests try the same inputs in every run, so that a change is judged by its own faults and not by luck.
 * `SEED=17 npm test` tries others.
 */
import fc from 'fast-check'

const seed = Number(process.env['SEED'] ?? 20_260_101)

fc.configureGlobal({ seed })
