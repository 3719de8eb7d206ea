/** A piece with two stages in seconds of work, and seconds that it lies between them: to rest, to dry. */
export type Job = { id: string; knitS: number; finishS: number; restS?: number };

/**
 * The order in which two people, each with one stage, are through with all pieces soonest: first what is knitted
 * faster than finished, quickest to knit first; then the rest, quickest to finish last; ties as they came. A rest counts
 * with both stages.
 *
 * Exact where both work the same hours, all pieces are there at the start, none passes another, and none rests; with
 * rests where work never stops, too.
 * @source Johnson, Nav. Res. Logist. Q. 1 (1954) 61–68; with lags Mitten, Manag. Sci. 5 (1959) 293–298, from memory
 */
export function johnsonOrder<J extends Omit<Job, 'id'>>(jobs: readonly J[]): J[] {
  const first = ({ knitS, restS = 0 }: J): number => knitS + restS;
  const second = ({ finishS, restS = 0 }: J): number => finishS + restS;
  const isQuicker = (job: J): boolean => first(job) < second(job);
  return [
    ...jobs.filter(isQuicker).toSorted((a, b) => first(a) - first(b)),
    ...jobs.filter((job) => !isQuicker(job)).toSorted((a, b) => second(b) - second(a)),
  ];
}
