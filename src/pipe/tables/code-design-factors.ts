import { oneOf, type SourceTag } from '../../formula/index.js';
import type { TableValue } from './table-value.js';

/** Where a gas line lies, by how densely people live along it. */
export type GasCodeLocation = 'class 1, division 1' | 'class 1, division 2' | 'class 2' | 'class 3' | 'class 4';

const gasCodeFactors: Readonly<Record<GasCodeLocation, readonly [number, SourceTag]>> = {
  'class 1, division 1': [0.8, 'recalled'],
  'class 1, division 2': [0.72, 'secondary'],
  'class 2': [0.6, 'secondary'],
  'class 3': [0.5, 'secondary'],
  'class 4': [0.4, 'secondary'],
};

/**
 * Design factor F of B31.8 by location class.
 *
 * @param location location class of the line, class 1 with its division
 * @throws CalculationError `invalid-input`
 * @see ASME B31.8, 841.1
 */
export function gasCodeDesignFactor(location: GasCodeLocation): TableValue {
  oneOf(location, Object.keys(gasCodeFactors) as GasCodeLocation[], 'location');
  const [value, tag] = gasCodeFactors[location];
  return { value, tag, source: { key: 'asme-b31-8', locator: 'Table 841.1.6-1' } };
}

/** What a liquid line is used for, as far as the factor tells it apart. */
export type LiquidCodeService = 'general' | 'slurry' | 'platform or riser';

const liquidCodeFactors: Readonly<Record<LiquidCodeService, readonly [number, SourceTag]>> = {
  general: [0.72, 'secondary'],
  slurry: [0.8, 'recalled'],
  'platform or riser': [0.6, 'recalled'],
};

/**
 * Design factor F of B31.4 by service.
 *
 * @param service what the line is used for
 * @throws CalculationError `invalid-input`
 * @see ASME B31.4, 403.2.1
 */
export function liquidCodeDesignFactor(service: LiquidCodeService): TableValue {
  oneOf(service, Object.keys(liquidCodeFactors) as LiquidCodeService[], 'service');
  const [value, tag] = liquidCodeFactors[service];
  return { value, tag, source: { key: 'asme-b31-4', locator: '403.2.1' } };
}
