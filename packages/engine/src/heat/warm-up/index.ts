export { type WarmUpCourse, type WarmUpInWeather, warmUpInWeather } from './in-weather.ts';
export { heatCapacityOf, naiveWarmUp, type WaterAndHeater, type WaterToWarm, warmUpHeat } from './naive.ts';
export {
  lossCurve,
  plateau,
  questionIssues,
  type WarmUp,
  type WarmUpQuestion,
  warmUp,
  warmUpTime,
} from './warm-up.ts';
