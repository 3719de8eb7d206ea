import { aspects } from '../aspects.js';
import { buttonAndLoopSteps, buttonNotion } from '../finishing/buttons.js';
import { gatherSteps, gatherTail } from '../finishing/gathering.js';
import { castOffSteps, graftTail, looseTail, seamTail } from '../finishing/joining.js';
import { bodySteps, endSteps, startSteps, type Tail, tidySteps } from '../finishing/knitting.js';
import { rectangle } from '../finishing/outline.js';
import { panelGraftSteps, panelSeamSteps, panelSteps, RING, SEAMED, WHOLE } from '../finishing/panel-seam.js';
import { type Asked, type Fabric, type Layout, type Made, piece, type Step } from '../piece.js';
import { done, type Offer, type Outcome, type Problem, refused } from '../problems.js';
import { madeSizeMm } from '../sizing/made-size.js';
import { needlesFor } from '../sizing/needles.js';
import { isReached, isWithin, middleMm, mostNeedles, panelRefused } from '../sizing/panels.js';
import { dimensionMm, type Window } from '../sizing/rows.js';
import { SIDES } from '../sizing/sides.js';
import { seamedWay, sidewaysWay, tubeWay } from '../sizing/sleeves.js';
import { count, key, length, say } from '../words.js';

/** No mug or jar is as little round as this, and few are as far across. From memory. */
const ACROSS_UNDER_MM = 150;

const asks = {
  girth: {
    is: 'length',
    label: 'Girth of the mug or jar',
    question: 'How far is it round the mug or jar at its widest?',
    words: [...aspects.round, 'widest'],
    across: [...aspects.wide, ...aspects.diameter],
    acrossUnderMm: ACROSS_UNDER_MM,
    minMm: 60,
    maxMm: 1200,
  },
  own: {
    is: 'window',
    label: 'Girth of the sleeve',
    words: ['finished'],
    beside: aspects.round,
    minMm: 50,
    maxMm: 1200,
    tolerance: { share: 0.035 },
    source: 'tolerance: from memory',
  },
  height: {
    is: 'window',
    label: 'Height',
    question: 'How tall should the sleeve be?',
    words: [...aspects.tall, ...aspects.long],
    minMm: 30,
    maxMm: 500,
    tolerance: { mm: 5 },
    source: 'tolerance: from memory',
  },
  narrowest: {
    is: 'length',
    label: 'Narrowest girth',
    words: ['narrowest'],
    beside: aspects.round,
    minMm: 40,
    maxMm: 1200,
  },
  handle: {
    is: 'length',
    label: 'Room for the handle',
    words: ['handle', 'handles'],
    beside: [...aspects.wide, ...aspects.tall],
    minMm: 0,
    maxMm: 250,
    defaultMm: 0,
    source: 'no handle unless said',
  },
  base: {
    is: 'choice',
    label: 'Base',
    words: ['base'],
    options: [
      { id: 'open', label: 'open below', words: ['open base', 'no base', 'open below'] },
      { id: 'gathered', label: 'gathered below', words: ['gathered', 'closed base', 'with a base'] },
    ],
    default: 'open',
  },
} as const;
type SleeveAsked = Asked<typeof asks>;
type SleeveMade = Made<typeof asks>;

/** The share of the object's girth that the sleeve has: 3 to 10 % under. From memory. */
const KEEPS = { lo: 0.9, hi: 0.97 };
/** An object tapering to less than this of its girth no sleeve sits on. From memory. */
const LEAST_TAPER = 0.8;
/** Fabric that must be left above a handle. */
const ABOVE_HANDLE_MM = 10;

const outside = (
  id: 'own' | 'narrowest' | 'handle',
  givenMm: number,
  [minMm, maxMm]: readonly [number, number],
  why: ReturnType<typeof say>,
): Problem => ({
  code: 'length_out_of_range',
  field: { id, label: asks[id].label },
  givenMm,
  minMm,
  maxMm,
  why,
  offers: [],
});

type Fit = { girth: Window; height: Window };

