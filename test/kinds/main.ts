import { readFileSync, writeFileSync } from 'node:fs';
import { withKinds } from './table.js';

writeFileSync('README.md', withKinds(readFileSync('README.md', 'utf8')));
