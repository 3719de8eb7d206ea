import { readFileSync, writeFileSync } from 'node:fs';
import { withTalks } from './talks.js';

writeFileSync('README.md', withTalks(readFileSync('README.md', 'utf8')));