/** The windows that the sleeve must end in: its own girth where given, else the object's less its ease. */
function fitted({ girth, own, height, narrowest, handle }: SleeveAsked): Outcome<Fit> {
  const eased = girth === undefined ? own : { loMm: KEEPS.lo * girth, hiMm: KEEPS.hi * girth };
  if (eased === undefined || height === undefined) return refused({ code: 'missing', anyOf: [] });
  const problems: Problem[] = [];
  if (own !== undefined && !isWithin(middleMm(own), eased))
    problems.push(outside('own', middleMm(own), [eased.loMm, eased.hiMm], say`it must grip what it goes round`));
  const aroundMm = girth ?? middleMm(eased);
  if (narrowest !== undefined && !isWithin(narrowest, { loMm: LEAST_TAPER * aroundMm, hiMm: aroundMm }))
    problems.push(
      outside('narrowest', narrowest, [LEAST_TAPER * aroundMm, aroundMm], say`a sleeve slides off a stronger taper`),
    );
  const roomMm = Math.min(height.loMm - ABOVE_HANDLE_MM, eased.loMm / 2);
  if (handle > roomMm)
    problems.push(outside('handle', handle, [0, roomMm], say`some of the sleeve must hold above it and beside it`));
  return problems.length > 0 ? refused(...problems) : done({ girth: own ?? eased, height });
}

/** Radius of a round base this far round. */
const baseMm = (girth: Window): number => middleMm(girth) / (2 * Math.PI);

/** Ways to lay it, best first: rows round it make any girth; a tube has no seam; an upright panel has the longest. */
function layouts(asked: SleeveAsked, fabric: Fabric): Outcome<readonly Layout[]> {
  const fit = fitted(asked);
  if (!fit.ok) return fit;
  const { needles } = fabric;
  const { flat, round: tube = flat } = fabric.stitchMm;
  if (flat === undefined || tube === undefined)
    return refused({ code: 'no_stitch_gauge', field: { id: SIDES.height.id, label: SIDES.height.label } });
  const { girth, height } = fit.value;
  const hasBase = asked.base === 'gathered';
  const most = mostNeedles(needles);
  const sideways = needlesFor(height, WHOLE, flat);
  const upright = needlesFor(girth, SEAMED, flat);
  const sleeve = {
    parts: 1,
    girth: { ...SIDES.girth, window: girth },
    along: { ...SIDES.height, fixedMm: hasBase ? -baseMm(girth) : 0, window: height },
  };
  const round = { ...(asked.handle > 0 ? WHOLE : RING), fixedMm: asked.handle };
  const whySideways = say`laid sideways: its rows make any girth, and it has no long seam`;
  const whyTube = say`a tube: your needles make its girth, without a seam`;
  const whyUpright = say`an upright panel, seamed up one side`;
  const ways: Layout[] = [
    ...(!hasBase && sideways <= most && isReached(sideways * flat, height)
      ? [sidewaysWay(sleeve, sideways, whySideways, round)]
      : []),
    ...(asked.handle === 0 && needles !== undefined && isWithin(needles * tube, girth)
      ? [tubeWay(sleeve, whyTube)]
      : []),
    ...(upright <= most && isWithin(dimensionMm(SEAMED, upright, flat), girth)
      ? [seamedWay(sleeve, upright, whyUpright)]
      : []),
  ];
  return ways.length > 0 ? done(ways) : refused(unfit(asked, fit.value, most, flat));
}

/** No way of laying it fits: the height that the needles make of it sideways, without a base. */
function unfit({ base }: SleeveAsked, { girth, height }: Fit, most: number, stitchMm: number): Problem {
  const sideways = needlesFor(height, WHOLE, stitchMm);
  const [field, window, needles, measure] =
    base === 'open'
      ? ([SIDES.height, height, sideways, WHOLE] as const)
      : ([SIDES.girth, girth, needlesFor(girth, SEAMED, stitchMm), SEAMED] as const);
  const tallMm = Math.min(most, sideways) * stitchMm;
  const edit: Offer['edit'] = { base: null, handle: null, height: { is: 'length', mm: tallMm } };
  const fits = tallMm >= asks.height.minMm && tallMm <= asks.height.maxMm;
  const offers: Offer[] = fits ? [{ label: say`${length(tallMm)} tall, laid sideways and open below`, edit }] : [];
  return panelRefused({ field, window, needles, measure, stitchMm }, most, offers);
}

const heightOf = (made: SleeveMade): number => madeSizeMm(made, SIDES.height.id);
const girthOf = (made: SleeveMade): number => madeSizeMm(made, SIDES.girth.id);

