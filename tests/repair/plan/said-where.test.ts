import { describe, expect, it } from 'vitest';
import type { StepId } from '../../../src/repair/index.js';
import { allNamed, drawnJobs, type Job, jobOf } from './of-every-kind.js';

/**
 * What a plan says to the crew exactly where it bears on the job: told where it does not, a warning is no longer read; not
 * told where it does, somebody is hurt.
 */

type Where = (job: Job) => boolean;

const caseOf = ({ design }: Job) => design.case;
const isEmpty: Where = (job) => {
  const { line } = caseOf(job);
  return line.state === 'empty, dry, isolated, vented' || line.pressure === 0;
};
/** A seal that is stated for a wall that does not leak is put on by nobody. */
const sealOf = (job: Job) => (caseOf(job).defect.kind === 'metal loss' ? undefined : caseOf(job).seal);
const isSealed: Where = (job) => sealOf(job) !== undefined;
const bandsStay: Where = (job) => sealOf(job)?.bands === 'left';
const isTape: Where = (job) => caseOf(job).wrap.form === 'tape';
const isMixed: Where = (job) => caseOf(job).resin !== 'none';
const isFilled: Where = (job) => caseOf(job).filler !== 'none';
const leaks: Where = ({ design }) => design.found.throughWall;
const hazards = (job: Job) => caseOf(job).service.hazards;
const testOf = (job: Job) => caseOf(job).acceptance?.pressureTest;
const mediumOf = (job: Job): string | undefined => {
  const test = testOf(job);
  return test === undefined || test === 'none' ? test : test.medium;
};
/** The rule sets test at 1.1 times the design pressure or more; what the laminate resists that day is the design's. */
const isBeyond: Where = ({ design }) => {
  const { pressure, resistance } = design.acceptance.pressureTest;
  return pressure > resistance * (1 + 1e-9);
};
const isTested: Where = (job) => ['liquid', 'gas'].includes(mediumOf(job) ?? '') && !isBeyond(job);
const isFresh: Where = (job) => {
  const test = testOf(job);
  return test !== undefined && test !== 'none' && test.medium === 'liquid' && test.liquid === 'fresh water';
};
const isHeldUp: Where = ({ design }) => design.rolls.fits === false;
const hasBands: Where = ({ design }) => design.laminate.joints !== undefined;
const isPreparedAgain: Where = ({ design }) => {
  const at = (id: StepId) => design.timeline.steps.find((step) => step.id === id);
  const bare = (at('wrap')?.startsAt ?? 0) - (at('surface')?.endsAt ?? 0);
  const open = design.timeline.steps
    .slice(design.timeline.steps.findIndex(({ id }) => id === 'gate'))
    .some(({ id, duration }) => ['filler', 'filler-wait'].includes(id) && !duration.known);
  return bare > 4 * 3600 || open;
};
const nowhere: Where = () => false;
const no =
  (where: Where): Where =>
  (job) =>
    !where(job);
const both =
  (...all: readonly Where[]): Where =>
  (job) =>
    all.every((where) => where(job));
const either =
  (...all: readonly Where[]): Where =>
  (job) =>
    all.some((where) => where(job));

const hardnessOf = (job: Job): number => caseOf(job).acceptance?.qualifiedHardness ?? Number.NaN;
const isHardBy = (job: Job, scale: string): boolean => caseOf(job).acceptance?.hardnessScale === scale;

