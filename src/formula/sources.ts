import type { SourceTag } from './evidence.js';

/** A document that formulas and coefficients come from. */
export interface Source {
  readonly author: string;
  readonly title: string;
  readonly year: number;
  readonly edition?: string;
  readonly doi?: string;
  /** How the document was reached while this library was written. */
  readonly reached: Extract<SourceTag, 'published' | 'secondary' | 'recalled'>;
  readonly note?: string;
}

/** Every source, by the key that declarations use. */
export const sources = {
  'iso-24817': {
    author: 'ISO',
    title: 'ISO 24817, Petroleum, petrochemical and natural gas industries: Composite repairs for pipework',
    year: 2017,
    reached: 'recalled',
    note: 'No body page was seen; coefficients are recalled until a licensed reader confirms them.',
  },
  'asme-pcc-2': {
    author: 'ASME',
    title: 'PCC-2, Repair of Pressure Equipment and Piping, Part 4',
    year: 2018,
    reached: 'recalled',
    note: 'Only the first page of Article 401 was seen as an excerpt.',
  },
  'asme-b31g': {
    author: 'ASME',
    title: 'B31G, Manual for Determining the Remaining Strength of Corroded Pipelines',
    year: 2012,
    reached: 'secondary',
  },
  'asme-b31g-1991': {
    author: 'ASME',
    title: 'B31G, Manual for Determining the Remaining Strength of Corroded Pipelines',
    year: 1991,
    reached: 'secondary',
    note: 'Program runs of Appendix A as carried in an open data package.',
  },
  'asme-b31-3': { author: 'ASME', title: 'B31.3, Process Piping', year: 2018, reached: 'secondary' },
  'asme-b31-4': {
    author: 'ASME',
    title: 'B31.4, Pipeline Transportation Systems for Liquids and Slurries',
    year: 2009,
    reached: 'secondary',
  },
  'asme-b31-8': {
    author: 'ASME',
    title: 'B31.8, Gas Transmission and Distribution Piping Systems',
    year: 2010,
    reached: 'secondary',
  },
  'asme-b36-10': {
    author: 'ASME',
    title: 'B36.10M, Welded and Seamless Wrought Steel Pipe',
    year: 2018,
    reached: 'secondary',
  },
  'asme-b36-19': { author: 'ASME', title: 'B36.19M, Stainless Steel Pipe', year: 2004, reached: 'secondary' },
  'api-5l-43': {
    author: 'API',
    title: 'Specification 5L, Line Pipe',
    year: 2004,
    edition: '43rd',
    reached: 'secondary',
  },
  'api-5l-44': {
    author: 'API',
    title: 'Specification 5L, Line Pipe',
    year: 2007,
    edition: '44th and later',
    reached: 'secondary',
  },
  'api-570': { author: 'API', title: 'API 570, Piping Inspection Code', year: 2016, reached: 'secondary' },
  'api-574': {
    author: 'API',
    title: 'RP 574, Inspection Practices for Piping System Components',
    year: 2016,
    reached: 'secondary',
  },
  'api-579': {
    author: 'API and ASME',
    title: 'API 579-1/ASME FFS-1, Fitness-For-Service',
    year: 2016,
    reached: 'secondary',
  },
  'dnv-rp-f101': { author: 'DNV', title: 'RP-F101, Corroded Pipelines', year: 2004, reached: 'secondary' },
  'cfr-49-192': {
    author: 'US Department of Transportation',
    title: '49 CFR Part 192, Transportation of Natural and Other Gas by Pipeline',
    year: 2025,
    reached: 'published',
  },
  'cfr-49-195': {
    author: 'US Department of Transportation',
    title: '49 CFR Part 195, Transportation of Hazardous Liquids by Pipeline',
    year: 2025,
    reached: 'published',
  },
  'rules-of-thumb': {
    author: 'McAllister, E. W. (ed.)',
    title: 'Pipeline Rules of Thumb Handbook',
    year: 2002,
    reached: 'published',
  },
  'kiefner-vieth-1989': {
    author: 'Kiefner, J. F.; Vieth, P. H.',
    title: 'A Modified Criterion for Evaluating the Remaining Strength of Corroded Pipe, PRCI PR-3-805',
    year: 1989,
    reached: 'recalled',
  },
  hearn: { author: 'Hearn, E. J.', title: 'Mechanics of Materials 1', year: 1997, reached: 'recalled' },
  timoshenko: { author: 'Timoshenko, S.', title: 'Strength of Materials, Part II', year: 1956, reached: 'secondary' },
  bhandari: { author: 'Bhandari, V. B.', title: 'Design of Machine Elements', year: 2010, reached: 'secondary' },
  roark: {
    author: 'Young, W. C.; Budynas, R. G.',
    title: "Roark's Formulas for Stress and Strain",
    year: 2002,
    reached: 'recalled',
  },
  'nasa-tm-83320': {
    author: 'Chamis, C. C.',
    title: 'Simplified Composite Micromechanics Equations, NASA TM-83320',
    year: 1983,
    reached: 'secondary',
  },
  'codata-2018': {
    author: 'Tiesinga, E.; Mohr, P. J.; Newell, D. B.; Taylor, B. N.',
    title: 'CODATA recommended values of the fundamental physical constants: 2018',
    year: 2021,
    doi: '10.1103/RevModPhys.93.025010',
    reached: 'secondary',
  },
  'astm-c1074': {
    author: 'ASTM',
    title: 'C1074, Estimating Concrete Strength by the Maturity Method',
    year: 2019,
    reached: 'secondary',
  },
  'en-1992-1-1': {
    author: 'CEN',
    title: 'EN 1992-1-1, Eurocode 2: Design of concrete structures, Annex B',
    year: 2004,
    reached: 'secondary',
  },
  'iea-1995': {
    author: 'IEA',
    title: 'Third International Mathematics and Science Study, advanced mathematics items',
    year: 1995,
    reached: 'secondary',
    note: 'One item and its solution, as a newspaper printed them.',
  },
  'math-forum-roll': {
    author: 'Math Forum',
    title: 'Length of material on a roll (question and derivation on a web page)',
    year: 2002,
    reached: 'secondary',
    note: 'The year is not certain.',
  },
  'web-wrap-examples': {
    author: 'several',
    title: 'Worked examples of roll length on public web pages',
    year: 2025,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'tape-practice-note': {
    author: 'not named',
    title: 'Note on tape practice after SY/T 0414, pipeline tape coatings (web page)',
    year: 2025,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'coating-tape-wording': {
    author: 'not named',
    title: 'Wording of the AWWA kind on overlaps of coating tape, as a supplier quotes it (web page)',
    year: 2025,
    reached: 'secondary',
    note: 'The year is that of reading; AWWA C209 and C214 themselves were not read.',
  },
  'evans-gibson-2002': {
    author: 'Evans, J. T.; Gibson, A. G.',
    title: 'Composite angle ply laminates and netting analysis, Proceedings of the Royal Society A 458',
    year: 2002,
    reached: 'secondary',
    note: 'Only the abstract was seen; the title is recalled.',
  },
  'web-mixing-examples': {
    author: 'several',
    title: 'Worked examples of resin mixing, coverage and laminate fractions on public web pages',
    year: 2025,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'iso-12215-5': {
    author: 'ISO',
    title: 'ISO 12215-5, Small craft: Hull construction and scantlings, Part 5',
    year: 2008,
    reached: 'recalled',
  },
  'astm-d3171': {
    author: 'ASTM',
    title: 'D3171, Constituent Content of Composite Materials (with D2584 and D2734)',
    year: 2015,
    reached: 'recalled',
  },
  horie: {
    author: 'Horie, K.; Hiura, H.; Sawada, M.; Mita, I.; Kambe, H.',
    title: 'Calorimetric investigation of polymerization reactions. III. Curing reaction of epoxides with amines',
    year: 1970,
    reached: 'recalled',
  },
  'lee-loos-springer-1982': {
    author: 'Lee, W. I.; Loos, A. C.; Springer, G. S.',
    title: 'Heat of reaction, degree of cure, and viscosity of Hercules 3501-6 resin',
    year: 1982,
    reached: 'secondary',
    note: 'Constants as two public programs carry them.',
  },
  'townsend-tou-1980': {
    author: 'Townsend, D. I.; Tou, J. C.',
    title: 'Thermal hazard evaluation by an accelerating rate calorimeter',
    year: 1980,
    reached: 'recalled',
    note: 'The zero-order induction time goes back to Semenov.',
  },
  'frank-kamenetskii': {
    author: 'Frank-Kamenetskii, D. A.',
    title: 'Diffusion and Heat Transfer in Chemical Kinetics',
    year: 1969,
    reached: 'recalled',
  },
  'mechanics-notes': {
    author: 'various',
    title: 'Open lecture notes and program documentation on cylinders, pipe stress and yield criteria',
    year: 2026,
    reached: 'secondary',
    note: 'Seen as excerpts; the year is that of reading.',
  },
  'restrained-line-sheet': {
    author: 'anonymous',
    title: 'Calculation sheet for a restrained gas line after ASME B31.8, 833 (public document store, no. 419684537)',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'b31-3-thickness-sheet': {
    author: 'anonymous',
    title:
      'Project calculation sheet, thickness calculation after ASME B31.3 (public document store, no. 68o2nn59rkop)',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'b31-3-wall-sheet': {
    author: 'anonymous',
    title: 'Wall thickness sheet after ASME B31.3, version 2 (public document store, no. 26029660)',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'cylinder-question': {
    author: 'anonymous',
    title: 'Worked question on a thick cylinder under pressure from both sides (public question site, no. 30129035)',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'math-forum-117014': {
    author: 'anonymous',
    title: 'Mathematics forum, thread 117014: stresses in a thick cylinder',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'scilab-companion-3862': {
    author: 'FOSSEE, IIT Bombay',
    title: 'Scilab Textbook Companion 3862',
    year: 2026,
    reached: 'secondary',
    note: 'Worked examples of a strength-of-materials textbook as code; the year is that of reading.',
  },
  'corrosion-package-tests': {
    author: 'open-source project',
    title:
      'Tests of an open R package for pipeline corrosion (failure pressures by B31G, modified B31G and DNV-RP-F101)',
    year: 2026,
    reached: 'secondary',
    note: 'Values of a program, not of a standard; the year is that of reading.',
  },
  'ffs-validation-record': {
    author: 'open-source project',
    title:
      'Open validation record of fitness-for-service methods: hand calculation, and B31G tables of allowable length',
    year: 2026,
    reached: 'secondary',
  },
  'burst-benchmark-tests': {
    author: 'open-source project',
    title: 'Open test suite and burst benchmark of corroded pipe, with values quoted from papers',
    year: 2026,
    reached: 'secondary',
    note: 'Values of a program unless the locator names a paper; the year is that of reading.',
  },
  'corrosion-analysis-tests': {
    author: 'open-source project',
    title: 'Tests of an open corrosion-analysis program after DNV-RP-F101',
    year: 2026,
    reached: 'secondary',
    note: 'Values of a program; the year is that of reading.',
  },
  'open-ffs-implementation': {
    author: 'open-source project',
    title: 'Open implementation of API 579-1 (2016) procedures: worked example of its documentation',
    year: 2026,
    reached: 'secondary',
    note: 'Values of a program; the year is that of reading.',
  },
  'cai-2022': {
    author: 'Cai, J. et al.',
    title: 'Data archive of burst tests on corroded pipe with predictions by standards',
    year: 2022,
    doi: '10.1007/s11804-022-00263-0',
    reached: 'published',
  },
  'benjamin-2016': {
    author: 'Benjamin, A. C. et al.',
    title: 'Burst tests of pipe with interacting corrosion defects',
    year: 2016,
    reached: 'secondary',
    note: 'Table 9 as quoted in an open test suite; the title is descriptive.',
  },
  'zhou-huang-2012': {
    author: 'Zhou, W.; Huang, G. X.',
    title: 'Model error assessments of burst capacity models for corroded pipelines',
    year: 2012,
    reached: 'secondary',
    note: 'Only the statistics were seen; the title is recalled.',
  },
  'remaining-life-sheet': {
    author: 'anonymous',
    title: 'Remaining-life sheet after API 570 (public document store, no. 387358665)',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'web-cure-examples': {
    author: 'several',
    title: 'Worked answers and application pages on reaction rates and cure on public web pages',
    year: 2026,
    reached: 'secondary',
    note: 'The year is that of reading.',
  },
  'structural-codes-tests': {
    author: 'open-source project',
    title: 'Unit tests of an open library of structural design codes (equivalent age after Model Code and EN 1992-1-1)',
    year: 2026,
    reached: 'secondary',
    note: 'Values of a program; the year is that of reading.',
  },
} as const satisfies Readonly<Record<string, Source>>;

export type SourceKey = keyof typeof sources;
