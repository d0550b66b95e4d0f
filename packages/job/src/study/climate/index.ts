export {
  type ClimateReading,
  climateOfFile,
  climateOfMonths,
  type MonthColumn,
  type TypedMonths,
  withClimate,
} from './readings.ts';
