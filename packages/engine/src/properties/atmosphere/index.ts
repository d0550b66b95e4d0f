export * from './standard.ts';
