import { done, type Offer, type Outcome, refused, type Tight } from '../problems.js';
import { type Contents, type Need, needsOf, SLIP_IN_MM, type Way } from '../sizing/contents.js';
import type { Window } from '../sizing/rows.js';
import { length, say, type Words } from '../words.js';

/** Asks of a piece that can be sized by what goes in. */
export const taking = {
  contents: {
    is: 'contents',
    label: 'Contents',
    words: ['contents'],
    minMm: 0.5,
    maxMm: 600,
    source: 'ease: common practice',
  },
  turned: {
    is: 'choice',
    label: 'Way up',
    words: ['turned'],
    options: [
      { id: 'either', label: 'whichever fits', words: ['either way up', 'any way up'] },
      { id: 'upright', label: 'upright', words: ['upright', 'standing up', 'long side up', 'on end', 'portrait'] },
      {
        id: 'lying',
        label: 'lying down',
        words: ['lying down', 'lying on its side', 'on its side', 'lying', 'long side across', 'landscape'],
      },
    ],
    default: 'either',
    inName: false,
  },
} as const;

type Asked = { contents: Contents | undefined; turned: string };

/** The most that a size of the piece can be, as asked for or, `wanted` needles being needed, as the needles make it. */
type Limit = { id: string; label: string; mostMm: number | undefined; needsMm: number; wanted?: number };

/** A piece that takes its contents: what is round them, and what bounds its sizes. */
export type Taker = {
  wallMm: number;
  isOpen: boolean;
  needles: number | undefined;
  limits(need: Need): readonly Limit[];
  /** The fabric that a way up takes, in mm². */
  fabricMm2(need: Need): number;
};

export type Taken = { need: Need; because: Words | undefined; assumed: readonly Words[] };

const IN_WORDS: Record<Way, string> = { upright: 'upright', lying: 'lying down' };

/**
 * The way up that takes the contents with the least fabric; undefined where there are none.
 * @param takerOf the piece as it is asked for
 * @param opened the piece with its top left open, where that may be offered
 */
export function taken<A extends Asked>(
  asked: A,
  takerOf: (asked: A) => Taker,
  opened: { asked: A; edit: Offer['edit'] },
): Outcome<Taken | undefined> {
  if (asked.contents === undefined) return done(undefined);
  const taker = takerOf(asked);
  const ways = waysUp(asked, asked.contents, taker);
  const [best, other] = [...ways.filter(({ tight }) => tight === undefined), ...ways.filter(({ tight }) => tight)];
  if (best === undefined || best.tight !== undefined) {
    const [first, ...more] = ways.flatMap(({ tight }) => tight ?? []);
    if (first === undefined) throw new Error('no way up');
    return refused({ code: 'contents_too_big', tight: [first, ...more], offers: offers(asked, takerOf, opened) });
  }
  return done({ need: best.need, because: because(best.need, other), assumed: assumed(best.need, taker) });
}

type WayUp = { need: Need; tight: Tight | undefined };

/** The ways up that may be, the least fabric first, each with what is in its way. */
const waysUp = ({ turned }: Asked, contents: Contents, taker: Taker): WayUp[] =>
  needsOf(contents, taker.wallMm, taker.isOpen)
    .filter(({ way }) => ['either', way].includes(turned))
    .sort((a, b) => taker.fabricMm2(a) - taker.fabricMm2(b))
    .map((need) => ({ need, tight: tightOf(need, taker) }));

function tightOf(need: Need, taker: Taker): Tight | undefined {
  const limit = lacking(need, taker)[0];
  if (limit?.mostMm === undefined) return undefined;
  const { id, label, mostMm, needsMm, wanted } = limit;
  const needles = wanted === undefined || taker.needles === undefined ? undefined : { has: taker.needles, wanted };
  return { way: need.way, field: { id, label }, mostMm, needsMm, needles };
}

const lacking = (need: Need, taker: Taker): Limit[] =>
  taker.limits(need).filter(({ mostMm, needsMm }) => mostMm !== undefined && mostMm <= needsMm);

/** What can be left unsaid, turned or left open so that the contents fit. */
function offers<A extends Asked>(
  asked: A,
  takerOf: (asked: A) => Taker,
  opened: { asked: A; edit: Offer['edit'] },
): Offer[] {
  const { contents } = asked;
  if (contents === undefined) return [];
  const taker = takerOf(asked);
  const given = needsOf(contents, taker.wallMm, taker.isOpen)
    .flatMap((need) => lacking(need, taker))
    .filter(({ wanted }) => wanted === undefined)
    .map(({ id, label }) => ({ id, label: label.toLowerCase() }));
  const fields = given.filter(({ id }, i) => given.findIndex((one) => one.id === id) === i);
  const without = (label: Words, ids: readonly string[]) => ({
    label,
    edit: Object.fromEntries(ids.map((id) => [id, null])),
    asked: { ...asked, ...Object.fromEntries(ids.map((id) => [id, undefined])) },
  });
  const all = fields.map(({ id }) => id);
  const turn = (way: Way) => ({
    label: say`${IN_WORDS[way]}`,
    edit: { turned: { is: 'choice' as const, id: way } },
    asked: { ...asked, turned: way },
  });
  const candidates = [
    ...(asked.turned === 'either' ? [] : [turn(asked.turned === 'lying' ? 'upright' : 'lying')]),
    ...fields.map(({ id, label }) => without(say`without that ${label}`, [id])),
    ...(fields.length > 1 ? [without(say`without those sizes`, all)] : []),
    ...(taker.isOpen ? [] : [{ label: say`a top left open`, ...opened }]),
  ];
  const fits = ({ asked: after }: { asked: A }): boolean =>
    waysUp(after, contents, takerOf(after)).some(({ tight }) => tight === undefined);
  return candidates.filter(fits).map(({ label, edit }) => ({ label, edit }));
}

function because({ way, widthMm }: Need, other: WayUp | undefined): Words | undefined {
  if (other === undefined || other.need.widthMm === widthMm) return undefined;
  const { need, tight } = other;
  if (tight === undefined)
    return say`${IN_WORDS[way]}, which takes the least fabric; say "${need.way}" for one at least ${length(need.widthMm)} wide and ${length(need.heightMm)} tall`;
  const made = tight.needles === undefined ? say`may have` : say`on your needles has`;
  return say`${IN_WORDS[way]}, since ${IN_WORDS[need.way]} it needs ${length(tight.needsMm)} of ${tight.field.label.toLowerCase()} and ${made} ${length(tight.mostMm)}`;
}

const assumed = ({ way }: Need, { wallMm, isOpen }: Taker): Words[] => [
  say`${length(SLIP_IN_MM)} of room to slip it in, its long side ${way === 'upright' ? 'up' : 'across'}, ${isOpen ? 'the top left open' : 'the top closing over it'}, walls ${wallMm} mm thick`,
];

/**
 * A size asked for, from what the contents need on; where none was asked, that and the tolerance over it, and no less
 * than the piece can be.
 */
export function atLeast(
  leastMm: number,
  asked: Window | undefined,
  { minMm, tolerance }: { minMm: number; tolerance: { mm: number } },
): Window {
  if (asked !== undefined) return { loMm: Math.max(asked.loMm, leastMm), hiMm: asked.hiMm };
  const loMm = Math.max(leastMm, minMm);
  return { loMm, hiMm: loMm + tolerance.mm };
}

/** A way up asked for without anything that stands so. */
export const unheld = ({ contents, turned }: Asked): Words[] =>
  contents === undefined && turned !== 'either'
    ? [say`${turned} counts for nothing until I know what it must take`]
    : [];
