import type { SourceKey, SourceTag } from '../../formula/index.js';
import { frozen } from '../../numeric/frozen.js';

/** A limit of climate or cleanliness that people work to, with where it comes from. */
export interface ClimateLimit {
  /** What is limited. */
  readonly what: string;
  /** Which way the limit holds. */
  readonly sense: 'at least' | 'at most' | 'either way';
  /** As written. */
  readonly value: string;
  /** Who states it; absent where it is practice. */
  readonly source?: SourceKey;
  /** How that source was reached. */
  readonly tag: SourceTag;
  /** What speaks against relying on it. */
  readonly doubt?: string;
}

/** Limits to choose from; a case names its own where strength depends on it. */
export const climateLimits: readonly ClimateLimit[] = /* @__PURE__ */ frozen<readonly ClimateLimit[]>([
  {
    what: 'steel above the dew point',
    sense: 'at least',
    value: '3 K',
    source: 'iso-8502-4',
    tag: 'secondary',
    doubt: 'as pages that cite the standard report it; US practice and sales pages have 5 deltaF, 2.8 K',
  },
  {
    what: 'relative humidity of the air',
    sense: 'at most',
    value: '85 %',
    source: 'iso-8502-4',
    tag: 'secondary',
    doubt: 'which standard states it is not settled: NORSOK M-501 and the IMO standard more surely',
  },
  {
    what: 'dew-point spread to hold a blasted surface',
    sense: 'at least',
    value: '17 deltaF (9.4 K), up to 25 deltaF (14 K)',
    source: 'sspc-tr3',
    tag: 'secondary',
  },
  {
    what: 'relative humidity at the steel against rust bloom',
    sense: 'at most',
    value: '40 to 55 %',
    source: 'sspc-tr3',
    tag: 'secondary',
  },
  {
    what: 'profile under a laminate',
    sense: 'at least',
    value: '60 um',
    tag: 'practice',
    doubt: 'no standard that was read states it; the lower edge of the medium grade of a grit comparator',
  },
  {
    what: 'soluble salts offshore',
    sense: 'at most',
    value: '20 mg/m2',
    source: 'norsok-m-501',
    tag: 'recalled',
  },
  {
    what: 'soluble salts in ballast tanks',
    sense: 'at most',
    value: '50 mg/m2',
    source: 'imo-pspc',
    tag: 'recalled',
  },
  {
    what: 'precision of one salt test between 30 and 80 mg/m2',
    sense: 'either way',
    value: '8.2 mg/m2',
    source: 'nace-sp0508',
    tag: 'secondary',
  },
  {
    what: 'temperature of resin and steel for an epoxy that cures at room temperature',
    sense: 'at least',
    value: '5 degC, for many 10 degC',
    tag: 'practice',
    doubt: 'a cold-curing adhesive did not start at 0 degC and was strongly slowed from 5 to 10 degC',
  },
  {
    what: 'time from preparation to primer',
    sense: 'at most',
    value: '4 h, less when rust blooms',
    tag: 'practice',
  },
]);

/** What this library asks of the steel where the qualification of the system is not at hand. */
export const preparationByClass: readonly {
  readonly serves: string;
  readonly grade: string;
  readonly profile: string;
  readonly tag: SourceTag;
}[] = /* @__PURE__ */ frozen<
  readonly {
    readonly serves: string;
    readonly grade: string;
    readonly profile: string;
    readonly tag: SourceTag;
  }[]
>([
  { serves: 'class 2, class 3 and every leak', grade: 'Sa 2 1/2', profile: 'at least 60 um', tag: 'chosen' },
  {
    serves: 'class 1 without a leak, only if the system was qualified on it',
    grade: 'St 3 or SP 11',
    profile: 'at least 25 um, measured: hand tools leave none by themselves',
    tag: 'chosen',
  },
]);