/** What, at which step, and where. */
const rows: readonly (readonly [StepId, RegExp, Where])[] = [
  ['permit', /^Hold the permit\. Isolate the line, lock and tag it\./, isEmpty],
  ['permit', /^LINE STAYS UNDER PRESSURE, \{0\}/, no(isEmpty)],
  ['permit', /hazards: none found\.$/, (job) => hazards(job).length === 0],
  ['permit', /hazards: (?!none).*flammable/, (job) => hazards(job).includes('flammable')],
  ['permit', /^Test the air/, (job) => caseOf(job).service.phase !== 'liquid' || hazards(job).length > 0],
  ['permit', /^No hot work and no open heater/, (job) => hazards(job).includes('flammable')],
  ['permit', /^Procedure of the site: /, (job) => caseOf(job).line.state !== 'empty, dry, isolated, vented'],
  ['permit', /^The control room knows/, no(isEmpty)],
  ['permit', /^Keep out of the line of the jet/, both(isSealed, no(isEmpty))],
  ['permit', /^The gauge reads no pressure/, isEmpty],
  ['permit', /^The gauge reads \{0\} or less/, no(isEmpty)],
  ['permit', /^Any pressure, flow or weep/, isEmpty],
  ['permit', /^More than \{0\}, or a pressure that rises/, no(isEmpty)],
  ['permit', /when the laminate burns off.*Blank: nobody starts/, (job) => caseOf(job).service.safetyCritical],

  ['survey', /^Hole no wider than \{0\}/, (job) => caseOf(job).defect.holeDiameter !== undefined],
  ['survey', /^Slot no longer than \{0\} along and \{1\} round/, (job) => caseOf(job).defect.slot !== undefined],
  ['survey', /^Hole from the middle of the defect/, leaks],
  [
    'survey',
    /^Scale or sludge at the hole/,
    (job) => hazards(job).length > 0 && (leaks(job) || caseOf(job).defect.cause !== 'external corrosion'),
  ],

  ['rough-cleaning', /^Dry it with cloths\.$/, both(isSealed, isEmpty)],
  ['rough-cleaning', /^Dry it with cloths as far as the leak lets you/, both(isSealed, no(isEmpty))],
  ['rough-cleaning', /on firm metal, without flakes/, isSealed],
  ['rough-cleaning', /^Wall that gives under the scraper/, isSealed],
  ['seal', /^The line is empty and vented/, both(isSealed, isEmpty)],
  ['seal', /^Line pressure \{0\} or less/, both(isSealed, no(isEmpty))],
  [
    'seal',
    /^Bend the sheet to the pipe: roll it first/,
    // Bent flat to the pipe, a wide sheet is at E t / ((1 - nu^2) D) at its skin.
    (job) => {
      const sheet = sealOf(job)?.sheet;
      if (sheet === undefined) return false;
      const { modulus, thickness, poissonRatio, yieldStrength } = sheet;
      const outside = job.design.found.outsideDiameter + thickness;
      return (modulus * thickness) / (1 - poissonRatio ** 2) / outside > yieldStrength;
    },
  ],
  ['seal', /^Bend the sheet to the pipe/, isSealed],
  ['seal', /sheet on it, band over it\.$/, (job) => sealOf(job)?.band.count === 1],
  ['seal', /sheet on it, 2 bands side by side\.$/, (job) => sealOf(job)?.band.count === 2],
  ['seal', /^Tighten to \{0\}/, both(isSealed, no(isEmpty))],
  ['seal', /^Press the pad on within \{0\} of the start of kneading/, isSealed],
  ['seal', /^No damp at the pad\./, both(isSealed, isEmpty)],
  ['seal', /the gauge stands still/, both(isSealed, no(isEmpty))],
  ['seal', /^\d of band, \{0\} each/, isSealed],
  ['putty', /^Leave the bands? alone/, isSealed],
  ['putty', /^A gloved thumb leaves no print/, isSealed],
  ['putty', /^Dry all round/, isSealed],
  ['putty', /^Time alone is not enough/, isSealed],
  ['putty', /^Damp: back to the seal/, isSealed],
  ['putty', /^The bands stay, \{0\} of pipe/, bandsStay],
  ['putty', /^When the putty is firm, take the bands off\. Damp now/, both(isSealed, no(bandsStay), isEmpty)],
  [
    'putty',
    /^When the putty is firm, take the bands off, at \{0\} or less/,
    both(isSealed, no(bandsStay), no(isEmpty)),
  ],
  ['putty', /^Measure what still covers the steel/, both(isSealed, no(bandsStay))],

  ['surface', /^Work round the seal: nobody touches putty and sheet[,.]/, both(isSealed, no(bandsStay))],
  ['surface', /^Work round the seal: nobody touches putty, sheet and bands/, bandsStay],
  ['surface', /^Work round the seal.*which hold the pressure/, both(isSealed, no(isEmpty))],
  ['surface', /\(as the system was qualified\)/, (job) => caseOf(job).site.surface?.qualified !== undefined],
  [
    'surface',
    /\(what every leak asks for\)/,
    (job) => caseOf(job).site.surface?.qualified === undefined && leaks(job) && caseOf(job).repair.class === 1,
  ],
  [
    'surface',
    /\(what class [123] asks for\)/,
    (job) => caseOf(job).site.surface?.qualified === undefined && !(leaks(job) && caseOf(job).repair.class === 1),
  ],
  ['surface', /^Hand and power tools reach St 2 or St 3/, () => true],
  ['surface', /^First resin within \{0\}/, () => true],
  ['surface-again', /on both sides of the filler is older than \{0\}: prepare it again/, isPreparedAgain],
  ['surface-again', /^Bare steel older than \{0\}, or with any bloom/, no(isPreparedAgain)],

  ['gate', /^The forecast keeps all this for \{0\}/, ({ design }) => design.site.holdTime.known],
  ['gate', /^The forecast keeps all this to the end of the cure, longer/, ({ design }) => !design.site.holdTime.known],
  ['gate', /^Not counted in it.*"surface-again"/, both(isFilled, isPreparedAgain)],
  ['gate', /^Not counted in it.*"wrap"/, (job) => caseOf(job).crew === undefined],
  ['gate', /^Not counted in it.*"(?:permit|survey|surface|gate|filler-wait|cure|inspection|return)"/, nowhere],
  ['gate', /^Steel \{0\} or more above the frost point/, ({ design }) => (design.site.highestDewPoint ?? 300) < 273.15],
  ['gate', /^Steel \{0\} or more above the dew point/, ({ design }) => (design.site.highestDewPoint ?? 0) >= 273.15],

  [
    'filler',
    /^It lies under the whole wrap/,
    (job) => isFilled(job) && (caseOf(job).filler as never)['underWholeWrap'] === true,
  ],
  ['filler', /^It ends there/, (job) => isFilled(job) && (caseOf(job).filler as never)['underWholeWrap'] !== true],
  ['filler', /^Fasteners under it stand off/, both(isFilled, bandsStay)],
  ['filler', /^A fastener that stands out/, both(isFilled, bandsStay)],
  [
    'filler',
    /^A place that takes more than \{0\}/,
    (job) => isFilled(job) && (caseOf(job).filler as never)['greatestLift'] !== undefined,
  ],
  ['filler', /^Used up within \{0\} of the start of mixing/, isFilled],

  ['wrap', /^Start \{0\} before the centre/, () => true],
  ['wrap', /^One crew lays the tape/, (job) => isTape(job) && (caseOf(job).crew?.crews ?? 1) > 1],
  ['wrap', /^2 crews side by side/, (job) => !isTape(job) && caseOf(job).crew?.crews === 2],
  ['wrap', /^Soak each roll for \{0\}/, (job) => (caseOf(job).crew?.soakTime ?? 0) > 0],
  [
    'wrap',
    /^Tape that water activates: soak about/,
    (job) => !isMixed(job) && caseOf(job).crew?.soakTime === undefined,
  ],
  ['wrap', /^Bare steel older than \{0\} is prepared again/, () => true],
  ['wrap', /^Wet the steel, then each layer/, isMixed],
  ['wrap', /^\{0\} of (?:tape|sheet)\.$/, no(isMixed)],
  ['wrap', /^\{0\} of base with \{1\} of hardener/, isMixed],
  ['wrap', /^Use each roll up before the next/, isTape],
  ['wrap', /^Roll 1 ends in pass/, both(isTape, ({ design }) => design.rolls.rolls.length > 0)],
  ['wrap', /^Each turn covers \{0\} of the one before/, isTape],
  ['wrap', /^One pass: it begins and ends/, ({ design: { wrap } }) => wrap.form === 'tape' && wrap.passes === 1],
  ['wrap', /^\d+ passes to and fro: each begins/, ({ design: { wrap } }) => wrap.form === 'tape' && wrap.passes > 1],
  ['wrap', /^Pass 1, forward: \{0\} of tape/, isTape],
  ['wrap', /^Band 1: \{0\} of sheet/, both(no(isTape), no(hasBands))],
  ['wrap', /^Layer 1: bands begin/, hasBands],
  ['wrap', /^\d+ layers of one band/, both(no(isTape), no(hasBands))],
  ['wrap', /^\d+ layers, laid one after another/, hasBands],
  ['wrap', /^Each band laps its neighbour by \{0\}/, hasBands],
  ['wrap', /measured along the outside of the bend/, (job) => isTape(job) && caseOf(job).fitting !== 'none'],
  ['wrap', /^The turns fan out/, (job) => isTape(job) && caseOf(job).fitting !== 'none'],
  ['wrap', /^Steel that shows between two turns/, (job) => isTape(job) && caseOf(job).fitting !== 'none'],
  ['wrap', /^All passes end together/, ({ design }) => design.rolls.stagger === 0],
  ['wrap', /^Each pass starts and ends \{0\} inside/, both(isTape, ({ design }) => design.rolls.stagger > 0)],
  ['wrap', /^Each layer starts and ends \{0\} inside/, both(no(isTape), ({ design }) => design.rolls.stagger > 0)],
  ['wrap', /laid within \{1\}.*The case states no crew/, (job) => caseOf(job).crew === undefined],
  ['wrap', /laid within \{1\}.*this crew takes \{2\}/, (job) => caseOf(job).crew !== undefined],
  ['wrap', /^DOES NOT FIT/, isHeldUp],
  [
    'wrap',
    /nothing that can be computed helps/,
    ({ design }) => isHeldUp({ design } as Job) && Object.keys(design.rolls.remedies ?? {}).length === 0,
  ],
  ['wrap', /^What helps: shorter/, ({ design }) => design.rolls.remedies?.longestCharge !== undefined],
  ['wrap', /^What helps: steel and air/, ({ design }) => design.rolls.remedies?.coolerThan !== undefined],
  ['wrap', /^What helps: which the forecast has/, ({ design }) => design.rolls.remedies?.coolerHour !== undefined],

  ['cure', /^NO ACCEPTANCE/, (job) => caseOf(job).acceptance?.qualifiedHardness === undefined],
  ['cure', /mean \{0\} .* or more, none below \{1\}/, (job) => caseOf(job).acceptance?.qualifiedHardness !== undefined],
  ['cure', /^5 readings on a cold, dry surface/, (job) => isHardBy(job, 'Shore D')],
  // ASTM D2583 asks for 29 from a hardness of 30 on, and knows nothing below 20.
  ['cure', /^29 readings on a cold, dry surface/, (job) => isHardBy(job, 'Barcol') && hardnessOf(job) > 30],
  ['cure', /^Readings as the standard of the scale asks/, (job) => isHardBy(job, 'Barcol') && hardnessOf(job) < 20],

  ['cure', /^signed by nobody may sign yet$/, (job) => caseOf(job).acceptance === undefined],
  ['cure', /^signed by inspector$/, (job) => caseOf(job).acceptance !== undefined],

  // Two ounces on more than 0.08 in hear nothing.
  [
    'inspection',
    /^The laminate is too thick for the tap test alone/,
    ({ design }) => design.laminate.laidThickness > 0.08 * 0.0254,
  ],
  ['inspection', /^Tap test all over/, () => true],

  ['pressure-test', /^No pressure test: raise the line in steps/, (job) => mediumOf(job) === 'none'],
  [
    'pressure-test',
    /the owner decides\. The level would be \{0\} for \{1\}\.$/,
    (job) => mediumOf(job) === undefined && !isBeyond(job),
  ],
  [
    'pressure-test',
    /^No leak at any step/,
    (job) => mediumOf(job) === 'none' || (mediumOf(job) === undefined && !isBeyond(job)),
  ],
  [
    'pressure-test',
    /^Any leak at the repair: release/,
    (job) => mediumOf(job) === 'none' || (mediumOf(job) === undefined && !isBeyond(job)),
  ],
  ['pressure-test', /^Nobody raises the line to \{0\}/, (job) => mediumOf(job) !== 'none' && isBeyond(job)],
  ['pressure-test', /^The designer has laid down another ply/, (job) => mediumOf(job) !== 'none' && isBeyond(job)],
  ['pressure-test', /^More than \{0\} in the line at any time/, (job) => mediumOf(job) !== 'none' && isBeyond(job)],
  ['pressure-test', /^More than \{0\} on the gauge, .*: let it down at once/, isTested],
  ['pressure-test', /^Raise it in steps to \{0\}; hold \{1\}/, isTested],
  ['pressure-test', /^The line still holds /, both(isTested, no(isEmpty))],
  ['pressure-test', /^The line still holds its contents: nobody pumps/, both(isTested, no(isEmpty))],
  ['pressure-test', /^Fill with \{0\} of fresh water/, both(isTested, isFresh)],
  [
    'pressure-test',
    /^Fill with \{0\} of the test liquid/,
    both(isTested, no(isFresh), (job) => mediumOf(job) === 'liquid'),
  ],
  ['pressure-test', /^About \{0\} more go in/, both(isTested, isFresh)],
  ['pressure-test', /^Full and shut off, the line rises by \{0\}/, both(isTested, isFresh)],
  ['pressure-test', /^Stored energy \{0\}, without air/, both(isTested, (job) => mediumOf(job) === 'liquid')],
  [
    'pressure-test',
    /^GAS: stored energy \{0\}, as \{1\} of TNT\. Nobody within \{2\}/,
    both(isTested, (job) => mediumOf(job) === 'gas'),
  ],

  ['pressure-test', /^Instead of a pressure test$/, (job) => mediumOf(job) === 'none'],
  ['pressure-test', /^Pressure test, not decided$/, (job) => mediumOf(job) === undefined && !isBeyond(job)],
  ['pressure-test', /^STOP: no pressure test/, (job) => mediumOf(job) !== 'none' && isBeyond(job)],
  ['pressure-test', /^Pressure test$/, isTested],
  ['pressure-test', /^signed by nobody may sign yet$/, (job) => mediumOf(job) !== 'none' && isBeyond(job)],

  ['return', /^signed by nobody may sign yet$/, (job) => caseOf(job).acceptance === undefined],
  ['surface-again', /^Prepare the bare steel again$/, isPreparedAgain],
  ['surface-again', /^Look at the bare steel again$/, no(isPreparedAgain)],
  ['wrap', /^signed by foreman and inspector$/, () => true],

  ['return', /by the interval of the owner/, (job) => caseOf(job).repair.inspectionInterval !== undefined],
  ['return', /: \d{4}-\d\d-\d\d at the latest\.$/, (job) => caseOf(job).date !== undefined],
  ['return', /^No tag at the wrap/, () => true],
  ['return', /^No day for the wall at the rim of the bands/, bandsStay],
  ['return', /^No rule at the valve for letting the gas down/, (job) => caseOf(job).service.phase !== 'liquid'],
  [
    'return',
    /^Not stated: acceptance\.qualifiedHardness; ask /,
    (job) => caseOf(job).acceptance?.qualifiedHardness === undefined,
  ],
];

