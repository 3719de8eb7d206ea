import type { Piece } from '../../core/index.js';
import type { Bench, Edit, Meaning, PlanAsk, Value } from '../request.js';
import { isAnswer, isOfAnotherPiece, loneReply, withoutPiece } from './answers.js';
import { benchMeanings } from './bench.js';
import type { Context, DueDate } from './context.js';
import { inTurn } from './in-turn.js';
import { type BareUnit, bareUnit } from './lengths.js';
import { onOneBench, withStripes } from './of-all-plans.js';
import { readAllowances } from './readers/allowances.js';
import { bareGaugeIn } from './readers/bare-gauges.js';
import { readBench, readNames, withNeedles } from './readers/bench.js';
import { readChoices } from './readers/choices.js';
import { readContents, thingIn, withoutThickness } from './readers/contents.js';
import { COPIES, isOfEach, readCopies } from './readers/copies.js';
import { readCosts, readRates } from './readers/costs.js';
import { claimFieldWords } from './readers/fields.js';
import { readFocus } from './readers/focus.js';
import { readGauge } from './readers/gauge.js';
import { guessIn } from './readers/guesses.js';
import { readOtherYarn } from './readers/other-yarn.js';
import { readOthers } from './readers/others.js';
import { bodySizes, claimUnsized, readPeople, sizesOfSeveral } from './readers/people.js';
import { readPercents } from './readers/percents.js';
import { isNamedAgain, isOfHand, piecePlaces, readPiece, takesNeedles } from './readers/pieces.js';
import { claimPronouns } from './readers/pronouns.js';
import { readRelative } from './readers/relative.js';
import { readSizePairs } from './readers/size-pairs.js';
import { readSizes } from './readers/sizes.js';
import { claimStrangers } from './readers/strangers.js';
import { isUntold, readStripes } from './readers/stripes.js';
import { readTeam } from './readers/teams.js';
import { countsIn } from './readers/tension.js';
import { unmadeIn } from './readers/unmade.js';
import { squared, wantedParts } from './readers/unsaid.js';
import { oneWeighing } from './readers/weighings.js';
import { asksMachine, machineAsked } from './readers/which-machines.js';
import { hiddenCounts } from './readers/yarn-counts.js';
import { NO_YARN } from './readers/yarns.js';
import { sections } from './sections.js';
import { type Several, severalSizes } from './several.js';
import { freeQuantities, isLeftOver, LEFT_OUT, type Sheet, sheetOf, whichOf, wordAt } from './sheet.js';
import { buyingMeanings, shelfMeanings } from './shelf.js';
import { COUNT_NOUNS, PLAN_WORDS } from './vocabulary.js';
import { workMeanings } from './work.js';

/** What the readers found in one message, before it is known whether it asks, follows up or answers. */
type Found = {
  sheet: Sheet;
  context: Context;
  bare: BareUnit;
  /** True when the words ask for a plan, not only record. */
  intent: boolean;
  on: Bench;
  copies: number | undefined;
  due: PlanAsk['due'];
  team: PlanAsk['team'];
  sizes?: PlanAsk['sizes'];
  /** Pieces measured, in order. */
  records: Meaning[];
};

