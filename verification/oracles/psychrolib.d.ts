/** The parts of psychrolib that the tests call; the package has no types of its own. */
declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetTDewPointFromRelHum(dryBulbCelsius: number, relativeHumidity: number): number;
    GetRelHumFromTDewPoint(dryBulbCelsius: number, dewPointCelsius: number): number;
    GetSatVapPres(dryBulbCelsius: number): number;
    GetHumRatioFromTWetBulb(dryBulbCelsius: number, wetBulbCelsius: number, pressure: number): number;
  };
  export default psychrolib;
}