const says = ({ plan }: Job, id: StepId, what: RegExp): boolean => {
  const step = plan.steps.find((each) => each.id === id);
  if (step === undefined) return false;
  const { title, does, uses, practice, goes, stops, signs } = step;
  const texts = [does, uses, practice, goes, stops].flat().map(({ text }) => text);
  return [title, ...texts, `signed by ${signs}`].some((text) => what.test(text));
};

/** What is said in a job that it does not bear on, or not said in one that it does. */
const misplaced = (jobs: readonly (readonly [string, Job])[], told: typeof rows): string[] =>
  jobs.flatMap(([name, job]) =>
    told.flatMap(([id, what, where]) =>
      says(job, id, what) === where(job) ? [] : [`${name}, at ${id}: ${what} ${where(job) ? 'is missing' : 'is said'}`],
    ),
  );

/** Alerts at the head of the plan, and where. */
const alerts: readonly (readonly [RegExp, Where])[] = [
  [/^LINE STAYS UNDER PRESSURE, \{0\}/, no(isEmpty)],
  [/^The wrap DOES NOT FIT/, isHeldUp],
  [/^NO PRESSURE TEST at the level/, (job) => mediumOf(job) !== 'none' && isBeyond(job)],
  [/^No qualified hardness is stated/, (job) => caseOf(job).acceptance?.qualifiedHardness === undefined],
  [/^The case states no crew/, (job) => caseOf(job).crew === undefined],
  [
    /^The wrap starts \{0\} after the steel was prepared/,
    ({ design }) => {
      const at = (id: StepId) => design.timeline.steps.find((step) => step.id === id);
      return (at('wrap')?.startsAt ?? 0) - (at('surface')?.endsAt ?? 0) > 4 * 3600;
    },
  ],
  [/was entered/, nowhere],
];

