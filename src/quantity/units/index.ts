import { frozen } from '../../numeric/frozen.js';
import type { Kind, Unit, UnitTable } from '../quantity.js';
import { absolutePressureUnits } from './absolute-pressure.js';
import { accelerationUnits } from './acceleration.js';
import { activationEnergyUnits } from './activation-energy.js';
import { angleUnits } from './angle.js';
import { areaUnits } from './area.js';
import { arealWeightUnits } from './areal-weight.js';
import { bendingStiffnessUnits } from './bending-stiffness.js';
import { conductivityUnits } from './conductivity.js';
import { corrosionRateUnits } from './corrosion-rate.js';
import { couplingStiffnessUnits } from './coupling-stiffness.js';
import { curvatureUnits } from './curvature.js';
import { densityUnits } from './density.js';
import { energyUnits } from './energy.js';
import { energyReleaseRateUnits } from './energy-release-rate.js';
import { extensionalStiffnessUnits } from './extensional-stiffness.js';
import { forceUnits } from './force.js';
import { gaugePressureUnits } from './gauge-pressure.js';
import { leakSeverityUnits } from './leak-severity.js';
import { lengthUnits } from './length.js';
import { lineLoadUnits } from './line-load.js';
import { lineMomentUnits } from './line-moment.js';
import { massUnits } from './mass.js';
import { massFlowUnits } from './mass-flow.js';
import { modulusUnits } from './modulus.js';
import { molarEnthalpyUnits } from './molar-enthalpy.js';
import { molarHeatCapacityUnits } from './molar-heat-capacity.js';
import { molarMassUnits } from './molar-mass.js';
import { momentUnits } from './moment.js';
import { rateConstantUnits } from './rate-constant.js';
import { ratioUnits } from './ratio.js';
import { saltConductanceFactorUnits } from './salt-conductance-factor.js';
import { specificEnergyUnits } from './specific-energy.js';
import { specificHeatUnits } from './specific-heat.js';
import { speedUnits } from './speed.js';
import { strainUnits } from './strain.js';
import { stressUnits } from './stress.js';
import { temperatureUnits } from './temperature.js';
import { temperatureCoefficientUnits } from './temperature-coefficient.js';
import { temperatureDifferenceUnits } from './temperature-difference.js';
import { thermalConductivityUnits } from './thermal-conductivity.js';
import { thermalExpansionUnits } from './thermal-expansion.js';
import { timeUnits } from './time.js';
import { volumeUnits } from './volume.js';
import { volumeFlowUnits } from './volume-flow.js';

/** Every unit that text may use, by kind. The first unit of a kind is its coherent SI unit. */
export const units: Readonly<Record<Kind, UnitTable>> = /* @__PURE__ */ frozen<Readonly<Record<Kind, UnitTable>>>({
  length: lengthUnits,
  area: areaUnits,
  volume: volumeUnits,
  time: timeUnits,
  mass: massUnits,
  force: forceUnits,
  moment: momentUnits,
  energy: energyUnits,
  'gauge pressure': gaugePressureUnits,
  'absolute pressure': absolutePressureUnits,
  stress: stressUnits,
  modulus: modulusUnits,
  density: densityUnits,
  'areal weight': arealWeightUnits,
  'energy release rate': energyReleaseRateUnits,
  'leak severity': leakSeverityUnits,
  temperature: temperatureUnits,
  'temperature difference': temperatureDifferenceUnits,
  'thermal expansion': thermalExpansionUnits,
  ratio: ratioUnits,
  strain: strainUnits,
  angle: angleUnits,
  'corrosion rate': corrosionRateUnits,
  speed: speedUnits,
  acceleration: accelerationUnits,
  'volume flow': volumeFlowUnits,
  'mass flow': massFlowUnits,
  'activation energy': activationEnergyUnits,
  'rate constant': rateConstantUnits,
  'molar mass': molarMassUnits,
  'specific energy': specificEnergyUnits,
  'specific heat': specificHeatUnits,
  conductivity: conductivityUnits,
  'molar heat capacity': molarHeatCapacityUnits,
  'molar enthalpy': molarEnthalpyUnits,
  'thermal conductivity': thermalConductivityUnits,
  'temperature coefficient': temperatureCoefficientUnits,
  'salt conductance factor': saltConductanceFactorUnits,
  'line load': lineLoadUnits,
  'line moment': lineMomentUnits,
  curvature: curvatureUnits,
  'extensional stiffness': extensionalStiffnessUnits,
  'coupling stiffness': couplingStiffnessUnits,
  'bending stiffness': bendingStiffnessUnits,
});

/** Whether a declared kind is a kind of quantity, and so has units. */
export function isKind(kind: string): kind is Kind {
  return Object.hasOwn(units, kind);
}

/**
 * The unit of a kind by its written symbol, if the kind has it.
 *
 * @param kind of the quantity
 * @param symbol as it is written: `mm`
 */
export function unitOf(kind: Kind, symbol: string): Unit | undefined {
  return Object.hasOwn(units[kind], symbol) ? units[kind][symbol] : undefined;
}

/**
 * The symbol of the coherent SI unit of a kind.
 *
 * @param kind of the quantity
 */
export function siSymbol(kind: Kind): string {
  return Object.keys(units[kind])[0] ?? '1';
}
