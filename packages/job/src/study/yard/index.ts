export { type YardOptions, yardOfJob, yardQuestionOf } from './yard-of-job.ts';
