import type { Evidence } from '../../formula/index.js';
import type { Amount, Area, Length, Line } from '../../quantity/index.js';
import type { AcceptanceVerdict } from '../verdict.js';

/** What an inspector may find. */
export type FindingFeature =
  | 'sharp corner'
  | 'blister'
  | 'pit'
  | 'foreign matter on the surface'
  | 'wrinkle'
  | 'pinhole'
  | 'crack'
  | 'uneven colour'
  | 'dry spot'
  | 'exposed cut edge'
  | 'delamination'
  | 'foreign matter in the laminate'
  | 'dry fibre'
  | 'fibre direction'
  | 'beyond the prepared area';

/** A measure that a limit is set on. */
export type FindingMeasure = 'width' | 'height' | 'area' | 'radius';

/** What an inspector may find of one sort, and what becomes of a repair beyond it. */
export interface FindingLimit {
  /** What is looked for. */
  readonly feature: FindingFeature;
  /** Where it is looked for. */
  readonly where: 'before wrapping' | 'resin-rich surface' | 'laminate' | 'bond line';
  /** What passes, in words with its numbers. */
  readonly limit: Line;
  /** Measures that must be taken of a finding, each with its greatest value; `radius` has a least. */
  readonly greatest: {
    /** Greatest width. */
    readonly width?: Length;
    /** `wrinkle`: the formula of that name. */
    readonly height?: Length | 'wrinkle';
    /** No deeper than the resin-rich layer is thick, whatever the height may be beside. */
    readonly withinResinRichLayer?: true;
    /** None at an end and none over a leak. */
    readonly area?: Area;
  };
  /** Least radius that is allowed. */
  readonly leastRadius?: Length;
  /** What becomes of a repair that breaks the limit. */
  readonly beyond: Exclude<AcceptanceVerdict, 'accept'>;
  /** What is to be done. */
  readonly remedy: string;
  /** Clause that the limit comes from. */
  readonly clause: string;
  /** How well that clause is known. */
  readonly evidence: Evidence;
}

const CLAUSE = 'table of defect limits (ISO 24817, 9.2; ASME PCC-2, table 401-5.2)';
const AGREED = "cut out and lay anew there, with the owner's agreement";

const LEAST_RADIUS = 0.005 as Length;
const WIDEST = 0.01 as Length;
const HIGHEST = 0.0025 as Length;
const LARGEST = 0.0025 as Area;

const radius: Amount = { name: 'radius', kind: 'length', value: LEAST_RADIUS, toward: 'up' };
const width: Amount = { name: 'width', kind: 'length', value: WIDEST, toward: 'down' };
const height: Amount = { name: 'height', kind: 'length', value: HIGHEST, toward: 'down' };
const share: Amount = { name: 'share of the laminate', kind: 'ratio', value: 0.2, toward: 'down' };
const area: Amount = { name: 'area', kind: 'area', value: LARGEST, toward: 'down' };

/** Limits of what may be seen or heard on a repair. The limits are recalled; the remedy is this library's choice. */
export const findingLimits: readonly FindingLimit[] = [
  {
    feature: 'sharp corner',
    where: 'before wrapping',
    limit: { text: 'radius of {0} or more', amounts: [radius] },
    greatest: {},
    leastRadius: LEAST_RADIUS,
    beyond: 'hold',
    remedy: 'blend or fill the corner before wrapping; take a wrap off that lies over it',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'blister',
    where: 'resin-rich surface',
    limit: { text: 'at most {0} wide and {1} high', amounts: [width, height] },
    greatest: { width: WIDEST, height: HIGHEST },
    beyond: 'repair the repair',
    remedy: 'grind to sound resin and coat again',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'pit',
    where: 'resin-rich surface',
    limit: { text: 'at most {0} wide and {1} deep, and no deeper than the resin-rich layer', amounts: [width, height] },
    greatest: { width: WIDEST, height: HIGHEST, withinResinRichLayer: true },
    beyond: 'repair the repair',
    remedy: 'abrade and fill with resin',
    clause: CLAUSE,
    evidence: {
      tag: 'recalled',
      note: 'that it stays in the resin-rich layer is chosen: a thin laminate is all pit else',
    },
  },
  {
    feature: 'foreign matter on the surface',
    where: 'resin-rich surface',
    limit: { text: 'at most {0} wide and {1} high', amounts: [width, height] },
    greatest: { width: WIDEST, height: HIGHEST },
    beyond: 'repair the repair',
    remedy: 'take it out, abrade and fill with resin',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'wrinkle',
    where: 'resin-rich surface',
    limit: { text: 'no step in thickness above the lesser of {0} and {1} of the laminate', amounts: [height, share] },
    greatest: { height: 'wrinkle' },
    beyond: 'repair the repair',
    remedy: `${AGREED}; the fibres of the wrinkle do not carry`,
    clause: CLAUSE,
    evidence: { tag: 'recalled', note: 'the 20 % stands in one recollection of three' },
  },
  {
    feature: 'pinhole',
    where: 'resin-rich surface',
    limit: { text: 'no deeper than the resin-rich layer' },
    greatest: { withinResinRichLayer: true },
    beyond: 'repair the repair',
    remedy: 'abrade and fill with resin',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'crack',
    where: 'resin-rich surface',
    limit: { text: 'none into the laminate' },
    greatest: { withinResinRichLayer: true },
    beyond: 'reject',
    remedy: 'remove the repair: the laminate is cracked',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'uneven colour',
    where: 'resin-rich surface',
    limit: { text: 'even colour' },
    greatest: {},
    beyond: 'repair the repair',
    remedy: `measure the hardness there: it may be unmixed resin; what is soft is ${AGREED}`,
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'dry spot',
    where: 'resin-rich surface',
    limit: { text: 'none' },
    greatest: {},
    beyond: 'repair the repair',
    remedy: 'abrade and coat with resin',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'exposed cut edge',
    where: 'laminate',
    limit: { text: 'none' },
    greatest: {},
    beyond: 'repair the repair',
    remedy: 'abrade and seal the edge with resin',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'delamination',
    where: 'bond line',
    limit: { text: 'none at the ends and none over a leak; elsewhere at most {0}', amounts: [area] },
    greatest: { area: LARGEST },
    beyond: 'reject',
    remedy: 'remove the repair',
    clause: CLAUSE,
    evidence: { tag: 'recalled', note: 'the area, and that none is allowed over a leak, are weak memories' },
  },
  {
    feature: 'foreign matter in the laminate',
    where: 'laminate',
    limit: { text: 'none' },
    greatest: {},
    beyond: 'reject',
    remedy: 'remove the repair',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'dry fibre',
    where: 'laminate',
    limit: { text: 'none' },
    greatest: {},
    beyond: 'reject',
    remedy: 'remove the repair: fibre without resin carries nothing',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'fibre direction',
    where: 'laminate',
    limit: { text: 'as designed' },
    greatest: {},
    beyond: 'reject',
    remedy: 'remove the repair, or have it designed again for the directions as laid',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
  {
    feature: 'beyond the prepared area',
    where: 'laminate',
    limit: { text: 'the laminate ends on prepared surface' },
    greatest: {},
    beyond: 'repair the repair',
    remedy: 'grind the ends back to the prepared area; what lies outside counts as no overlap',
    clause: CLAUSE,
    evidence: { tag: 'recalled' },
  },
];
