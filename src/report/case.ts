import type { RepairCase } from '../repair/case/case.js';
import { cureEntries, type Entry, fillerEntries, resinEntries, stockEntries } from './case-materials.js';
import { acceptanceEntries, crewEntries, lineEntries, sealEntries, siteEntries } from './case-work.js';
import type { Block } from './document.js';
import { listBlocks } from './list.js';
import type { ChosenOptions } from './options.js';
import { shownValue } from './shown-value.js';

/** What the case says, as it was typed where that is known. */
export interface CaseOptions extends ChosenOptions {
  readonly typed?: ReadonlyMap<string, { readonly text: string }> | undefined;
}

function rowsOf(entries: readonly Entry[], options: CaseOptions): Block {
  const rows = entries
    .filter(([, , , value]) => value !== undefined)
    .map(([path, label, kind, value]) => {
      const name = path.split('.').at(-1) ?? '';
      return [label, options.typed?.get(path)?.text.trim() ?? shownValue(kind, name, value, options, false)];
    });
  return { sort: 'rows', rows };
}

function pipeEntries({ pipe, service, line }: RepairCase): Entry[] {
  const { material } = pipe;
  return [
    ['pipe.size', 'Size', 'word', pipe.size],
    ['pipe.outsideDiameter', 'Outside diameter', 'length', pipe.outsideDiameter],
    ['pipe.circumference', 'Circumference', 'length', pipe.circumference],
    ['pipe.wallThickness', 'Nominal wall', 'length', pipe.wallThickness],
    ['pipe.material.name', 'Material', 'word', material.name],
    ['pipe.material.yieldStrength', 'Yield strength', 'stress', material.yieldStrength],
    ['pipe.material.tensileStrength', 'Tensile strength', 'stress', material.tensileStrength],
    ['pipe.material.allowableStress', 'Allowable stress', 'stress', material.allowableStress],
    ['pipe.material.modulus', "Young's modulus", 'modulus', material.modulus],
    ['pipe.material.thermalExpansion', 'Thermal expansion', 'thermal expansion', material.thermalExpansion],
    ['service.contents', 'Contents', 'word', `${service.contents}, ${service.phase}`],
    ['service.hazards', 'Hazards', 'word', service.hazards.join(', ') || 'none'],
    ['service.safetyCritical', 'Safety-critical', 'word', service.safetyCritical],
    ['service.designPressure', 'Design pressure', 'gauge pressure', service.designPressure],
    ['service.designTemperature', 'Design temperature', 'temperature', service.designTemperature],
    ['service.lowestTemperature', 'Lowest temperature', 'temperature', service.lowestTemperature],
    ['service.recentPressure.pressure', 'Pressure carried lately', 'gauge pressure', service.recentPressure?.pressure],
    ['service.recentPressure.date', 'read on', 'word', service.recentPressure?.date],
    ...lineEntries(line),
  ];
}

function defectEntries({ defect, loads, fitting, assessment }: RepairCase): Entry[] {
  const growth = defect.growth === 'none' ? undefined : defect.growth;
  const readings = typeof growth?.depth === 'object' ? growth.depth : undefined;
  const cycles = loads.cycles === 'none' ? undefined : loads.cycles;
  return [
    ['defect.kind', 'Defect', 'word', `${defect.kind}, ${defect.cause}`],
    ['defect.axialLength', 'Length along the pipe', 'length', defect.axialLength],
    ['defect.circumferentialWidth', 'Width round the pipe', 'length', defect.circumferentialWidth],
    ['defect.remainingWall', 'Least remaining wall', 'length', defect.remainingWall],
    defect.readingError === 'none'
      ? ['defect.readingError', 'Error of that reading', 'word', 'none']
      : ['defect.readingError', 'Error of that reading', 'length', defect.readingError],
    ['defect.holeDiameter', 'Diameter of the hole', 'length', defect.holeDiameter],
    ['defect.holeAtEndOfLife', 'Hole expected at the end', 'length', defect.holeAtEndOfLife],
    ['defect.growth', 'Growth', 'word', growth === undefined ? 'none' : undefined],
    ['defect.growth.depth', 'Growth in depth', 'corrosion rate', readings === undefined ? growth?.depth : undefined],
    ['defect.growth.depth.previousWall', 'Wall at the last reading', 'length', readings?.previousWall],
    ['defect.growth.depth.sincePrevious', 'Years since that reading', 'time', readings?.sincePrevious],
    ['defect.growth.depth.service', 'Years since the pipe was new', 'time', readings?.service],
    ['defect.growth.length', 'Growth at each end', 'corrosion rate', growth?.length],
    ['loads.axialForce', 'Axial force', 'force', loads.axialForce],
    ['loads.bendingMoment', 'Bending moment', 'moment', loads.bendingMoment],
    ['loads.torsion', 'Torsion', 'moment', loads.torsion],
    ['loads.shearForce', 'Shear force', 'force', loads.shearForce],
    ['loads.externalPressure', 'External pressure', 'gauge pressure', loads.externalPressure],
    ['loads.soil', 'Soil or traffic', 'word', loads.soil],
    ['loads.cycles', 'Pressure cycles', 'word', cycles === undefined ? 'none' : undefined],
    ['loads.cycles.number', 'Pressure cycles', 'count', cycles?.number],
    ['loads.cycles.lowestPressure', 'Lowest in a cycle', 'gauge pressure', cycles?.lowestPressure],
    ['loads.cycles.highestPressure', 'Highest in a cycle', 'gauge pressure', cycles?.highestPressure],
    ['fitting', 'Fitting', 'word', fitting],
    ['assessment.method', 'Strength method named', 'word', assessment?.method],
    ['assessment.flowStress', 'Flow stress named', 'word', assessment?.flowStress],
    ['assessment.safetyFactor', 'Safety factor named', 'number', assessment?.safetyFactor],
    ['assessment.designFactor', 'Design factor', 'number', assessment?.designFactor],
  ];
}

