import type { Acceptance, Crew, LineAtWork, Seal, Site } from '../repair/case/case.js';
import { cureEntries, type Entry } from './case-materials.js';

/** The line while people work on it. */
export function lineEntries(line: LineAtWork): Entry[] {
  const state: Entry = ['line.state', 'Line during the work', 'word', line.state];
  if (line.state === 'empty, dry, isolated, vented') return [state];
  return [
    state,
    ['line.pressure', 'Pressure during the work', 'gauge pressure', line.pressure],
    ['line.writtenProcedure', 'Written procedure', 'word', line.writtenProcedure],
  ];
}

/** The leak seal, part by part. */
export function sealEntries({ pad, putty, band, fastener, sheet, fluid, ...seal }: Seal): Entry[] {
  const liquid = fluid?.phase === 'liquid' ? fluid : undefined;
  const gas = fluid?.phase === 'gas' ? fluid : undefined;
  const multiple = `${pad.multiple} times the hole, by ${pad.multipleOf === 'not stated' ? 'area or diameter' : pad.multipleOf}`;
  return [
    ['seal.siteLimit', 'Highest pressure on site', 'gauge pressure', seal.siteLimit],
    ['seal.pad.multiple', 'Pad', 'word', multiple],
    ['seal.pad.margin', 'Pad beyond the hole', 'length', pad.margin],
    ['seal.putty.name', 'Putty', 'word', putty.name],
    ...cureEntries('seal.putty.cure', putty.cure),
    ['seal.band.width', 'Band width', 'length', band.width],
    ['seal.band.thickness', 'Band thickness', 'length', band.thickness],
    ['seal.band.strength', 'Band strength', 'stress', band.strength],
    ['seal.band.factor', 'Factor on that strength', 'number', band.factor],
    ['seal.band.friction', 'Friction of the band', 'number', band.friction],
    ['seal.band.count', 'Bands', 'count', band.count],
    ['seal.band.overlap', 'Band for the fastener', 'length', band.overlap],
    ['seal.band.holdingFactor', 'Factor on the leak force', 'number', band.holdingFactor],
    ['seal.fastener.threadDiameter', 'Thread', 'length', fastener.threadDiameter],
    ['seal.fastener.nutFactor', 'Nut factor', 'number', fastener.nutFactor],
    ['seal.fastener.scatter', 'Scatter of the tension', 'ratio', fastener.scatter],
    ['seal.fastener.permittedTension', 'Fastener may carry', 'force', fastener.permittedTension],
    ['seal.sheet.thickness', 'Sheet thickness', 'length', sheet.thickness],
    ['seal.sheet.modulus', 'Sheet modulus', 'modulus', sheet.modulus],
    ['seal.sheet.yieldStrength', 'Sheet yield strength', 'stress', sheet.yieldStrength],
    ['seal.sheet.poissonRatio', "Poisson's ratio, sheet", 'number', sheet.poissonRatio],
    ['seal.sheet.factor', 'Factor on that yield', 'number', sheet.factor],
    ['seal.sheet.support', 'Edge of the sheet', 'word', sheet.support],
    ['seal.pipeFactor', 'Factor on the thinned pipe', 'number', seal.pipeFactor],
    ['seal.fluid.density', 'Density of the liquid', 'density', liquid?.density],
    ['seal.fluid.molarMass', 'Molar mass of the gas', 'molar mass', gas?.molarMass],
    ['seal.fluid.heatCapacityRatio', 'Heat capacity ratio', 'number', gas?.heatCapacityRatio],
    ['seal.fluid.atmosphere', 'Pressure of the air', 'absolute pressure', gas?.atmosphere],
  ];
}

export function crewEntries({ layingSpeed, crews, soakTime, start }: Crew): Entry[] {
  return [
    ['crew.start', 'Start of the work', 'word', start],
    ['crew.crews', 'Crews side by side', 'count', crews],
    ['crew.layingSpeed', 'Laid by one crew', 'speed', layingSpeed],
    ['crew.soakTime', 'Soaking of a roll', 'time', soakTime],
  ];
}

export function acceptanceEntries({ hardnessScale, qualifiedHardness, pressureTest }: Acceptance): Entry[] {
  const test = pressureTest === 'none' ? undefined : pressureTest;
  return [
    ['acceptance.qualifiedHardness', 'Hardness as qualified', 'word', `${qualifiedHardness} ${hardnessScale}`],
    ['acceptance.pressureTest', 'Pressure test', 'word', test === undefined ? 'none' : `with ${test.medium}`],
    ['acceptance.pressureTest.length', 'Line under test', 'length', test?.length],
    ['acceptance.pressureTest.atmosphere', 'Pressure of the air', 'absolute pressure', test?.atmosphere],
  ];
}

export function siteEntries(site: Site): Entry[] {
  const { instruments, surface } = site;
  return [
    ['site.pipeTemperature', 'Temperature of the steel', 'temperature', site.pipeTemperature],
    ['site.airTemperature', 'Temperature of the air', 'temperature', site.airTemperature],
    ['site.relativeHumidity', 'Relative humidity', 'ratio', site.relativeHumidity],
    [
      'site.instruments.temperatureError',
      'Thermometers may be off',
      'temperature difference',
      instruments?.temperatureError,
    ],
    ['site.instruments.humidityError', 'Hygrometer may be off', 'ratio', instruments?.humidityError],
    ['site.surface.grade', 'Surface as prepared', 'word', surface?.grade],
    ['site.surface.profile', 'Profile as measured', 'length', surface?.profile],
    ['site.surface.salts', 'Salts as measured', 'areal weight', surface?.salts],
    ['site.surface.qualified.grade', 'Surface as qualified', 'word', surface?.qualified?.grade],
    ['site.surface.qualified.profile', 'Profile as qualified', 'length', surface?.qualified?.profile],
  ];
}