/** What is brought, and for which job. */
const brought: readonly (readonly [RegExp, Where])[] = [
  [/^contact thermometer, air thermometer and hygrometer/, () => true],
  [/^profile gauge/, () => true],
  [/^kit for soluble salts/, () => true],
  [/^pots, stirrers/, () => true],
  [/^measuring tape, marker/, () => true],
  [/^tap hammer$/, () => true],
  [/^hardness tester$/, (job) => caseOf(job).acceptance?.qualifiedHardness === undefined],
  [
    /^hardness tester, Shore D$/,
    (job) =>
      caseOf(job).acceptance?.qualifiedHardness !== undefined && caseOf(job).acceptance?.hardnessScale === 'Shore D',
  ],
  [/^scale$/, either(isMixed, isFilled)],
  [/^torque /, both(isSealed, no(isEmpty))],
  [/^pump, gauge, thermometer/, (job) => ['liquid', 'gas'].includes(mediumOf(job) ?? '')],
  [/^spark-free tools/, (job) => hazards(job).includes('flammable')],
  [/^.*, (?:tape|sheet)$/, () => true],
  [/, tape$/, isTape],
  [/^isolating layer: /, (job) => caseOf(job).laminate.isolatingLayer !== undefined],
  [/putty/, isSealed],
  [/^band$/, isSealed],
  [/^fastener$/, isSealed],
  [/^backing sheet$/, isSealed],
  [/^degreaser/, () => true],
  [/^gloves/, () => true],
];

