import { readFileSync } from 'node:fs';

/**
 * Fields that a mend asks for and the schema does not know yet: what each holds, and who needs it. The names are proposals;
 * a field that is called otherwise is renamed here and nowhere else.
 */
export const proposed = {
  /** Largest extent of the sheet on the pad: nothing bonds under it. */
  sheetSize: 'seal.sheet.across',
  /** `removed before the wrap` or `left`: a band that stays keeps the laminate off the pipe all round. */
  bands: 'seal.bands',
  /** `{ energyReleaseRate, footprint }`, found over a seal of that size: it counts for a footprint at most as large. */
  energyOverSeal: 'laminate.energyReleaseRateOverSeal',
  /** Temperature of the long-term tests: above it their strength says nothing. */
  longTermTemperature: 'laminate.longTermStrength.testTemperature',
  /** `{ testTemperature, strength }` of a second series: between the two the strength is interpolated. */
  longTermSecond: 'laminate.longTermStrength.second',
  /** `{ contents, temperature, statedBy }`: what the cured laminate stands, where the contents reach it. */
  resinResists: 'laminate.resists',
  /** The same of the putty, which the contents always reach. */
  puttyResists: 'seal.putty.resists',
  /** Lowest temperature at which the system was qualified: below it there is no word about it. */
  lowestQualified: 'laminate.lowestTemperature',
  /** `fresh water` or `other`: what the line is filled with for the test; only fresh water has a known density. */
  testLiquid: 'acceptance.pressureTest.liquid',
  /** Lowest rating of a flange, valve or hose within the length under test: the test may not pass it. */
  lowestRating: 'acceptance.pressureTest.lowestRating',
  /** `included` where the design pressure holds the surge, else the surge pressure. */
  surge: 'service.surge',
  /** `none`, or what is known of cracks: `{ environment, test }`; sour or stress-corrosion service needs a crack test. */
  cracking: 'service.cracking',
  /** Distance from the edge of the loss to the nearest weld, branch, support or flange. */
  nearestAttachment: 'defect.nearestAttachment',
  /** `glass` or `carbon`: carbon on steel needs an isolating layer. */
  fibre: 'laminate.fibre',
  /** Greatest thickness of filler that is placed at once: a thicker pour runs away. */
  greatestLift: 'filler.greatestLift',
  /** Temperature at which the sample of the glass transition was cured: a colder cure leaves a lower one. */
  transitionCure: 'laminate.transitionCuredAt',
} as const;

/** A case as it stands in a JSON file. */
export type CaseFile = Readonly<Record<string, unknown>>;

/** The fields of a case by path, `defect.growth.depth`; a number is the place in a list. */
export type Paths = Readonly<Record<string, unknown>>;

/** The text of a case, set path by path: `undefined` takes the field away, what is missing on the way is made. */
export function withPaths<Held extends object>(file: Held, changes: Paths): Held {
  const changed = structuredClone(file);
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() ?? path;
    let holder = changed as Record<string, unknown>;
    for (const key of keys) {
      if (typeof holder[key] !== 'object') holder[key] = {};
      holder = holder[key] as Record<string, unknown>;
    }
    if (value === undefined) delete holder[last];
    else holder[last] = structuredClone(value);
  }
  return changed;
}

function exampleFile(name: string): CaseFile {
  return JSON.parse(readFileSync(new URL(`../../docs/examples/${name}.json`, import.meta.url), 'utf8'));
}

/** A pinhole in a drained 8 in cooling-water header, sealed first; ISO 24817, class 1, 10 years, 6 bar. */
export const leak = exampleFile('cooling-water-leak');

/** External loss on a live 6 in condensate line; ASME PCC-2, class 3, 20 years, 40 bar. */
export const loss = exampleFile('hydrocarbon-line-corrosion');

/** Erosion inside an emptied 6 in bend of five diameters; ISO 24817, class 1, 5 years, 9 bar. */
export const bend = exampleFile('eroded-bend');

/** A slot round an emptied 10 in line; ISO 24817, class 1, 10 years, 2.5 bar. */
export const slot = exampleFile('condenser-leg-slot');

/** Nothing in the line while the work goes on. */
export const emptied: Paths = { line: { state: 'empty, dry, isolated, vented' } };

/** Pressure in the line from the first touch to the cured laminate, with a procedure of the site for it. */
export const live = (pressure: string): Paths => ({
  line: { state: 'under pressure', pressure, writtenProcedure: 'WP-LS-04' },
});

/** The same leak with nothing in the line and nothing put on it first. */
export const emptyLeak = withPaths(leak, {
  seal: undefined,
  ...emptied,
});

/** A plain wall loss without hazards, cycles, filler or a profile; nothing stands in the line while the work goes on. */
export const quietLoss = withPaths(loss, {
  'pipe.outsideDiameter': '168.3 mm',
  'pipe.wallThickness': '7.11 mm',
  'pipe.material.name': 'carbon steel',
  'pipe.material.yieldStrength': '241 MPa',
  'pipe.material.tensileStrength': '414 MPa',
  'pipe.material.allowableStress': '138 MPa',
  'pipe.material.modulus': '207 GPa',
  'pipe.material.thermalExpansion': '12e-6 1/K',
  'service.contents': 'process water',
  'service.designPressure': '40 bar',
  'service.hazards': [],
  'defect.profile': undefined,
  'defect.axialLength': '180 mm',
  'defect.circumferentialWidth': '40 mm',
  'defect.remainingWall': '2 mm',
  'loads.cycles': 'none',
  'defect.readingError': 'none',
  // From inside, so that nothing has to be filled; it does not go on.
  'defect.cause': 'internal erosion',
  'defect.growth': { depth: '0 mm/year', length: '0 mm/year' },
  filler: 'none',
  // Long enough for wraps of many batches, each mixed before it is laid.
  'site.forecast.2.duration': '60 h',
  ...emptied,
});

/** The same at 25 degC from the work to the end: no temperature factor, no mismatch, so that strains are those of the table. */
export const evenLoss = withPaths(quietLoss, {
  'service.designTemperature': '25 degC',
  'site.pipeTemperature': '25 degC',
});

/** A 24 in X52 pipe with 60 per cent of its wall lost, by the method that lets it yield; 50 bar, 4 mm of filler. */
export const yieldedLoss = withPaths(evenLoss, {
  'pipe.outsideDiameter': '609.6 mm',
  'pipe.wallThickness': '9.53 mm',
  'pipe.material.yieldStrength': '359 MPa',
  'pipe.material.tensileStrength': '455 MPa',
  'pipe.material.allowableStress': undefined,
  'defect.axialLength': '300 mm',
  'defect.remainingWall': '3.812 mm',
  'service.designPressure': '50 bar',
  'repair.method': 'substrate yielded',
  filler: withPaths(loss['filler'] as object, { thicknessOverDefect: '4 mm' }),
});