/** What the tokens of a message mean: records first, then the plans, the follow-up or the answer in it. */
export function meaningsOf(sheet: Sheet, context: Context, day: DueDate | undefined): Meaning[] {
  const quantities = sheet.tokens.flatMap((t) => (t.is === 'quantity' ? [t.quantity] : []));
  const bare = bareUnit(quantities, context.units);
  const isOfMachines = asksMachine(sheet, context);
  const alone = readOtherYarn(sheet, context) ?? readOthers(sheet, context) ?? readRelative(sheet, context, bare);
  if (alone !== undefined) return [alone];
  const weighing = oneWeighing(sheet);
  if (weighing !== undefined) return [{ kind: 'unread', why: 'one_weight', words: weighing }];
  const spun = hiddenCounts(sheet);
  const costs = [...readRates(sheet), ...readCosts(sheet, context)];
  const stripes = readStripes(sheet, context);
  const allowed = readAllowances(sheet, context, bare);
  const buying = buyingMeanings(sheet, context);
  const work = [
    ...costs,
    ...allowed,
    ...buying,
    ...benchMeanings(sheet, context),
    ...shelfMeanings(sheet, context),
    ...workMeanings(sheet, context, bare),
  ];
  for (const i of spun) sheet.uses[i] = undefined;
  const guess = work.some(({ kind }) => kind === 'reading' || kind === 'finish') ? guessIn(sheet) : undefined;
  if (guess !== undefined) return [{ kind: 'unread', why: 'guess', words: guess }];
  const mayChange = context.subjectPiece !== undefined && work.every(({ kind }) => OF_PLAN.includes(kind));
  if (work.length > 0 && stripes === undefined && !mayChange && !hasMore(sheet, context)) return inTurn(work);
  const parts = sections(sheet, context.pieces);
  const read = parts.map((part) => {
    claimPronouns(part);
    return sectionMeanings(part, context, bare, day);
  });
  sheet.uses.splice(0, sheet.uses.length, ...parts.flatMap(({ uses }) => uses));
  const others = read.flat().filter(({ kind }) => work.length === 0 || kind !== 'unread');
  const all = inTurn([...work, ...withStripes(onOneBench(others), stripes)]);
  if (isUntold(sheet) && all.every(({ kind }) => kind === 'unread'))
    return [{ kind: 'unread', why: 'which_stripes', words: sheet.text.trim().slice(0, 50) }];
  return isOfMachines ? machineAsked(all, sheet) : all;
}

/** Asked of the plan in hand: words beside these may change it first. */
const OF_PLAN: readonly Meaning['kind'][] = ['cost', 'buy', 'show_time', 'start'];

/** True when a number, a piece or the rows of a swatch is left to read. */
const hasMore = (sheet: Sheet, { pieces }: Context): boolean =>
  piecePlaces(sheet, pieces).length > 0 ||
  countsIn(sheet).length > 0 ||
  (freeQuantities(sheet).length > 0 && sheet.tokens.some((_, i) => PLAN_WORDS.includes(wordAt(sheet, i) ?? '')));

