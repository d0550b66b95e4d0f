export * from './activity.ts';
export * from './method.ts';
export * from './shah.ts';
export * from './wind-form.ts';
