export type { AbsolutePressure } from './absolute-pressure.js';
export * as absolute from './absolute-pressure.js';
export type { Acceleration } from './acceleration.js';
export * as acceleration from './acceleration.js';
export type { ActivationEnergy } from './activation-energy.js';
export * as activationEnergy from './activation-energy.js';
export type { Angle } from './angle.js';
export * as angle from './angle.js';
export type { Area } from './area.js';
export * as area from './area.js';
export type { ArealWeight } from './areal-weight.js';
export * as arealWeight from './areal-weight.js';
export type { BendingStiffness } from './bending-stiffness.js';
export * as bendingStiffness from './bending-stiffness.js';
export type { ClockTime } from './clock.js';
export type { Conductivity } from './conductivity.js';
export * as conductivity from './conductivity.js';
export { difference, shift, toAbsolute, toGauge } from './conversions.js';
export type { CorrosionRate } from './corrosion-rate.js';
export * as corrosionRate from './corrosion-rate.js';
export type { CouplingStiffness } from './coupling-stiffness.js';
export * as couplingStiffness from './coupling-stiffness.js';
export type { Curvature } from './curvature.js';
export * as curvature from './curvature.js';
export type { Density } from './density.js';
export * as density from './density.js';
export type { Energy } from './energy.js';
export * as energy from './energy.js';
export type { EnergyReleaseRate } from './energy-release-rate.js';
export * as energyReleaseRate from './energy-release-rate.js';
export type { ExtensionalStiffness } from './extensional-stiffness.js';
export * as extensionalStiffness from './extensional-stiffness.js';
export type { Force } from './force.js';
export * as force from './force.js';
export { formatQuantity } from './format.js';
export type { GaugePressure } from './gauge-pressure.js';
export * as gauge from './gauge-pressure.js';
export type { LeakSeverity } from './leak-severity.js';
export * as leakSeverity from './leak-severity.js';
export type { Length } from './length.js';
export * as length from './length.js';
export {
  type Amount,
  exactly,
  joinLines,
  type Line,
  line,
  roundedDown,
  roundedUp,
  saidIn,
  type Tool,
  torqued,
  weighed,
  written,
} from './line.js';
export type { LineLoad } from './line-load.js';
export * as lineLoad from './line-load.js';
export type { LineMoment } from './line-moment.js';
export * as lineMoment from './line-moment.js';
export type { Mass } from './mass.js';
export * as mass from './mass.js';
export type { MassFlow } from './mass-flow.js';
export * as massFlow from './mass-flow.js';
export type { Modulus } from './modulus.js';
export * as modulus from './modulus.js';
export type { MolarEnthalpy } from './molar-enthalpy.js';
export * as molarEnthalpy from './molar-enthalpy.js';
export type { MolarHeatCapacity } from './molar-heat-capacity.js';
export * as molarHeatCapacity from './molar-heat-capacity.js';
export type { MolarMass } from './molar-mass.js';
export * as molarMass from './molar-mass.js';
export type { Moment } from './moment.js';
export * as moment from './moment.js';
export { preferredUnit, type UnitPreferences, type UnitSystem } from './preferred-unit.js';
export type { Kind, KindOf, PlainNumber, Quantity, SiUnits, Unit, UnitTable } from './quantity.js';
export type { RateConstant } from './rate-constant.js';
export * as rateConstant from './rate-constant.js';
export type { Ratio } from './ratio.js';
export * as ratio from './ratio.js';
export type { SaltConductanceFactor } from './salt-conductance-factor.js';
export * as saltConductanceFactor from './salt-conductance-factor.js';
export type { SpecificEnergy } from './specific-energy.js';
export * as specificEnergy from './specific-energy.js';
export type { SpecificHeat } from './specific-heat.js';
export * as specificHeat from './specific-heat.js';
export type { Speed } from './speed.js';
export * as speed from './speed.js';
export type { Strain } from './strain.js';
export * as strain from './strain.js';
export type { Stress } from './stress.js';
export * as stress from './stress.js';
export type { Temperature } from './temperature.js';
export * as temperature from './temperature.js';
export type { TemperatureCoefficient } from './temperature-coefficient.js';
export * as temperatureCoefficient from './temperature-coefficient.js';
export type { TemperatureDifference } from './temperature-difference.js';
export * as temperatureDifference from './temperature-difference.js';
export { exampleOf, type QuantityReading, readQuantity, writeQuantity } from './text.js';
export type { ThermalConductivity } from './thermal-conductivity.js';
export * as thermalConductivity from './thermal-conductivity.js';
export type { ThermalExpansion } from './thermal-expansion.js';
export * as thermalExpansion from './thermal-expansion.js';
export type { Time } from './time.js';
export * as time from './time.js';
export { siSymbol, unitOf, units } from './units/index.js';
export type { Volume } from './volume.js';
export * as volume from './volume.js';
export type { VolumeFlow } from './volume-flow.js';
export * as volumeFlow from './volume-flow.js';