function demandEntries({ repair, laminate }: RepairCase): Entry[] {
  return [
    ['repair.class', 'Repair class', 'count', repair.class],
    ['repair.life', 'Life of the repair', 'time', repair.life],
    ['repair.method', 'Thickness method named', 'word', repair.method],
    ['repair.loading', 'Design load acts', 'word', repair.loading],
    [
      'repair.creditPressureDuringApplication',
      'Credit for that pressure',
      'word',
      repair.creditPressureDuringApplication,
    ],
    ['repair.axialRelief', 'Axial relief', 'word', repair.axialRelief],
    ['repair.leakFactorByFormula', 'Leak factor by formula', 'word', repair.leakFactorByFormula],
    ['repair.availableOverlap', 'Room for the overlap', 'length', repair.availableOverlap],
    ['laminate.name', 'Laminate', 'word', laminate.name],
    ['laminate.hoopModulus', 'Hoop modulus', 'modulus', laminate.hoopModulus],
    ['laminate.axialModulus', 'Axial modulus', 'modulus', laminate.axialModulus],
    ['laminate.poissonRatio', "Poisson's ratio", 'number', laminate.poissonRatio],
    ['laminate.shearModulus', 'Shear modulus', 'modulus', laminate.shearModulus],
    ['laminate.plyThickness', 'Ply thickness', 'length', laminate.plyThickness],
    ['laminate.qualifiedPlies', 'Plies as qualified', 'count', laminate.qualifiedPlies],
    ['laminate.strainToFailure', 'Strain to failure', 'strain', laminate.strainToFailure],
    ['laminate.hoopExpansion', 'Hoop expansion', 'thermal expansion', laminate.hoopExpansion],
    ['laminate.axialExpansion', 'Axial expansion', 'thermal expansion', laminate.axialExpansion],
    ['laminate.glassTransition', 'Glass transition', 'temperature', laminate.glassTransition],
    ['laminate.heatDistortion', 'Heat distortion', 'temperature', laminate.heatDistortion],
    ['laminate.energyReleaseRate', 'Energy release rate', 'energy release rate', laminate.energyReleaseRate],
    ...hotEntries(laminate.atDesignTemperature),
    ['laminate.lapShearStrength', 'Lap shear strength', 'stress', laminate.lapShearStrength],
    ['laminate.longTermStrength.strength', 'Long-term strength', 'stress', laminate.longTermStrength?.strength],
    ['laminate.longTermStrength.test', 'Long-term test', 'word', laminate.longTermStrength?.test],
    ...cureEntries('laminate.cure', laminate.cure),
  ];
}

function hotEntries(hot: RepairCase['laminate']['atDesignTemperature']): Entry[] {
  const path = 'laminate.atDesignTemperature';
  return [
    [`${path}.energyReleaseRate`, 'Energy release rate, hot', 'energy release rate', hot?.energyReleaseRate],
    [`${path}.hoopModulus`, 'Hoop modulus, hot', 'modulus', hot?.hoopModulus],
    [`${path}.axialModulus`, 'Axial modulus, hot', 'modulus', hot?.axialModulus],
  ];
}

/** The case as it was given, part by part: what the design started from. */
export function caseBlocks(repairCase: RepairCase, options: CaseOptions): Block[] {
  const { defect, resin, filler, site, wrap, seal, crew, acceptance } = repairCase;
  const part = (text: string, entries: readonly Entry[]): Block[] => [
    { sort: 'heading', level: 2, text },
    rowsOf(entries, options),
  ];
  const profile = defect.profile ?? [];
  const history = site.history ?? [];
  const forecast = site.forecast ?? [];
  return [
    ...part('Pipe and service', pipeEntries(repairCase)),
    ...part('Defect and loads', defectEntries(repairCase)),
    ...(profile.length === 0
      ? []
      : listBlocks({ name: 'depth profile', columns: { position: 'length', depth: 'length' } }, profile, options)),
    ...part('Repair and laminate', demandEntries(repairCase)),
    ...part('Tape or sheet', stockEntries(wrap)),
    ...(resin === 'none' ? [] : part('Resin mixed on site', resinEntries(resin))),
    ...(filler === 'none' ? [] : part('Filler', fillerEntries(filler))),
    ...(seal === undefined ? [] : part('Leak seal', sealEntries(seal))),
    ...(crew === undefined ? [] : part('Crew', crewEntries(crew))),
    ...(acceptance === undefined ? [] : part('Acceptance', acceptanceEntries(acceptance))),
    ...part('Site', siteEntries(site)),
    ...(history.length === 0
      ? []
      : listBlocks(
          { name: 'steel temperature over the cure', columns: { duration: 'time', temperature: 'temperature' } },
          history,
          options,
        )),
    ...(forecast.length === 0
      ? []
      : listBlocks(
          {
            name: 'forecast from the start of the work',
            columns: {
              duration: 'time',
              pipeTemperature: 'temperature',
              airTemperature: 'temperature',
              relativeHumidity: 'ratio',
            },
          },
          forecast,
          options,
        )),
  ];
}