const buttoned = ({ asked, layout }: SleeveMade): boolean => layout.id === 'sideways' && asked.handle > 0;

/** The edges below and above: both cast off, or the first row gathered for a base. */
function ends(made: SleeveMade): Step[] {
  if (made.asked.base === 'open') return castOffSteps(made.needles);
  return [...gatherSteps(made, say`the first row`), ...castOffSteps(made.needles, 'the rim')];
}

function steps(made: SleeveMade): Step[] {
  const { asked, layout, rows, rowMm } = made;
  const first = asked.base === 'open' ? looseTail : gatherTail(girthOf(made));
  const knitted = (start: Tail, end: Tail): Step[] =>
    layout.form === 'round'
      ? [...startSteps(made, start), ...bodySteps(made), ...endSteps(made, end)]
      : panelSteps(made, start, end);
  if (layout.id === 'tube') return [...knitted(first, looseTail), ...ends(made), ...tidySteps(2, 'height')];
  if (buttoned(made)) {
    const closing = buttonAndLoopSteps(heightOf(made));
    return [...knitted(looseTail, looseTail), ...castOffSteps(made.needles), ...closing, ...tidySteps(6, 'girth')];
  }
  if (layout.id === 'sideways')
    return [...knitted(graftTail(made), looseTail), ...panelGraftSteps(made), ...tidySteps(2, 'girth')];
  const open = Math.round(asked.handle / rowMm);
  const beside =
    open > 0
      ? say`; leave ${key`${count(open, 'row')} open`} where the handle is and sew twice across each end of the opening`
      : say``;
  const seam = panelSeamSteps(rows - open, say`the side edges together${beside}`);
  return [...knitted(first, seamTail(rows * rowMm)), ...ends(made), ...seam, ...tidySteps(2, 'height')];
}

export const mugSleeve = piece({
  id: 'mug-sleeve',
  label: 'Mug sleeve',
  words: [
    ...['mug sleeve', 'mug sleeves', 'cup sleeve', 'cup sleeves', 'jar sleeve', 'jar sleeves', 'bottle sleeve'],
    ...['bottle sleeves', 'sleeve', 'sleeves', 'cozy', 'cozies', 'cosy', 'cosies'],
  ],
  nearestTo: [
    {
      words: ['tea cosy', 'tea cosies', 'tea cozy', 'tea cozies', 'teapot cosy', 'teapot cozy', 'teapot cover'],
      lacks: 'openings for a spout and a handle',
    },
    { words: ['egg cosy', 'egg cosies', 'egg cozy', 'egg cozies'], lacks: 'a closed top so small' },
  ],
  goesOn: ['mug', 'mugs', 'cup', 'cups', 'jar', 'jars', 'bottle', 'bottles', 'glass', 'glasses', 'vase', 'vases'],
  asks,
  pair: ['girth', 'height'],
  needs: [['girth', 'own'], ['height']],
  example: 'a sleeve for a jar 26 cm round and 12 cm tall',
  layouts,
  assumes: (made) => {
    const { asked } = made;
    const ease =
      asked.girth === undefined || asked.own !== undefined
        ? []
        : [say`3 to 10% narrower than what it goes round, so that it grips`];
    const gap = say`${length(asked.handle)} left ${buttoned(made) ? 'between its ends' : 'open in the seam'} for the handle`;
    const base =
      asked.base === 'gathered'
        ? [say`a base gathered to its middle, ${length(girthOf(made) / (2 * Math.PI))} of the rows`]
        : [];
    return [...ease, ...(asked.handle > 0 ? [gap] : []), ...base];
  },
  notions: (made) => (buttoned(made) ? [buttonNotion(heightOf(made))] : []),
  steps,
  outline: (made) => {
    const right = { sideways: 'graft', tube: 'fold', panel: 'seam' } as const;
    const bottom = made.asked.base === 'gathered' ? 'gather' : 'edge';
    const side = buttoned(made) ? 'opening' : right[made.layout.id as keyof typeof right];
    return rectangle(girthOf(made) / 2, heightOf(made), { bottom, right: side, top: 'opening', left: 'fold' });
  },
  traits: (made) => (buttoned(made) ? ['holds_hot', 'small_parts'] : ['holds_hot']),
});
