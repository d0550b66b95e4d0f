export type { GroundLayer } from './header.ts';
export { type EpwYear, readEpw } from './read.ts';
