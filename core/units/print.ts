import type { Figure, Words } from '../words.js';
import { printedChance } from './chance.js';
import { MM_PER, otherUnits, type Units } from './units.js';

/** How a reader wants figures: their units. */
export type Printing = { units: Units };

/** A number without trailing zeros, at most `digits` behind the point; never `-0`. */
export function plainNumber(value: number, digits = 2): string {
  const text = value.toFixed(digits);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return trimmed === '-0' ? '0' : trimmed;
}

/** Inches as a whole number and a fraction to the nearest eighth: `6 3/4`. */
export function inchFraction(inches: number): string {
  const eighths = Math.round(Math.abs(inches) * 8);
  const sign = inches < 0 && eighths > 0 ? '-' : '';
  const whole = Math.floor(eighths / 8);
  let top = eighths % 8;
  if (top === 0) return `${sign}${whole}`;
  let bottom = 8;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole === 0 ? '' : `${whole} `}${top}/${bottom}`;
}

/** Centimetres to 0.5 over 10 cm and to 0.1 below: never finer than a tape on knitting can show. */
function centimetres(mm: number): string {
  const cm = mm / MM_PER.cm;
  return Math.abs(cm) > 10 ? plainNumber(Math.round(cm * 2) / 2, 1) : plainNumber(cm, 1);
}

const bareLength = (mm: number, units: Units): string =>
  units === 'in' ? inchFraction(mm / MM_PER.in) : centimetres(mm);

/** A dimension in one system: `6 3/4 in`, `17 cm`. */
export const printedLength = (mm: number, units: Units): string => `${bareLength(mm, units)} ${units}`;

/** A range in words, the unit once: `10 1/2 to 11 in`. */
export const printedRange = (loMm: number, hiMm: number, units: Units): string =>
  bareLength(loMm, units) === bareLength(hiMm, units)
    ? printedLength(loMm, units)
    : `${bareLength(loMm, units)} to ${bareLength(hiMm, units)} ${units}`;

/** A dimension in the reader's units, the other system in brackets. */
export const printedBoth = (mm: number, units: Units): string =>
  `${printedLength(mm, units)} (${printedLength(mm, otherUnits(units))})`;

/** Several dimensions, the other system once in brackets at the end: `(27 by 17 cm)`. */
export const printedOthers = (mms: readonly number[], units: Units): string => {
  const other = otherUnits(units);
  return `${mms.map((mm) => bareLength(mm, other)).join(' by ')} ${other}`;
};

const INCHES_A_YARD = 36;
const TWO_YARDS_MM = 2 * MM_PER.yd;

/**
 * A length to leave or cut, rounded up to 5 cm, a whole inch or, over two yards, a tenth of a yard.
 * @param times lengths cut, each rounded up before they are added
 */
export function printedTail(mm: number, units: Units, times = 1): string {
  if (units === 'in') {
    const isLong = mm > TWO_YARDS_MM;
    const each = isLong ? Math.ceil(mm / (MM_PER.yd / 10) - 0.02) / 10 : Math.ceil(mm / MM_PER.in - 0.05);
    const yards = (each * times) / (isLong ? 1 : INCHES_A_YARD);
    return isLong || yards > 2 ? `${plainNumber(Math.ceil(yards * 10 - 1e-9) / 10, 1)} yd` : `${each * times} in`;
  }
  const cm = Math.ceil(mm / 50 - 0.02) * 5 * times;
  return cm >= 100 ? `${plainNumber(cm / 100, 2)} m` : `${cm} cm`;
}

/** A length of yarn in metres or yards: to the tenth under 10, whole above. */
export function printedYarn(m: number, units: Units): string {
  const [value, unit] = units === 'cm' ? [m, 'm'] : [(m * 1000) / MM_PER.yd, 'yd'];
  return atLeastTenth(value, unit);
}

/** To the tenth under 10; what is there and less than a tenth is never printed as none. */
const atLeastTenth = (value: number, unit: string): string =>
  value > 0 && value < 0.05 ? `under 0.1 ${unit}` : `${plainNumber(value, value < 10 ? 1 : 0)} ${unit}`;

/** Grams, to the tenth under 10. */
export const printedMass = (g: number): string => atLeastTenth(g, 'g');

/** A rate of rows or stitches: to the half until three pieces stand behind it, then to one decimal. */
export function printedRate(spacingMm: number, pieces: number, units: Units): string {
  const rate = (units === 'cm' ? 100 : 4 * MM_PER.in) / spacingMm;
  return plainNumber(pieces < 3 ? Math.round(rate * 2) / 2 : rate, 1);
}

function printedFigure(figure: Figure, printing: Printing): string {
  switch (figure.is) {
    case 'length':
      return printedLength(figure.mm, printing.units);
    case 'range':
      return printedRange(figure.loMm, figure.hiMm, printing.units);
    case 'tail':
      return printedTail(figure.mm, printing.units, figure.times);
    case 'mass':
      return printedMass(figure.g);
    case 'count':
      return `${plainNumber(figure.count)} ${figure.count === 1 ? figure.one : figure.many}`;
    case 'number':
      return plainNumber(figure.value);
    case 'chance':
      return printedChance(figure.chance);
    case 'text':
      return figure.text;
    case 'others':
      return printed(figure.words, { ...printing, units: otherUnits(printing.units) });
    case 'words':
    case 'key':
      return printed(figure.words, printing);
  }
}

/** The one printer of sentences: parts and figures in the reader's units. */
export function printed(words: Words, printing: Printing): string {
  return words.parts
    .map((part, i) => {
      const figure = words.figures[i];
      return figure === undefined ? part : part + printedFigure(figure, printing);
    })
    .join('');
}

/** A stretch of a printed sentence; `key` where the short form keeps it. */
export type Run = { text: string; key: boolean };

/** A sentence as {@link printed}, its key words apart from the others. */
export function printedRuns(words: Words, printing: Printing): Run[] {
  const runs: Run[] = [];
  const add = (text: string, key: boolean): void => {
    const last = runs.at(-1);
    if (last?.key === key) last.text += text;
    else if (text !== '') runs.push({ text, key });
  };
  const walk = ({ parts, figures }: Words, key: boolean): void =>
    parts.forEach((part, i) => {
      add(part, key);
      const figure = figures[i];
      if (figure === undefined) return;
      if (figure.is === 'words' || figure.is === 'key') walk(figure.words, key || figure.is === 'key');
      else add(printedFigure(figure, printing), key);
    });
  walk(words, false);
  return runs;
}
