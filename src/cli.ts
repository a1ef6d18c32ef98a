#!/usr/bin/env node
import * as nodeModule from 'node:module';
import { processIo } from './cli/io.js';
import { main } from './cli/main.js';

// From 22.8 on Node keeps what it has compiled for the next start, where it keeps its other caches.
if ('enableCompileCache' in nodeModule) (nodeModule.enableCompileCache as () => unknown)();

main(process.argv.slice(2), processIo).then((code) => {
  process.exitCode = code;
});
