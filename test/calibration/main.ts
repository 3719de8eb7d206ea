import { cases, plans } from './cases.js';
import { chiSquareOf, deciles, together, worst } from './deciles.js';
import { drawsFrom } from './draws.js';

const MAKERS = 40_000;
const seed = Number(process.argv[2] ?? 1);
if (!Number.isInteger(seed) || seed < 1) {
  console.error(`The seed is a whole number above 0; read ${process.argv[2]}. Try: npm run calibrate -- 7`);
  process.exit(1);
}

const percent = (share: number): string => (100 * share).toFixed(1).padStart(6);
const line = (...cells: string[]): void => console.log(cells.join('  '));

console.log(`simulated makers, seed ${seed}; chances in per cent\n`);
const tenths = deciles(plans(drawsFrom(seed), MAKERS));
line('stated', 'landed', '  count');
for (const { stated, observed, count } of tenths) line(percent(stated), percent(observed), `${count}`.padStart(7));
line(`worst decile ${percent(worst(tenths)).trim()} points off; chi-square ${chiSquareOf(tenths).toFixed(1)} of 10\n`);

line('stated', 'landed', '  count');
for (const { name, land } of cases) {
  const draw = drawsFrom(seed);
  const { stated, observed, count } = together(Array.from({ length: MAKERS }, () => land(draw)));
  line(percent(stated), percent(observed), `${count}`.padStart(7), name);
}
