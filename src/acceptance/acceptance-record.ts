import type { GaugePressure, Length, Time } from '../quantity/index.js';
import type { Finding } from './findings/judge-findings.js';
import type { HardnessGateInput } from './hardness/hardness-gate.js';
import type { PressureFallVerdict } from './pressure-test/pressure-fall.js';
import type { AcceptanceReason, AcceptanceVerdict, HoldPoint } from './verdict.js';

/** Readings of hardness, and whether it still rises. */
export interface HardnessRecord extends HardnessGateInput {
  /** Whether the hardness no longer rises from one look to the next: then waiting does not help. */
  readonly hasStopped: boolean;
}

/** What the inspection of the finished laminate showed. */
export interface InspectionRecord {
  /** What was seen and heard; an empty list says that all was inspected and nothing was found. */
  readonly findings: readonly Finding[];
  /** Thickness of the resin-rich surface, as measured. */
  readonly resinRichThickness?: Length | undefined;
  /** How the bond was inspected; a second method is another one, and `other` stated twice is not. */
  readonly bondMethods: readonly ('tap test' | 'ultrasonic' | 'thermography' | 'other')[];
}

/** Thickness and overlap of the finished laminate, as measured and as asked for. */
export interface DimensionsRecord {
  /** What the design asks for. */
  readonly requiredThickness: Length;
  /** The lesser of the overlaps at both ends, on prepared surface. */
  readonly leastOverlap: Length;
  /** What the design asks for. */
  readonly requiredOverlap: Length;
}

/** The pressure test as it was made, and what the design asks of it. */
export interface PressureTestRecord {
  /** What the design asks for. */
  readonly requiredPressure: GaugePressure;
  /** Lowest pressure during the hold. */
  readonly lowestPressure: GaugePressure;
  /** How long the design asks for it to be held. */
  readonly requiredHold: Time;
  /** How long it was held. */
  readonly hold: Time;
  /** Whether anything leaked, and where. */
  readonly leak: 'none' | 'at the repair' | 'elsewhere';
  /** What the fall of the pressure was put down to. */
  readonly fall: 'none' | PressureFallVerdict;
}

/** What was measured on the finished repair. What is left out is not yet done, and holds the repair. */
export interface AcceptanceRecord {
  /** Least measured thickness of the laminate. */
  readonly laminateThickness: Length;
  /** Whether the repair lies over a hole. */
  readonly throughWall: boolean;
  /** Readings of hardness; nothing where nobody read it. */
  readonly hardness?: HardnessRecord | undefined;
  /** What was seen and heard at the laminate. */
  readonly inspection?: InspectionRecord | undefined;
  /** Thickness and overlap as measured. */
  readonly dimensions?: DimensionsRecord | undefined;
  /** The test, or the word that none is asked for. */
  readonly pressureTest?: PressureTestRecord | 'not required' | undefined;
}

/** What becomes of a repair, and by which hold points. */
export interface AcceptanceDecision {
  /** The gravest verdict of all hold points. */
  readonly verdict: AcceptanceVerdict;
  /** Each hold point with its own verdict. */
  readonly holdPoints: readonly {
    /** Which one. */
    readonly holdPoint: HoldPoint;
    /** What becomes of the repair by it alone. */
    readonly verdict: AcceptanceVerdict;
  }[];
  /** Why it is not accepted as it is. */
  readonly reasons: readonly AcceptanceReason[];
}
