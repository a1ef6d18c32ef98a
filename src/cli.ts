#!/usr/bin/env node
import { processIo } from './cli/io.js';
import { keepCompiled } from './cli/keep-compiled.js';
import { main } from './cli/main.js';

keepCompiled();
main(process.argv.slice(2), processIo).then((code) => {
  process.exitCode = code;
});
