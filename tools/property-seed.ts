/**
 * Property tests draw from a fixed seed, so that a run of the tests says the same today and tomorrow; the soak gives
 * them another seed each round.
 */
import fc from 'fast-check';

const USUAL_SEED = 20_261_125;

fc.configureGlobal({ seed: Number(process.env['FIRSTFIRE_SEED'] || USUAL_SEED) });
