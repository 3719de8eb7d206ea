import { count, length, say, type Words } from '../../../core/index.js';
import type { SharedCounts } from '../../request.js';
import { countsInWords } from './share-letters.js';

/** A difference below this share is none that a maker can tell. */
const ALIKE = 0.005;

/** Both makers' counts side by side, and which spacing parts them by how much. */
export function besideOwner(mine: SharedCounts, theirs: SharedCounts, owner: string): Words[] {
  const beside = say`Beside ${owner}'s: ${inWords(theirs)}. Yours: ${inWords(mine)}.`;
  const why = [...rowsApart(mine, theirs), ...stitchesApart(mine, theirs)];
  if (why.length === 0) return [beside, say`Your spacings are as good as the same.`];
  return [beside, say`Why they differ: ${why.reduce((line, words) => say`${line}; ${words}`)}.`];
}

const percent = (change: number): string => `${Math.max(1, Math.round(Math.abs(change) * 100))}%`;
const mm = (value: number): string => `${value.toFixed(1)} mm`;

function rowsApart(mine: SharedCounts, theirs: SharedCounts): Words[] {
  const change = mine.rowMm / theirs.rowMm - 1;
  if (Math.abs(change) < ALIKE) return [];
  const [way, need] = change < 0 ? ['closer', 'more'] : ['wider apart', 'fewer'];
  return [
    say`your rows are ${percent(change)} ${way} (${mm(mine.rowMm)} against ${mm(theirs.rowMm)}), so you need ${need}`,
  ];
}

function stitchesApart(mine: SharedCounts, theirs: SharedCounts): Words[] {
  const { needles, stitchMm } = mine;
  const change = stitchMm === undefined || theirs.stitchMm === undefined ? 0 : stitchMm / theirs.stitchMm - 1;
  const isOther = needles !== undefined && theirs.needles !== undefined && needles !== theirs.needles;
  return [
    ...(isOther
      ? [say`your tube has ${count(needles, 'needle')} against ${theirs.needles ?? 0}, which no rows can change`]
      : []),
    ...(Math.abs(change) < ALIKE
      ? []
      : [
          say`your stitches are ${percent(change)} ${change < 0 ? 'narrower' : 'wider'} (${mm(stitchMm ?? 0)} against ${mm(theirs.stitchMm ?? 0)})`,
        ]),
  ];
}

/** `142 rows on 60 needles, 8 1/8 in tall`. */
export const inWords = ({ across, ...counts }: SharedCounts): Words =>
  across === undefined
    ? countsInWords(counts)
    : say`${countsInWords(counts)}, ${length(across.mm)} ${across.adjective}`;