function sectionMeanings(sheet: Sheet, context: Context, bare: BareUnit, day: DueDate | undefined): Meaning[] {
  const unmade = unmadeIn(sheet, context.pieces);
  if (unmade !== undefined) return [{ kind: 'unread', why: 'not_made', words: unmade }];
  const together = readTeam(sheet, context);
  const named = readPiece(sheet, context.pieces);
  const thing = thingIn(sheet, context);
  const intent =
    sheet.tokens.some((_, i) => PLAN_WORDS.includes(wordAt(sheet, i) ?? '')) ||
    thing?.cue !== undefined ||
    context.command === '/rows';
  const piece = named ?? context.pieces.find((p) => p.id === context.subjectPiece);
  const flat = piece && thing === undefined ? withoutThickness(sheet, piece) : undefined;
  if (flat !== undefined) return [{ kind: 'unread', why: 'two_sides', words: flat }];
  const contents = piece && readContents(sheet, piece, bare, thing);
  const people = piece && readPeople(sheet, piece, context);
  if (named !== undefined) claimStrangers(sheet, context);
  const taken =
    piece === undefined
      ? {}
      : { ...contents, ...readChoices(sheet, piece, named !== undefined), ...readPercents(sheet, piece) };
  const gauge = readGauge(sheet, bare, named, context.swatchRows);
  if (gauge !== undefined && 'conflict' in gauge)
    return [{ kind: 'unread', why: 'contradiction', words: gauge.conflict }];
  const guess = gauge === undefined ? undefined : guessIn(sheet);
  if (guess !== undefined) return [{ kind: 'unread', why: 'guess', words: guess }];
  const bareGauge = bareGaugeIn(sheet);
  if (bareGauge !== undefined) return [{ kind: 'unread', why: 'bare_gauge', words: bareGauge }];

  const ofPersons = piece === undefined ? [] : sizesOfSeveral(sheet, piece, people);
  const bodies = piece === undefined ? {} : ofPersons.length === 1 ? ofPersons[0]?.values : bodySizes(piece, people);
  const isForPerson = ofPersons.length > 0 || Object.keys(bodies ?? {}).length > 0;
  const names = readNames(sheet, context);
  const differIn = named === undefined ? Object.keys(context.sizes?.[0]?.values ?? {}) : [];
  const varied = differIn.length === 1 ? differIn : [];
  const isFollowUp = named === undefined && context.holes.length === 0;
  const lone = { isForPerson, rowsMake: isFollowUp ? (varied[0] ?? context.rowsMake) : undefined, varied };
  // A piece that counts needles of its own has the first claim on them, and on the sizes beside them.
  const isFirst = named !== undefined && gauge === undefined && takesNeedles(named);
  const counted = isFirst ? readCopies(sheet, named, piece) : undefined;
  const first = isFirst ? readSizes(sheet, named, bare, taken, lone) : undefined;
  const on = withNeedles(sheet, names);
  const copies = counted ?? readCopies(sheet, named, piece) ?? together?.copies;
  const measured = gauge?.records ?? onlyNeedles(on, context, intent || named !== undefined);
  const records = measured.map((one): Meaning => ({ kind: 'record_gauge', gauge: { ...one, on } }));
  const due = day && 'day' in day ? { day: day.day, said: day.said, event: day.event } : undefined;
  const found: Found = { sheet, context, bare, intent, on, copies, due, team: together?.team, records };

  if (piece === undefined || (named === undefined && isOfAnotherPiece(sheet, context)))
    return [...records, ...withoutPiece(sheet, context, bare, intent, records.length > 0)];
  if (named === undefined && records.length > 0 && !intent) return records;
  const pairs = first === undefined ? readSizePairs(sheet, piece, bare) : undefined;
  const sizes = first ?? readSizes(sheet, piece, bare, taken, lone);
  if (sizes.tooMany) return [{ kind: 'unread', why: 'too_many_sizes', words: sizes.tooMany }];
  if (sizes.strange) return [{ kind: 'unread', why: 'words', words: sizes.strange }];
  const several: Several = pairs === undefined ? severalSizes(sizes, ofPersons) : { sizes: pairs };
  if (several.why !== undefined) return [{ kind: 'unread', why: several.why, words: several.words ?? '' }];
  const isUnsized = claimUnsized(sheet, piece, people, ofPersons, { ...bodies, ...sizes.values });
  const { [sizes.rivals?.id ?? '']: _, ...shared } = sizes.values;
  const told = squared(sheet, piece, several.sizes === undefined ? sizes.values : shared);
  const given = { ...taken, ...bodies, ...told };
  const values = { ...given, ...wantedParts(sheet, piece, { ...given, ...sizes.values }, named !== undefined) };
  if (intent || named) claimFieldWords(sheet, piece);
  const of = { ...found, sizes: several.sizes, copies: ofEach(copies, several.sizes, sheet) };
  return named === undefined ? followUp(values, of, isUnsized) : newRequest(named, values, of);
}

/**
 * How many of each size. As many pieces as there are sizes are one of each; any other number of several sizes tells
 * nothing of each, unless it was said of each.
 */
function ofEach(copies: number | undefined, sizes: PlanAsk['sizes'], sheet: Sheet): number | undefined {
  if (sizes === undefined || copies === undefined || isOfEach(sheet)) return copies;
  if (copies === sizes.length) return 1;
  for (const [i, use] of sheet.uses.entries()) if (use === COPIES) sheet.uses[i] = LEFT_OUT;
  return undefined;
}

/** A piece is named: a plan for it, unless it is the piece that was measured. */
function newRequest(piece: Piece, values: Record<string, Value | null>, found: Found): Meaning[] {
  const { sheet, context, bare, intent, on, copies, due, team, records, sizes } = found;
  const isSized = sizes !== undefined || Object.keys(values).length > 0;
  const isOrder = !isSized && (copies ?? 1) > 1 && (due ?? team) !== undefined;
  if (isNamedAgain(sheet, piece, context) || (isOrder && isOfHand(piece, context)))
    return [...records, { kind: 'change', edit: editOf(values, found) }];
  const measuring = records.length > 0 || on.needles !== undefined || context.holes[0] === 'gauge';
  if (!intent && measuring && !isComplete(piece, { ...values, ...sizes?.[0]?.values })) {
    const measured = measuredPiece(sheet, context, bare);
    if (measured !== undefined) return measured;
  }
  const ask: PlanAsk = {
    piece: piece.id,
    copies: copies ?? 1,
    values: Object.fromEntries(Object.entries(values).flatMap(([id, value]) => (value === null ? [] : [[id, value]]))),
    ...(sizes && { sizes }),
    on: records.length > 0 ? {} : on,
    focus: readFocus(sheet),
    due,
    ...(team && { team }),
  };
  return [...records, { kind: 'plan', ask }];
}

