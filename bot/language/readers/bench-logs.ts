import type { Request } from '../../request.js';

const LOG =
  /^(?:(?:show |list )?(?:me )?(?:my |the )?(?:time|bench|work) logs?|(?:show |list )?(?:me )?(?:my )?logged times?|what (?:times? )?(?:did|have) i log(?:ged)?|(?:show |list )?(?:me )?my times)$/;
const OF_WORK =
  /^(?:how (?:long|much time) did (?:it|that|this|the last one|the \p{L}+) take(?: me)?|what did it take(?: me)?|how long (?:have|did) i spen[dt](?: on (?:it|this|that))?)$/u;

/** What was logged: asked of words without marks. */
export function logAsked(bare: string): Request | undefined {
  if (LOG.test(bare)) return { kind: 'show_log', isOfWork: false };
  return OF_WORK.test(bare) ? { kind: 'show_log', isOfWork: true } : undefined;
}
