import { nonNegative, oneOf, positive } from '../../formula/index.js';
import type { ArealWeight, Length, Time } from '../../quantity/index.js';
import { type SurfaceGradeName, surfaceGrade, surfaceGradeMeets, surfaceGrades } from '../surface/surface-grade.js';
import { type GateDecision, type GateReason, hardest } from './gate-reason.js';

export interface SurfaceGateInput {
  /** The grade on which the system was qualified; no default. */
  readonly requiredGrade: SurfaceGradeName;
  readonly grade: SurfaceGradeName;
  /** The profile on which the system was qualified; no default. */
  readonly requiredProfile: Length;
  readonly profile: Length;
  readonly isFreeOfOil: boolean;
  readonly hasRustBloom: boolean;
  readonly sincePreparation: Time;
  /** From preparation to primer; commonly 4 h. */
  readonly openTime: Time;
  /** Where salts are limited: 20 mg/m2 offshore, 50 in ballast tanks. */
  readonly saltLimit?: ArealWeight | undefined;
  readonly saltReadings?: readonly ArealWeight[] | undefined;
  /** Of one reading; 8.2 mg/m2 when absent. */
  readonly saltPrecision?: ArealWeight | undefined;
}

export interface SurfaceGate {
  readonly decision: GateDecision;
  readonly reasons: readonly GateReason[];
}

const micrometres = (length: number): string => `${(length * 1e6).toFixed(0)} um`;
const hours = (time: number): string => `${(time / 3600).toFixed(1)} h`;
const milligrams = (weight: number): string => `${(weight * 1e6).toFixed(1)} mg/m2`;

/**
 * Whether the steel is ready for the resin: as it was in qualification, clean, fresh and free of salts.
 *
 * @throws CalculationError `invalid-input`
 */
export function surfaceGate(input: SurfaceGateInput): SurfaceGate {
  const names = surfaceGrades.map(({ grade }) => grade);
  oneOf(input.requiredGrade, names, 'requiredGrade');
  oneOf(input.grade, names, 'grade');
  positive(input.requiredProfile, 'requiredProfile', 'm');
  nonNegative(input.profile, 'profile', 'm');
  nonNegative(input.sincePreparation, 'sincePreparation', 's');
  positive(input.openTime, 'openTime', 's');
  const reasons = [gradeReason(input), profileReason(input), cleanReason(input), freshReason(input)];
  const salts = saltReason(input);
  if (salts !== undefined) reasons.push(salts);
  return { decision: hardest(reasons.map(({ decision }) => decision)), reasons };
}

function gradeReason({ grade, requiredGrade }: SurfaceGateInput): GateReason {
  const meets = surfaceGradeMeets(grade, requiredGrade);
  const otherMethod = surfaceGrade(grade)?.method !== surfaceGrade(requiredGrade)?.method;
  return {
    check: 'preparation grade',
    decision: meets ? 'go' : 'stop',
    because: `the steel is ${grade} (${surfaceGrade(grade)?.meaning}); ${requiredGrade} is required${otherMethod ? ', which is made by another method, and the two are not compared' : ''}`,
    change: meets
      ? 'look again before each layer'
      : `prepare to ${requiredGrade}, or show that the system was qualified on ${grade}`,
  };
}

function profileReason({ profile, requiredProfile }: SurfaceGateInput): GateReason {
  const meets = profile >= requiredProfile;
  return {
    check: 'profile',
    decision: meets ? 'go' : 'stop',
    value: profile,
    limit: requiredProfile,
    kind: 'length',
    because: `the profile is ${micrometres(profile)}; at least ${micrometres(requiredProfile)} are required`,
    change: meets
      ? 'look again if the steel is worked on'
      : 'blast or roughen again; measure by the same method as in qualification',
  };
}

function cleanReason({ isFreeOfOil, hasRustBloom }: SurfaceGateInput): GateReason {
  const meets = isFreeOfOil && !hasRustBloom;
  const faults = [
    ...(isFreeOfOil ? [] : ['oil or grease is on the steel']),
    ...(hasRustBloom ? ['rust has bloomed'] : []),
  ];
  return {
    check: 'clean and bright',
    decision: meets ? 'go' : 'stop',
    because: meets ? 'no oil, no grease, no rust bloom' : faults.join(', '),
    change: meets ? 'look again before each layer' : 'degrease first, then prepare again',
  };
}

function freshReason({ sincePreparation, openTime }: SurfaceGateInput): GateReason {
  const meets = sincePreparation <= openTime;
  return {
    check: 'freshly prepared',
    decision: meets ? 'go' : 'stop',
    value: sincePreparation,
    limit: openTime,
    kind: 'time',
    because: `prepared ${hours(sincePreparation)} ago; ${hours(openTime)} are allowed`,
    change: meets ? `prime within ${hours(openTime - sincePreparation)}` : 'prepare again',
  };
}

/** The mean must keep the limit at both ends of its precision; between, more readings decide. */
function saltReason(input: SurfaceGateInput): GateReason | undefined {
  const { saltLimit, saltReadings = [], saltPrecision = 8.2e-6 as ArealWeight } = input;
  if (saltLimit === undefined) return undefined;
  positive(saltLimit, 'saltLimit', 'kg/m2');
  nonNegative(saltPrecision, 'saltPrecision', 'kg/m2');
  saltReadings.forEach((reading, index) => {
    nonNegative(reading, `saltReadings[${index}]`, 'kg/m2');
  });
  const check = { check: 'soluble salts', limit: saltLimit, kind: 'areal weight' } as const;
  if (saltReadings.length === 0) {
    return { ...check, decision: 'wait', because: 'salts are limited and were not measured', change: 'measure them' };
  }
  const mean = saltReadings.reduce((sum, reading) => sum + reading, 0) / saltReadings.length;
  const reach = saltPrecision / Math.sqrt(saltReadings.length);
  const because = `${saltReadings.length === 1 ? 'one reading is' : `${saltReadings.length} readings have a mean of`} ${milligrams(mean)}, good to ${milligrams(reach)} either way; at most ${milligrams(saltLimit)} are allowed`;
  if (mean + reach <= saltLimit) {
    return { ...check, value: mean, decision: 'go', because, change: 'measure again if the steel gets wet' };
  }
  if (mean - reach > saltLimit) {
    return {
      ...check,
      value: mean,
      decision: 'stop',
      because,
      change: 'wash with clean water, dry, prepare and measure again',
    };
  }
  return {
    ...check,
    value: mean,
    decision: 'wait',
    because,
    change: 'take more readings: so near the limit these decide nothing; or wash',
  };
}