/** No piece is named: the answer to a question, a change of the plan in hand, or nothing about it. */
function followUp(values: Record<string, Value | null>, found: Found, isUnsized: boolean): Meaning[] {
  const { sheet, context, bare, intent, copies, due, team, records, sizes } = found;
  const sized = Object.keys(values).length > 0 || sizes !== undefined;
  const on = records.length > 0 ? {} : found.on;
  const changes = sized || (records.length === 0 && (copies ?? due ?? team ?? Object.keys(on)[0]) !== undefined);
  // A person of no published size is wanted all the same: the piece asks for what it needs.
  if (!changes && isUnsized) return [...records, { kind: 'change', edit: { values: {}, on: {}, focus: [] } }];
  if (!changes || (sized && isElsewhere(sheet))) {
    return records.length > 0 ? records : withoutPiece(sheet, context, bare, intent, false);
  }
  const answer = values[context.holes[0] ?? ''];
  const isPlain = answer?.given === undefined && answer?.assumed !== 'body';
  if (copies === undefined && isPlain && isAnswer(sheet, context, intent, values))
    return [...records, loneReply(sheet, bare, context)];
  return [...records, { kind: 'change', edit: editOf(values, found) }];
}

/** What a message changes in the plan in hand; a bench that something was measured on is that of the measurement. */
function editOf(values: Record<string, Value | null>, { sheet, records, on, copies, due, team, sizes }: Found): Edit {
  const bench = records.length > 0 ? {} : on;
  return { values, ...(sizes && { sizes }), on: bench, copies, focus: readFocus(sheet), due, ...(team && { team }) };
}

/** Words that point to the plan in hand. */
const POINTING = ['it', 'them', 'these', 'those', 'this', 'that', 'same', 'instead'];

/** True when a size stands among words that nobody knows and nothing points to the plan in hand: `scarf 60 in`. */
const isElsewhere = (sheet: Sheet): boolean =>
  sheet.tokens.some(
    (token, i) => token.is === 'word' && isStrange(sheet, i) && (!/\d/.test(token.word) || isRows(sheet, i + 1)),
  ) && !sheet.tokens.some((_, i) => POINTING.includes(wordAt(sheet, i) ?? ''));

const isRows = (sheet: Sheet, i: number): boolean => COUNT_NOUNS[wordAt(sheet, i) ?? ''] === 'rows';

/** True for a word that nobody knows, but for words of a yarn. */
const isStrange = (sheet: Sheet, i: number): boolean =>
  isLeftOver(sheet, i) && sheet.uses[i] !== NO_YARN && whichOf(sheet, i) === undefined;

/** True when a piece has every size it needs. */
const isComplete = (piece: Piece, values: Record<string, unknown>): boolean =>
  piece.needs.every((group) => group.some((id) => id in values));

/** "46-needle tube, 110 rows, 22 in long, 6 3/4 wide": the piece named is the one measured, its width that of the tube. */
function measuredPiece(sheet: Sheet, context: Context, bare: BareUnit): Meaning[] | undefined {
  const again = sheetOf(sheet.text, sheet.tokens);
  claimPronouns(again);
  const piece = readPiece(again, context.pieces);
  const gauge = readGauge(again, bare, undefined);
  if (gauge === undefined || 'conflict' in gauge) return undefined;
  const on = readBench(again, context);
  if (piece !== undefined) claimFieldWords(again, piece);
  sheet.uses.splice(0, sheet.uses.length, ...again.uses);
  return gauge.records.map((recorded) => ({ kind: 'record_gauge', gauge: { ...recorded, on } }));
}

/** Needles alone are part of the gauge that is asked for, or tell of a machine; else they change the plan in hand. */
function onlyNeedles(on: Bench, context: Context, planning: boolean): object[] {
  if (on.needles === undefined || planning) return [];
  const [hole] = context.holes;
  const alone = hole === undefined && context.subjectPiece === undefined;
  return context.command === '/gauge' || hole === 'gauge' || alone ? [{}] : [];
}
