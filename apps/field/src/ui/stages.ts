/** The stages of a job, in their order. */
export const STAGES = ['survey', 'plan', 'install', 'start-up', 'service'] as const;

export type Stage = (typeof STAGES)[number];

export function isStage(value: unknown): value is Stage {
  return STAGES.some((one) => one === value);
}
