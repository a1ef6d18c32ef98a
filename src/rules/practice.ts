import type { SourceTag } from '../formula/index.js';
import type {
  Angle,
  ArealWeight,
  Kind,
  Length,
  Modulus,
  Quantity,
  Ratio,
  TemperatureDifference,
  ThermalExpansion,
  Time,
} from '../quantity/index.js';

/** A value that the library brings itself: what it is, how well it is known, and why it is this one. */
export interface PracticeValue<K extends Kind | 'number' | 'count' = Kind | 'number' | 'count'> {
  readonly name: string;
  readonly kind: K;
  readonly value: K extends Kind ? Quantity<K> : number;
  readonly tag: SourceTag;
  readonly because: string;
}

/**
 * Every value of the job that neither the case nor a rule set gives. Each stands here once; a design that takes one lists
 * it, and where the trade has a figure beside the design's own, it is this one.
 */
export const practice = {
  modulusOfSteel: {
    name: 'modulus of the pipe',
    kind: 'modulus',
    value: 207e9 as Modulus,
    tag: 'practice',
    because: 'the usual figure for carbon steel',
  },
  poissonRatioOfSteel: {
    name: "Poisson's ratio of the pipe",
    kind: 'number',
    value: 0.3,
    tag: 'practice',
    because: 'the usual figure for steel',
  },
  expansionOfSteel: {
    name: 'thermal expansion of the pipe',
    kind: 'thermal expansion',
    value: 12e-6 as ThermalExpansion,
    tag: 'practice',
    because: 'the usual figure for carbon steel',
  },
  mixingTime: {
    name: 'time for mixing a batch',
    kind: 'time',
    value: 300 as Time,
    tag: 'practice',
    because: 'about five minutes of stirring to one even colour',
  },
  soakingTime: {
    name: 'soaking of tape that water activates',
    kind: 'time',
    value: 10 as Time,
    tag: 'practice',
    because: 'the customary figure',
  },
  openTime: {
    name: 'time from preparation to the first resin',
    kind: 'time',
    value: 14_400 as Time,
    tag: 'practice',
    because: 'bare steel older than about four hours is prepared again',
  },
  fillerOverLeak: {
    name: 'filler over the leak',
    kind: 'length',
    value: 0.01 as Length,
    tag: 'practice',
    because: 'the customary figure',
  },
  fillerElsewhere: {
    name: 'filler all round',
    kind: 'length',
    value: 0.005 as Length,
    tag: 'practice',
    because: 'the customary figure',
  },
  wrapBeforeDefect: {
    name: 'wrap before the defect',
    kind: 'length',
    value: 0.1 as Length,
    tag: 'practice',
    because: 'the trade begins to wrap about this far before a leak',
  },
  sideLap: {
    name: 'side lap of neighbouring sheets',
    kind: 'length',
    value: 0.025 as Length,
    tag: 'secondary',
    because: 'a figure of coating tapes',
  },
  mostRollsLaidOut: {
    name: 'rolls of tape or bands of sheet that a design lays out one by one',
    kind: 'count',
    value: 500,
    tag: 'chosen',
    because: 'no crew follows a longer list',
  },
  leastSheetWidth: {
    name: 'least width of a sheet',
    kind: 'length',
    value: 0.05 as Length,
    tag: 'chosen',
    because: 'twice the side lap: a narrower sheet would be all lap',
  },
  tapeWaste: {
    name: 'waste of tape or sheet',
    kind: 'ratio',
    value: 0.1 as Ratio,
    tag: 'secondary',
    because: 'the figure of a tape practice note; it costs material only',
  },
  mixWaste: {
    name: 'waste of what is mixed',
    kind: 'ratio',
    value: 0.15 as Ratio,
    tag: 'practice',
    because: 'within the usual 10 to 25 per cent; it costs material only',
  },
  leastRadiusUnderWrap: {
    name: 'radius of every edge and hump under the wrap',
    kind: 'length',
    value: 0.005 as Length,
    tag: 'recalled',
    because: 'what ISO 24817 and ASME PCC-2 ask of the surface before the wrap',
  },
  ratioTolerance: {
    name: 'how far a mixing ratio may be off',
    kind: 'ratio',
    value: 0.05 as Ratio,
    tag: 'practice',
    because: 'the customary figure for two-part resins',
  },
  leastMeanHardness: {
    name: 'share of the qualified hardness that the mean must reach',
    kind: 'ratio',
    value: 0.9 as Ratio,
    tag: 'chosen',
    because: 'no source gives one figure',
  },
  leastSingleHardness: {
    name: 'share of the qualified hardness that each reading must reach',
    kind: 'ratio',
    value: 0.8 as Ratio,
    tag: 'chosen',
    because: 'no source gives one figure',
  },
  shoreReadings: {
    name: 'readings of a Shore durometer',
    kind: 'count',
    value: 5,
    tag: 'practice',
    because: 'the customary number',
  },
  heatCapacityRatioOfTestGas: {
    name: 'ratio of heat capacities of the test gas',
    kind: 'ratio',
    value: 1.4 as Ratio,
    tag: 'secondary',
    because: 'air or nitrogen: the case names no gas',
  },
  dewPointMargin: {
    name: 'steel above the dew point',
    kind: 'temperature difference',
    value: 3 as TemperatureDifference,
    tag: 'practice',
    because: 'the customary figure of coating work',
  },
  highestHumidity: {
    name: 'highest humidity',
    kind: 'ratio',
    value: 0.85 as Ratio,
    tag: 'practice',
    because: 'the customary figure of coating work',
  },
  highestSalts: {
    name: 'soluble salts on the steel',
    kind: 'areal weight',
    value: 20e-6 as ArealWeight,
    tag: 'practice',
    because: 'the stricter of the limits that people work to',
  },
  leastProfile: {
    name: 'profile of the prepared steel',
    kind: 'length',
    value: 60e-6 as Length,
    tag: 'practice',
    because: 'the customary figure where the system was not qualified on another',
  },
  thermometerError: {
    name: 'error of a thermometer whose error nobody states',
    kind: 'temperature difference',
    value: 0.5 as TemperatureDifference,
    tag: 'practice',
    because: 'what a checked contact thermometer reaches',
  },
  leastSafetyFactor: {
    name: 'safety factor on the failure pressure that is taken unasked',
    kind: 'number',
    value: 1.25,
    tag: 'chosen',
    because: 'what a damaged pipe keeps where the code of its line asks for less',
  },
  wallReadingsApart: {
    name: 'how far two readings of one wall may lie apart',
    kind: 'length',
    value: 1e-4 as Length,
    tag: 'chosen',
    because: 'a tenth of a millimetre',
  },
  steepestTape: {
    name: 'steepest lead angle of a tape',
    kind: 'angle',
    value: (Math.PI / 12) as Angle,
    tag: 'chosen',
    because: 'beyond 15 degrees a ply of glass has lost a quarter of its stiffness round the pipe',
  },
  mostListed: {
    name: 'passes and rolls that a plan lists one by one',
    kind: 'count',
    value: 30,
    tag: 'chosen',
    because: 'no crew follows a longer list',
  },
} as const satisfies Readonly<Record<string, PracticeValue>>;
