import { describe, expect, it } from 'vitest';
import { designOf } from '../../faults/answers.js';
import { quietLoss, withPaths } from '../../faults/cases.js';

/** What each sort of contents can do to people, of which a name says all or the list is asked for. */

const askedOf = (contents: string, hazards: readonly string[]): string | undefined =>
  designOf(withPaths(quietLoss, { 'service.contents': contents, 'service.hazards': hazards })).missing.find(
    ({ field }) => field === 'service.hazards',
  )?.why;

describe('the name of the contents', () => {
  it.each([
    ['flammable', ['gasoline', 'slops', 'condensate', 'natural gas', 'propane', 'hydrogen', 'acetone', 'turpentine']],
    ['flammable', ['isobutane', 'ipa', 'ethyl acetate', 'H2']],
    ['flammable toxic', ['methanol', 'hydrogen sulphide', 'aniline', 'CO', 'CS2', 'HCN']],
    ['flammable toxic corrosive', ['hydrazine', 'epichlorohydrin']],
    ['toxic corrosive', ['ammonia', 'formalin', 'phenol', 'HF']],
    ['toxic', ['phosgene', 'sewage', 'chloroform', 'mercury']],
    ['corrosive', ['caustic', 'potassium hydroxide', 'ferric chloride', 'HNO3']],
    ['hot', ['bitumen', 'steam', 'water of 90 C', 'water of 200 F', 'molten salt']],
    ['hot flammable toxic', ['molten sulphur']],
    ['asphyxiant', ['refrigerant', 'nitrogen', 'CO2']],
  ])('asks for every hazard that it stands for, and for no other: %s', (meant, names) => {
    const hazards = meant.split(' ');
    for (const name of names) {
      const words = hazards.map((hazard) => `"${hazard}"`).join(' and ');
      expect(askedOf(name, [])).toContain(`are called "${name}", which stands for ${words}, and the list`);
      expect(askedOf(name, hazards), name).toBeUndefined();
      for (const hazard of hazards)
        expect(
          askedOf(
            name,
            hazards.filter((each) => each !== hazard),
          ),
          name,
        ).toContain(`stands for "${hazard}", and`);
    }
  });
});
