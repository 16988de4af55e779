/**
 * Property tests start from one seed, so that a change is judged by what it changes. `FC_SEED=random npm test` hunts with
 * a new one, and any number repeats a hunt; a failure prints its seed either way.
 */
import fc from 'fast-check'

const USUAL_SEED = 20_261_125
const given = process.env.FC_SEED

if (given !== 'random') fc.configureGlobal({ seed: given === undefined ? USUAL_SEED : Number(given) })
