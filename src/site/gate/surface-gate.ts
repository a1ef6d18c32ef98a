import { nonNegative, oneOf, positive } from '../../formula/index.js';
import {
  type ArealWeight,
  exactly,
  type Length,
  type Line,
  line,
  roundedDown,
  roundedUp,
  type Time,
} from '../../quantity/index.js';
import { type SurfaceGradeName, surfaceGrade, surfaceGradeMeets, surfaceGrades } from '../surface/surface-grade.js';
import { type GateDecision, type GateReason, hardest } from './gate-reason.js';

/** The prepared steel as measured, and what it is held to. */
export interface SurfaceGateInput {
  /** The grade on which the system was qualified; no default. */
  readonly requiredGrade: SurfaceGradeName;
  /** The grade that was reached. */
  readonly grade: SurfaceGradeName;
  /** The profile on which the system was qualified; no default. */
  readonly requiredProfile: Length;
  /** The profile as measured. */
  readonly profile: Length;
  /** Whether no oil or grease was found on the steel. */
  readonly isFreeOfOil: boolean;
  /** Whether the steel has begun to rust again. */
  readonly hasRustBloom: boolean;
  /** Time since the steel was prepared. */
  readonly sincePreparation: Time;
  /** From preparation to primer; commonly 4 h. */
  readonly openTime: Time;
  /** Where salts are limited: 20 mg/m2 offshore, 50 in ballast tanks. */
  readonly saltLimit?: ArealWeight | undefined;
  /** Every reading; their mean is judged. */
  readonly saltReadings?: readonly ArealWeight[] | undefined;
  /** Of one reading; 8.2 mg/m2 when absent. */
  readonly saltPrecision?: ArealWeight | undefined;
}

/** Whether the steel is ready, with every check. */
export interface SurfaceGate {
  /** The hardest of all checks. */
  readonly decision: GateDecision;
  /** Every check, in a fixed order. */
  readonly reasons: readonly GateReason[];
}

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
    because: {
      text: `the steel is ${grade} (${surfaceGrade(grade)?.meaning}); ${requiredGrade} is required${otherMethod ? ', which is made by another method, and the two are not compared' : ''}`,
    },
    change: {
      text: meets
        ? 'look again before each layer'
        : `prepare to ${requiredGrade}, or show that the system was qualified on ${grade}`,
    },
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
    because: line(
      'the profile is {0}; at least {1} are required',
      roundedDown('profile', 'length', profile),
      roundedUp('least profile', 'length', requiredProfile),
    ),
    change: {
      text: meets
        ? 'look again if the steel is worked on'
        : 'blast or roughen again; measure by the same method as in qualification',
    },
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
    because: { text: meets ? 'no oil, no grease, no rust bloom' : faults.join(', ') },
    change: { text: meets ? 'look again before each layer' : 'degrease first, then prepare again' },
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
    because: line(
      'prepared {0} ago; {1} are allowed',
      roundedUp('time since preparation', 'time', sincePreparation),
      roundedDown('open time', 'time', openTime),
    ),
    change: meets
      ? line('prime within {0}', roundedDown('time that is left', 'time', openTime - sincePreparation))
      : { text: 'prepare again' },
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
    const because = { text: 'salts are limited and were not measured' };
    return { ...check, decision: 'wait', because, change: { text: 'measure them' } };
  }
  const mean = saltReadings.reduce((sum, reading) => sum + reading, 0) / saltReadings.length;
  const reach = saltPrecision / Math.sqrt(saltReadings.length);
  const because = saltsAgainst(saltReadings.length, mean, reach, saltLimit);
  if (mean + reach <= saltLimit) {
    return { ...check, value: mean, decision: 'go', because, change: { text: 'measure again if the steel gets wet' } };
  }
  if (mean - reach > saltLimit) {
    const change = { text: 'wash with clean water, dry, prepare and measure again' };
    return { ...check, value: mean, decision: 'stop', because, change };
  }
  const change = { text: 'take more readings, since these lie too near the limit to decide; or wash' };
  return { ...check, value: mean, decision: 'wait', because, change };
}

function saltsAgainst(count: number, mean: number, reach: number, limit: ArealWeight): Line {
  return line(
    `${count === 1 ? 'one reading is' : '{3} readings have a mean of'} {0}, good to {1} either way; at most {2} are allowed`,
    exactly('salts', 'areal weight', mean),
    roundedUp('precision of the salts', 'areal weight', reach),
    roundedDown('limit of the salts', 'areal weight', limit),
    exactly('readings', 'count', count),
  );
}
