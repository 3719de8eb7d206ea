import { COUNTS_OPEN, IN_HAND, type Rows, type Themes } from './row.js';

const STARTS: Rows = [
  ['start', 'start'],
  ['Start knitting!', 'start'],
  ["let's start", 'start'],
  ['ok start now', 'start'],
  ['begin', 'start'],
  ['cast on now', 'start'],
  ["I'm starting", 'start'],
  ['start the pouch', 'start'],
  ['start again', 'start'],
  ['pouch 11 in wide, start', 'plan pouch width=279.4; start'],
  ['pouch 11 in wide and start', 'plan pouch width=279.4; start'],
  ['start. pouch 11 in wide', 'plan pouch width=279.4; start'],
];

const COUNTED: Rows = [
  ['+1', 'tally by=1'],
  ['+10', 'tally by=10'],
  ['+ 5 rows', 'tally by=5'],
  ['plus 5', 'tally by=5'],
  ['plus ten', 'tally by=10'],
  ['add 5 rows', 'tally by=5'],
  ['-2', 'tally by=-2'],
  ['minus 2', 'tally by=-2'],
  ['next row', 'tally by=1'],
  ['another row', 'tally by=1', IN_HAND],
  ['one more', 'tally by=1', IN_HAND],
  ['10 more', 'tally by=10', IN_HAND],
  ['10 more rows done', 'tally by=10', IN_HAND],
  ['another 10 rows done', 'tally by=10'],
  ['3 rows back', 'tally by=-3'],
  ['pulled back 3 rows', 'tally by=-3'],
  ['unravelled 3 rows', 'tally by=-3'],
  ['60 rows done', 'tally to=60', IN_HAND],
  ['10 rows done', 'tally by=10', IN_HAND],
  ['+1 on the 48', 'tally by=1 machine=48', IN_HAND],
];

const STANDS: Rows = [
  ['row 40', 'tally to=40'],
  ['Row 40.', 'tally to=40'],
  ['at row 40', 'tally to=40'],
  ["I'm at row 40 now", 'tally to=40'],
  ['row sixty', 'tally to=60'],
  ['row one hundred and five', 'tally to=105'],
  ['row 40 of 109', 'tally to=40'],
  ['back to row 38', 'tally to=38'],
  ['no, row 62', 'tally to=62'],
  ['rnd 40', 'tally to=40'],
  ['row 60.5', 'tally to=60.5'],
  ["I'm on 40", 'tally to=40', IN_HAND],
  ['set 40', 'tally to=40', IN_HAND],
  ['set it to 40', 'tally to=40', IN_HAND],
  ['counter says 44', 'tally to=44', IN_HAND],
  ['56', 'tally to=56', IN_HAND],
  ['row 40 on the 48', 'tally to=40 machine=48', IN_HAND],
];

const LOST: Rows = [
  ['I lost count', 'lost_count'],
  ['lost cuont', 'lost_count'],
  ['lost count: the machine says 64, my hand counter 62', 'lost_count machine=64 hand counter=62'],
  ['lost count. machine says 64, hand counter 62', 'lost_count machine=64 hand counter=62'],
  ['lost count, 64 on the machine, 62 on the hand counter', 'lost_count machine=64 hand counter=62'],
  ['machine 64 hand 62', 'lost_count machine=64 hand=62', IN_HAND],
  ['lost count, 12 1/4 hanging', 'lost_count 311.15 hanging'],
  ['lost count, machine 64, it measures 12 1/4 in', 'lost_count machine=64 311.15'],
  ['lost count, somewhere around 64', 'lost_count counter=64'],
];

const SETTLED: Rows = [
  ['keep 64', 'tally to=64 settles', COUNTS_OPEN],
  ['use 62', 'tally to=62 settles', COUNTS_OPEN],
  ['ok 64', 'tally to=64 settles', COUNTS_OPEN],
  ['64', 'tally to=64 settles', COUNTS_OPEN],
  ['64 it is', 'tally to=64 settles', COUNTS_OPEN],
  ['go with 62', 'tally to=62 settles', COUNTS_OPEN],
  ["keep the machine's 64", 'tally to=64 settles', COUNTS_OPEN],
  ['keep 64 rows', 'tally to=64 settles', COUNTS_OPEN],
  ['keep 44', 'tally to=44 settles', IN_HAND],
  ['ok 44', 'tally to=44 settles', IN_HAND],
  ['30 1/4 hanging', 'reply 768.35', COUNTS_OPEN],
  ['12 1/4 at rest', 'lost_count counter=64 counter=62 311.15 rested', COUNTS_OPEN],
];

const STOPS: Rows = [
  ['stay with 109', 'set_stop 109'],
  ['stop at 105', 'set_stop 105'],
  ['stop at row 105', 'set_stop 105'],
  ["I'll stop at one hundred and five", 'set_stop 105'],
  ['use 105', 'set_stop 105', IN_HAND],
  ['keep 109', 'set_stop 109', IN_HAND],
  ['stay with 109 on the 48', 'set_stop 109 machine=48', IN_HAND],
];

export const TALLY_THEMES: Themes = [
  ['a start', STARTS],
  ['rows counted', COUNTED],
  ['the row the work is at', STANDS],
  ['a lost count', LOST],
  ['one of two counts', SETTLED],
  ['a row to stop at', STOPS],
];
