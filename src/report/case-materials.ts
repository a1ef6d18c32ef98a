import type { Kind } from '../quantity/index.js';
import type { CureSheet, Filler, SheetStock, TapeStock, WetLayUp } from '../repair/case/case.js';

/** A line of the case: where it stands in the document, what it is, its kind and its value. */
export type Entry = readonly [path: string, label: string, kind: Kind | 'number' | 'count' | 'word', value: unknown];

export function cureEntries(path: string, cure: CureSheet): Entry[] {
  if (cure.mechanism === 'moisture') {
    return [
      [`${path}.mechanism`, 'Cures by', 'word', 'moisture'],
      ...cure.rows.flatMap(({ temperature, humidity, cureTime, workingTime }, index): Entry[] => [
        [`${path}.rows[${index}].temperature`, `Row ${index + 1}, temperature`, 'temperature', temperature],
        [`${path}.rows[${index}].humidity`, `Row ${index + 1}, humidity`, 'ratio', humidity],
        [`${path}.rows[${index}].cureTime`, `Row ${index + 1}, full cure`, 'time', cureTime],
        [`${path}.rows[${index}].workingTime`, `Row ${index + 1}, working time`, 'time', workingTime],
      ]),
    ];
  }
  return [
    [`${path}.mechanism`, 'Cures by', 'word', cure.mechanism],
    [`${path}.referenceTemperature`, 'Times stated at', 'temperature', cure.referenceTemperature],
    [`${path}.cureTime`, 'Full cure', 'time', cure.cureTime],
    [`${path}.workingTime`, 'Working time', 'time', cure.workingTime],
    [`${path}.activationEnergy`, 'Activation energy', 'activation energy', cure.activationEnergy],
    [`${path}.testedFrom`, 'Tested from', 'temperature', cure.testedFrom],
    [`${path}.testedTo`, 'Tested to', 'temperature', cure.testedTo],
    [`${path}.minimumTemperature`, 'Stalls below', 'temperature', cure.minimumTemperature],
  ];
}

export function stockEntries(stock: TapeStock | SheetStock): Entry[] {
  return [
    ['wrap.form', 'Stock', 'word', stock.form],
    ['wrap.width', 'Width', 'length', stock.width],
    ['wrap.overlap', 'Overlap of turns', 'ratio', stock.form === 'tape' ? stock.overlap : undefined],
    ['wrap.finalLap', 'Final lap', 'length', stock.form === 'sheet' ? stock.finalLap : undefined],
    ['wrap.rollLength', 'Length of a roll', 'length', stock.rollLength],
    ['wrap.waste', 'Waste', 'ratio', stock.waste],
  ];
}

function mixEntries(path: string, stock: WetLayUp | Filler): Entry[] {
  return [
    [`${path}.parts`, 'Parts by mass', 'word', `${stock.parts.base} : ${stock.parts.hardener}`],
    [`${path}.kitMass`, 'Mass of a kit', 'mass', stock.kitMass],
    [`${path}.rate`, 'Rate of the crew', 'mass flow', stock.rate],
    [`${path}.waste`, 'Waste', 'ratio', stock.waste],
  ];
}

export function resinEntries(resin: WetLayUp): Entry[] {
  return [
    ['resin.fabricWeight', 'Fabric weight', 'areal weight', resin.fabricWeight],
    ['resin.fibreMassFraction', 'Fibre, by mass', 'ratio', resin.fibreMassFraction],
    ...mixEntries('resin', resin),
  ];
}

export function fillerEntries(filler: Filler): Entry[] {
  return [
    ['filler.name', 'Filler', 'word', filler.name],
    ['filler.thickness', 'Thickness', 'length', filler.thickness],
    ['filler.thicknessOverDefect', 'Thickness over the defect', 'length', filler.thicknessOverDefect],
    ['filler.density', 'Density', 'density', filler.density],
    ['filler.underWholeWrap', 'Under the whole wrap', 'word', filler.underWholeWrap],
    [
      'filler.qualifiedOverFiller.energyReleaseRate',
      'Energy release rate, on it',
      'energy release rate',
      filler.qualifiedOverFiller?.energyReleaseRate,
    ],
    ...mixEntries('filler', filler),
    ...cureEntries('filler.cure', filler.cure),
  ];
}
