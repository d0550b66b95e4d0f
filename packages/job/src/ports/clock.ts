/** Wall time comes in from outside, so that every computation on a job can be repeated. */
export interface Clock {
  /** Milliseconds since 1970 UTC. It may jump in either direction: the log's own clock copes. */
  now(): number;
}
