import type { Time } from '../../quantity/index.js';
import { type GateDecision, type GateReason, hardest } from './gate-reason.js';
import { type SurfaceGateInput, surfaceGate } from './surface-gate.js';
import { type WeatherGateInput, weatherGate } from './weather-gate.js';

/** What is known of weather and steel. */
export interface SiteGateInput {
  /** Climate as read and forecast, and what it is judged by. */
  readonly weather: WeatherGateInput;
  /** Absent before the steel is prepared: the gate then judges the weather alone and says so. */
  readonly surface?: SurfaceGateInput | undefined;
}

/** Whether work may start, with every check. */
export interface SiteGate {
  /** The hardest of all checks. */
  readonly decision: GateDecision;
  /** The earliest start that the weather allows within the forecast. */
  readonly earliestStart?: Time;
  /** Every check of the weather and of the steel. */
  readonly reasons: readonly GateReason[];
}

/**
 * Whether work may start at the pipe: go, wait or stop, each with its reasons and what would change it.
 *
 * @throws CalculationError `invalid-input`; `outside-validity` for a climate beyond the dew-point equation
 */
export function siteGate({ weather, surface }: SiteGateInput): SiteGate {
  const climate = weatherGate(weather);
  const steel: readonly GateReason[] = surface === undefined ? [notPrepared] : surfaceGate(surface).reasons;
  const reasons = [...climate.reasons, ...steel];
  const decision = hardest(reasons.map((reason) => reason.decision));
  const { earliestStart } = climate;
  return earliestStart === undefined ? { decision, reasons } : { decision, earliestStart, reasons };
}

const notPrepared: GateReason = {
  check: 'steel prepared',
  decision: 'wait',
  because: { text: 'the prepared steel has not been looked at yet' },
  change: { text: 'prepare the steel, then record grade, profile, cleanness and time' },
};
