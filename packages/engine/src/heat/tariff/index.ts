export { heatOfSalesUnit, SALES_UNITS, type SalesUnit } from './sales-unit.ts';
export {
  type Bill,
  type Block,
  bill,
  flatTariff,
  type PriceList,
  type Tariff,
  tariffIssues,
} from './tariff.ts';
