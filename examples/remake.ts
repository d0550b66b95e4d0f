/** npm run examples: the example jobs from their surveys, then the README's samples from the example jobs. */
import { readFileSync, writeFileSync } from 'node:fs';
import { writeExamples } from './make.ts';
import { README, readmeWithSamples } from './readme.ts';

for (const path of writeExamples()) console.log(path);
writeFileSync(README, readmeWithSamples(readFileSync(README, 'utf8')));
