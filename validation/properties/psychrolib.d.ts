/** The few functions of the open psychrometric library that ours are run beside; SI: °C, Pa, kg/kg, J/kg, kg/m3. */
declare module 'psychrolib' {
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(celsius: number): number;
    GetHumRatioFromRelHum(celsius: number, relativeHumidity: number, pascal: number): number;
    GetTDewPointFromRelHum(celsius: number, relativeHumidity: number): number;
    GetTWetBulbFromHumRatio(celsius: number, ratio: number, pascal: number): number;
    GetHumRatioFromTWetBulb(celsius: number, wetBulb: number, pascal: number): number;
    GetMoistAirDensity(celsius: number, ratio: number, pascal: number): number;
    GetMoistAirVolume(celsius: number, ratio: number, pascal: number): number;
    GetMoistAirEnthalpy(celsius: number, ratio: number): number;
    GetStandardAtmPressure(metres: number): number;
  }
  const psychrolib: Psychrometrics;
  export default psychrolib;
}
