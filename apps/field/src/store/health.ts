/** Whether the device keeps what it is given, and if not, why: one word for each thing a person can do about it. */

export const ILLS = [
  /** No room left. */
  'full',
  /** The browser forbids it: private window, or a setting. */
  'denied',
  /** The browser has no database. */
  'missing',
  /** A newer version of the app has been here. */
  'newer',
  /** The database does not answer. */
  'silent',
  /** The database is there and cannot be read. */
  'damaged',
  'failed',
] as const;

export type Ill = (typeof ILLS)[number];

const WHY: Readonly<Record<string, Ill>> = {
  QuotaExceededError: 'full',
  SecurityError: 'denied',
  NotAllowedError: 'denied',
  NotSupportedError: 'missing',
  VersionError: 'newer',
  TimeoutError: 'silent',
  UnknownError: 'damaged',
  DataError: 'damaged',
  NotReadableError: 'damaged',
};

export function illOf(error: unknown): Ill {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return WHY[name] ?? 'failed';
}
