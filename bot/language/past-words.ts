export const WEEKDAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
const NUMBER = '(?:\\d{1,2}|an?|two|three|four|five|six)';
/** Words for a day that is over and need no cue: `yesterday`, `last Monday`, `3 days ago`. */
export const PAST_WORDS = `\\b(?:yesterday|last ${WEEKDAY}|${NUMBER} (?:day|week)s? ago)\\b`;
