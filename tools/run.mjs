// Runs a program of this project on the project's own Node: node tools/run.mjs PROGRAM [ARGUMENT ...]
import { ready, run } from './ready.mjs';

const [program, ...args] = process.argv.slice(2);
if (program === undefined) {
  console.error('tools/run.mjs needs the program to run.');
  process.exit(2);
}
process.exit(run(program, args, ready()));
