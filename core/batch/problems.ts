import { type Calendar, DAY_S, type Day, type Span, works } from './calendar.js';

/** What cannot be scheduled, as data; `who` is the id of a maker. */
export type BatchProblem =
  | { code: 'no_makers' }
  | { code: 'pieces_out_of_range'; given: number; min: number; max: number }
  | { code: 'lead_out_of_range'; given: number; min: number; max: number }
  /** A time for one piece or job that is no time above nothing. */
  | { code: 'no_pace'; who: string; givenS: number }
  | { code: 'rest_out_of_range'; who: string; givenS: number; maxS: number }
  | { code: 'no_hours'; who: string }
  /** Hours of a weekday, 0 for Monday, that end before they begin, overlap, or leave the day. */
  | { code: 'bad_hours'; who: string; weekday: number; spans: readonly Span[] }
  /** Over already, or so far off that it is a slip of the pen. */
  | { code: 'due_day_out_of_range'; dueDay: Day; today: Day; lastDay: Day };

/** More pieces than this are not one batch. */
const MOST_PIECES = 500;
/** A piece that takes longer than this is not one piece. */
const MOST_PACE_S = 400 * 3600;

export const pieceProblems = (given: number): BatchProblem[] =>
  Number.isInteger(given) && given >= 1 && given <= MOST_PIECES
    ? []
    : [{ code: 'pieces_out_of_range', given, min: 1, max: MOST_PIECES }];

/** Nothing is ordered further ahead. */
const MOST_LEAD_DAYS = 365;

export const leadProblems = (given: number): BatchProblem[] =>
  Number.isInteger(given) && given >= 0 && given <= MOST_LEAD_DAYS
    ? []
    : [{ code: 'lead_out_of_range', given, min: 0, max: MOST_LEAD_DAYS }];

// Written so that NaN is no pace either.
export const paceProblems = (who: string, ...seconds: readonly number[]): BatchProblem[] =>
  seconds
    .filter((givenS) => !(givenS > 0 && givenS <= MOST_PACE_S))
    .map((givenS) => ({ code: 'no_pace', who, givenS }));

/** Nothing is planned further ahead: ten years. */
const MOST_DAYS = 3653;

/** A day to be ready that is past, or more than ten years off. */
export function dueProblems(dueDay: Day, today: Day): BatchProblem[] {
  const lastDay = today + MOST_DAYS;
  return dueDay >= today && dueDay <= lastDay ? [] : [{ code: 'due_day_out_of_range', dueDay, today, lastDay }];
}

/** Nothing dries for longer. */
const MOST_REST_S = 31 * DAY_S;

export const restProblems = (who: string, givenS = 0): BatchProblem[] =>
  givenS >= 0 && givenS <= MOST_REST_S ? [] : [{ code: 'rest_out_of_range', who, givenS, maxS: MOST_REST_S }];

/** Hours that overlap or leave the day, and a week without any; `who` makes the batch in them. */
export function calendarProblems(who: string, calendar: Calendar): BatchProblem[] {
  const bad = calendar.weekly.flatMap((spans, weekday): BatchProblem[] =>
    inOrder(spans) ? [] : [{ code: 'bad_hours', who, weekday, spans }],
  );
  return works(calendar) ? bad : [...bad, { code: 'no_hours', who }];
}

const inOrder = (spans: readonly Span[]): boolean =>
  spans.every(({ fromS, toS }, i) => fromS >= (spans[i - 1]?.toS ?? 0) && fromS < toS && toS <= DAY_S);
