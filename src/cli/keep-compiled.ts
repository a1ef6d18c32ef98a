import * as nodeModule from 'node:module';

/** From 22.8 on Node keeps what it has compiled for the next start, in the folder of temporary files. */
export function keepCompiled(): void {
  if ('enableCompileCache' in nodeModule) (nodeModule.enableCompileCache as () => unknown)();
}
