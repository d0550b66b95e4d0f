export type { FacingWay, WayToFace } from '../plant/place/way-to-face.ts';
export {
  type NamedThing,
  type YardOptions,
  type YardQuestionOfJob,
  yardOfJob,
  yardQuestionOf,
} from './yard-of-job.ts';
export { type HeaterYard, type JudgedSpot, type MappedYard, yardStudy } from './yard-study.ts';
