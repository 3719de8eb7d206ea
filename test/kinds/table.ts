import { given } from '../../bot/desk/plan/in-use.js';
import { read as readWords } from '../../bot/language/read.js';
import { type Piece, pieces, plan } from '../../core/index.js';
import { MEDIUM, read, tube } from '../core/samples.js';

const BEGINS = '<!-- kinds: made by npm run kinds -->';
export const ENDS = '<!-- /kinds -->';

/** One of each group must be given: `length, and width or needles`. */
const needed = ({ needs, asks }: Piece): string =>
  needs.map((group) => group.map((id) => asks[id]?.label.toLowerCase() ?? id).join(' or ')).join(', and ');

/** What else it can be asked for. */
const optional = ({ needs, asks }: Piece): string => {
  const others = Object.entries(asks).filter(([id]) => !needs.some((group) => group.length === 1 && group[0] === id));
  return others.map(([, ask]) => ask.label.toLowerCase()).join(', ');
};

/** Medium yarn on 46 needles, and bulky on 48: stitches of 9.5 by 6.5 mm. */
const BENCHES = [
  { needles: 46, measurements: MEDIUM },
  { needles: 48, measurements: [tube('bulky', 100, 650, { stitches: read(24, 228) })] },
];

/** The sizes it comes to: those of its own example, as it is read and planned on the first bench that takes it. */
function sizesOf(piece: Piece): string {
  const context = { pieces, units: undefined, machines: [], yarns: [], holes: [] };
  const [meaning] = readWords(piece.example, context).meanings;
  if (meaning?.kind !== 'plan') throw new Error(`"${piece.example}" is not read as a plan`);
  const { values } = meaning.ask;
  const made = BENCHES.map((bench) => plan({ piece, values: given(values), pieces: 1, ...bench })).find(({ ok }) => ok);
  if (made === undefined || !made.ok) throw new Error(`"${piece.example}" comes to no plan`);
  return ['rows', ...made.value.sizes.map(({ label }) => label.toLowerCase())].join(', ');
}

/** The kinds of piece as a table: what each needs, what else it takes, what it gives, and words that ask for it. */
function kindsTable(): string {
  const rows = pieces.map(
    (piece) => `| ${piece.label} | ${needed(piece)} | ${optional(piece)} | ${sizesOf(piece)} | "${piece.example}" |`,
  );
  return ['| kind | needs | takes as well | gives | say |', '|---|---|---|---|---|', ...rows].join('\n');
}

/** A text with the table between its marks made anew. */
export function withKinds(text: string): string {
  const [from, to] = [text.indexOf(BEGINS), text.indexOf(ENDS)];
  if (from < 0 || to < from) throw new Error(`the marks ${BEGINS} and ${ENDS} are not there`);
  return `${text.slice(0, from)}${BEGINS}\n${kindsTable()}\n${text.slice(to)}`;
}
