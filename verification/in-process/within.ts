import { createContext, Script } from 'node:vm';

const context = createContext({});
const script = new Script('act()');

/**
 * What an act comes to, or an error where it has not come to its end by then: a change can keep a loop from ending that passes
 * none of the places where loops are counted.
 */
export function within<T>(milliseconds: number, act: () => T): T {
  context['act'] = act;
  return script.runInContext(context, { timeout: milliseconds }) as T;
}