/** Alerts that are missing or too many, and things to bring that are not needed, missing or brought twice. */
const misplacedAtEnds = (jobs: readonly (readonly [string, Job])[]): string[] =>
  jobs.flatMap(([name, job]) => {
    const names = [...job.plan.materials, ...job.plan.tools].map((item) => item.name);
    const warned = job.plan.alerts.map(({ text }) => text);
    return [
      ...alerts.flatMap(([what, where]) =>
        warned.filter((text) => what.test(text)).length === Number(where(job)) ? [] : [`${name}, alert ${what}`],
      ),
      ...brought.flatMap(([what, where]) =>
        names.filter((each) => what.test(each)).length === Number(where(job)) ? [] : [`${name}, brings ${what}`],
      ),
    ];
  });

describe('a plan says, warns and brings exactly where it bears on the job', () => {
  it('in jobs of every kind, each line in one of them', () => {
    const jobs = allNamed.map((name) => [name, jobOf(name)] as const);
    expect([...misplaced(jobs, rows), ...misplacedAtEnds(jobs)]).toEqual([]);
    const unmet = [...rows.map(([id, what, where]) => [`${id} ${what}`, where] as const), ...alerts, ...brought].filter(
      ([, where]) => where !== nowhere && !jobs.some(([, job]) => where(job)),
    );
    expect(unmet).toEqual([]);
  });

  it('in jobs drawn at random', () => {
    const jobs = drawnJobs(30).map((job, index) => [`drawn ${index}`, job] as const);
    expect([...misplaced(jobs, rows), ...misplacedAtEnds(jobs)]).toEqual([]);
  });
});
