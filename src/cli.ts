#!/usr/bin/env node
import { processIo } from './cli/io.js';
import { main } from './cli/main.js';

main(process.argv.slice(2), processIo).then((code) => {
  process.exitCode = code;
});
