import type { CalculationSheetOptions } from '../../src/report.js';

/** The entries of the package that make what people read. */
export interface Library {
  readonly root: typeof import('../../src/index.js');
  readonly json: typeof import('../../src/json.js');
  readonly report: typeof import('../../src/report.js');
}

/** A record and not a list, so that the compiler asks for a format that the sheet gains. */
const SHEETS: Record<NonNullable<CalculationSheetOptions['format']>, true> = {
  text: true,
  markdown: true,
  html: true,
  'html-fragment': true,
};

/**
 * ECMAScript leaves the last bits of `exp`, `log` and `pow` to the engine, and V8 has changed them: one call in ten differs
 * by one unit in the last place between Node 20 and a browser of today. All digits of a design cannot be the same there.
 */
const DIGITS = 12;

/** Every document of a case that the library makes, by name. Runs in Node and, bundled, in a page. */
export function documentsOf({ root, json, report }: Library, caseText: string): Readonly<Record<string, string>> {
  const { case: repairCase, typed, lookUps } = json.parseCase(caseText);
  const design = root.designRepair(repairCase, { record: true });
  const plan = root.planWork(design);
  const documents: Record<string, string> = {};
  const encoded = json.encodeDesign(design, { typed, lookUps, digits: DIGITS });
  documents['design as JSON'] = JSON.stringify(encoded, null, 2);
  for (const units of ['si', 'us'] as const) {
    for (const format of Object.keys(SHEETS) as (keyof typeof SHEETS)[]) {
      const options = { format, units, typed: json.echoes(typed) };
      documents[`sheet as ${format}, ${units}`] = report.calculationSheet(design, options);
    }
    documents[`drawing, ${units}`] = report.repairDrawing(design, { units }) ?? 'nothing to draw'.padEnd(501);
    documents[`plan as text, ${units}`] = report.planText(plan, { units });
    documents[`plan as a page, ${units}`] = report.planHtml(plan, { units });
  }
  return documents;
}
