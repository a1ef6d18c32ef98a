import type { TemperatureStep } from '../../cure/index.js';
import type {
  AbsolutePressure,
  ArealWeight,
  Density,
  Force,
  GaugePressure,
  Length,
  Modulus,
  MolarMass,
  Ratio,
  Speed,
  Stress,
  Temperature,
  TemperatureDifference,
  Time,
} from '../../quantity/index.js';
import type { CureSheet, Resistance } from './case-materials.js';

/** The air and the steel on the day of the work. */
export interface Site {
  /** Temperature of the steel where the repair goes on: the fluid sets it, not the air. */
  readonly pipeTemperature: Temperature;
  readonly airTemperature: Temperature;
  readonly relativeHumidity: Ratio;
  /** Temperature of the steel over the hours of the cure; without it the pipe temperature is taken as constant. */
  readonly history?: readonly TemperatureStep[] | undefined;
  /** How far the instruments may be off; the gates must hold at the worst edge. */
  readonly instruments?: Instruments | undefined;
  /** Air and steel over the coming hours, from the start of the work. */
  readonly forecast?: readonly ForecastStep[] | undefined;
  readonly surface?: Surface | undefined;
}

/** How far the readings of air and steel may be off. */
export interface Instruments {
  readonly temperatureError: TemperatureDifference;
  readonly humidityError: Ratio;
}

/** A stretch of the forecast over which one climate holds. */
export interface ForecastStep {
  readonly duration: Time;
  readonly pipeTemperature: Temperature;
  readonly airTemperature: Temperature;
  readonly relativeHumidity: Ratio;
}

/** Grades of prepared steel, of hand and power tools and of blasting. */
export type PreparationGrade = 'St 2' | 'St 3' | 'SP 11' | 'Sa 1' | 'Sa 2' | 'Sa 2 1/2' | 'Sa 3';

/** The prepared steel as it was measured. */
export interface Surface {
  readonly grade: PreparationGrade;
  /** Height of the profile. */
  readonly profile: Length;
  /** Soluble salts, where they were measured. */
  readonly salts?: ArealWeight | undefined;
  /** Grade and profile on which the lap shear strength of the system was qualified. */
  readonly qualified?: { readonly grade: PreparationGrade; readonly profile: Length } | undefined;
}

/** The line while people work on it, from the first touch to the cured laminate. */
export type LineAtWork = LineUnderPressure | EmptyLine;

/** A line that holds pressure while people work on it. */
export interface LineUnderPressure {
  readonly state: 'under pressure' | 'static head';
  readonly pressure: GaugePressure;
  /** Number of the site's written procedure, or `none`; gas and hazardous contents are refused without one. */
  readonly writtenProcedure: string;
}

/** A line that holds nothing while people work on it. */
export interface EmptyLine {
  readonly state: 'empty, dry, isolated, vented';
}

/** How the leak is held before the wrap: putty under a thin sheet and a tightened band. */
export interface Seal {
  /** The highest pressure at which the site lets anyone touch a leak: never assumed. */
  readonly siteLimit: GaugePressure;
  /** Bands that stay keep the laminate off the pipe all round: without a word the leak cannot be designed for. */
  readonly bands?: 'removed before the wrap' | 'left' | undefined;
  /** Largest extent of what else covers the steel round the sheet, or `none`. */
  readonly collar?: Length | 'none' | undefined;
  readonly pad: Pad;
  readonly putty: Putty;
  readonly band: Band;
  readonly fastener: Fastener;
  readonly sheet: SheetUnderBand;
  /** Factor on buckling and yielding of the thinned pipe under the band. */
  readonly pipeFactor: number;
  /** What leaves through the hole, for the safety notes. */
  readonly fluid?: LiquidInLine | GasInLine | undefined;
}

/** Size of the pad of putty over the hole. */
export interface Pad {
  /** Size of the pad over the size of the hole, and whether that speaks of area or of diameter. */
  readonly multiple: number;
  readonly multipleOf: 'area' | 'diameter' | 'not stated';
  /** Beyond the hole on every side. */
  readonly margin: Length;
}

/** The putty of the pad. */
export interface Putty {
  readonly name: string;
  /** What the putty stands: the contents always reach it. */
  readonly resists?: Resistance | undefined;
  /** The cure time here is the time until the putty takes no print. */
  readonly cure: CureSheet;
}

/** The metal band that holds the pad. */
export interface Band {
  readonly width: Length;
  readonly thickness: Length;
  readonly strength: Stress;
  readonly factor: number;
  /** Between band and what lies under it. */
  readonly friction: number;
  /** Bands side by side over the pad. */
  readonly count: number;
  /** Free length for the fastener. */
  readonly overlap: Length;
  /** Factor of the clamping force on the force of the leak. */
  readonly holdingFactor: number;
}

/** What tightens the band. */
export interface Fastener {
  readonly threadDiameter: Length;
  readonly nutFactor: number;
  readonly scatter: Ratio;
  /** What the fastener may be tightened to. */
  readonly permittedTension: Force;
}

/** The thin metal sheet between pad and band. */
export interface SheetUnderBand {
  /** Largest extent of the sheet, of any shape: nothing bonds under it. */
  readonly across?: Length | undefined;
  readonly thickness: Length;
  readonly modulus: Modulus;
  readonly yieldStrength: Stress;
  readonly poissonRatio: number;
  readonly factor: number;
  readonly support: 'clamped' | 'simply supported';
}

/** A liquid in the leaking line, as far as the jet asks for it. */
export interface LiquidInLine {
  readonly phase: 'liquid';
  readonly density: Density;
}

/** A gas in the leaking line, as far as the jet asks for it. */
export interface GasInLine {
  readonly phase: 'gas';
  readonly molarMass: MolarMass;
  readonly heatCapacityRatio: number;
  readonly atmosphere: AbsolutePressure;
}

/** The people who lay the wrap. */
export interface Crew {
  /** Tape or sheet laid per time by one crew. */
  readonly layingSpeed: Speed;
  /** Crews that work side by side. */
  readonly crews: number;
  /** Soaking of a roll before it is laid, where the tape is activated by water. */
  readonly soakTime?: Time | undefined;
  /** Start of the work on the clock of the site, as `07:30`. */
  readonly start: string;
}

/** What the repair must show before the line goes back to service. */
export interface Acceptance {
  readonly hardnessScale: 'Shore D' | 'Barcol';
  /** Hardness that the qualification reached; without it nothing can be accepted. */
  readonly qualifiedHardness: number;
  readonly pressureTest: PressureTest | 'none';
}

/** The pressure test that is agreed for the finished repair. */
export interface PressureTest {
  readonly medium: 'liquid' | 'gas';
  /** What a test with liquid fills the line with: only of fresh water is the density known; without a word it counts as other. */
  readonly liquid?: 'fresh water' | 'other' | undefined;
  /** Length of line that is filled and closed off. */
  readonly length: Length;
  /** Lowest rating of a flange, valve or hose within that length: the test may not pass it. */
  readonly lowestRating?: GaugePressure | undefined;
  readonly atmosphere: AbsolutePressure;
}
