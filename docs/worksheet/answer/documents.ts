import { echoes, encodeDesign } from '../../../src/json/index.js';
import type { UnitSystem } from '../../../src/quantity/index.js';
import { planWork } from '../../../src/repair/index.js';
import { calculationSheet, planHtml, repairDrawing, repairDrawings } from '../../../src/report/index.js';
import type { PlanWindow } from '../../../src/report/page/plan-cards.js';
import { type PlanDocument, runPlanPage } from '../../../src/report/page/run-plan-page.js';
import { element } from '../dom.js';
import type { Outcome } from './outcome.js';
import { layOnPaper } from './paper.js';

/** Level of the first heading in a panel. */
const PANEL_LEVEL = 3;

type Answered = Extract<Outcome, { sort: 'answered' }>;

/** The sheet of a case as the page that the library writes. */
export function sheetPage({ design, decoded }: Answered, units: UnitSystem): string {
  return calculationSheet(design, { format: 'html', units, typed: echoes(decoded.typed) });
}

/** The plan of a case as the page that the library writes. */
export function planPage({ design }: Answered, units: UnitSystem): string {
  return planHtml(planWork(design), { units });
}

/** All drawings of a case as one picture. */
export function drawingFile({ design }: Answered, units: UnitSystem): string | undefined {
  return repairDrawing(design, { units });
}

/** The design as JSON, as the command writes it. */
export function designFile({ design, decoded: { typed, lookUps } }: Answered, units: UnitSystem): string {
  return `${JSON.stringify(encodeDesign(design, { typed, lookUps, units }), null, 2)}\n`;
}

export function showSheet(host: HTMLElement, answered: Answered, units: UnitSystem): void {
  layOnPaper(host, sheetPage(answered, units), PANEL_LEVEL);
}

/** The plan, with its hours: what is entered in it moves what follows, as on its own page. */
export function showPlan(host: HTMLElement, answered: Answered, units: UnitSystem): void {
  const root = layOnPaper(host, planPage(answered, units), PANEL_LEVEL);
  if (root.getElementById('plan') !== null)
    runPlanPage(root as unknown as PlanDocument, () => localStorage, planWindow());
}

/** The window as the plan asks of it; of several plans shown one after the other the last is opened for print. */
function planWindow(): PlanWindow {
  return {
    isNarrow: matchMedia('(max-width: 40rem)').matches,
    beforePrint: (call) => {
      window.onbeforeprint = call;
    },
  };
}

export function showDrawings(host: HTMLElement, { design }: Answered, units: UnitSystem): void {
  const svgs = Object.values(repairDrawings(design, { units })).filter((svg) => svg !== undefined);
  if (svgs.length === 0) {
    host.replaceChildren(element('p', {}, 'Nothing to draw: the design did not get as far as a laminate.'));
    return;
  }
  host.replaceChildren(
    ...svgs.map((svg) => {
      const figure = element('figure');
      figure.append(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement);
      return figure;
    }),
  );
}
