import { benchName } from '../../desk/names.js';
import type { Bench, FormValues } from '../../request.js';
import { capital } from '../names.js';
import type { BenchKnown, Field, Known } from './form.js';
import type { FieldReader } from './typed.js';

/** The option that stands for a machine and yarn not in the list. */
export const OTHER = 'other';

/** So many stand in the list, the ones used last; `other` takes the rest by name. */
const MOST_LISTED = 99;

const nameOf = ({ machine, yarn, tension }: Omit<BenchKnown, 'id'>): string =>
  capital(benchName({ name: machine }, { name: yarn }, tension));

const same = (a: string | undefined, b: string): boolean => a === undefined || a.toLowerCase() === b.toLowerCase();

/** The one of the maker's that is named, the last used where none is; undefined for one that is not theirs yet. */
const named = (on: Bench, { benches }: Known): BenchKnown | undefined =>
  benches
    .slice(0, MOST_LISTED)
    .find(
      (one) =>
        same(on.machine, one.machine) &&
        same(on.yarn, one.yarn) &&
        same(on.tension, one.tension) &&
        (on.machine !== undefined || on.needles === undefined || on.needles === one.needles),
    );

/** What the fields of machine and yarn hold: the one of the maker's own that is meant, else the names said. */
export function benchFilled(on: Bench, known: Known): FormValues {
  const own = named(on, known);
  if (own !== undefined) return { bench: own.id };
  const [last] = known.benches;
  const { yarn, tension } = on;
  const { machine, needles } = on.machine === undefined && on.needles === undefined ? (last ?? on) : on;
  return {
    bench: OTHER,
    'bench.machine': machine ?? '',
    'bench.needles': needles === undefined ? '' : String(needles),
    'bench.yarn': yarn ?? last?.yarn ?? '',
    'bench.tension': tension ?? '',
  };
}

/** The one that was named and is not in the list. */
function benchNamed(values: FormValues): string {
  const name = (id: string): string => values[`bench.${id}`] ?? '';
  const machine = name('machine') || name('needles');
  return machine === ''
    ? 'Another yarn or machine'
    : nameOf({ machine, yarn: name('yarn'), tension: name('tension'), needles: undefined });
}

/** The list alone of the maker's own, and of another where that was named. */
export function benchList(values: FormValues, known: Known): Field {
  const other = values.bench === OTHER ? [{ id: OTHER, label: benchNamed(values) }] : [];
  const options = known.benches.slice(0, MOST_LISTED).map((one) => ({ id: one.id, label: nameOf(one) }));
  return { is: 'select', id: 'bench', label: 'Yarn and machine', options: [...options, ...other] };
}

/** The list of the maker's own, and behind `other` the names of another. */
export function benchFields(values: FormValues, { benches }: Known): Field[] {
  const { bench = OTHER } = values;
  const options = benches.slice(0, MOST_LISTED).map((one) => ({ id: one.id, label: nameOf(one) }));
  const chosen = benches.find(({ id }) => id === bench);
  const list: Field = {
    is: 'select',
    id: 'bench',
    label: 'Yarn and machine',
    redraws: true,
    options: [...options, { id: OTHER, label: 'Another yarn or machine' }],
  };
  const needles: Field = { is: 'text', id: 'bench.needles', label: 'Needles', hint: 'Of the machine, such as 46.' };
  if (benches.length > 0 && bench !== OTHER) return chosen?.needles === undefined ? [list, needles] : [list];
  const yarn: Field = {
    is: 'text',
    id: 'bench.yarn',
    label: 'Yarn',
    hint: 'What you call it, such as grey medium. Empty for one without a name.',
  };
  return benches.length > 0 ? [list, needles, yarn] : [needles, yarn];
}

/** The machine and yarn chosen or named. Needles of a machine that is theirs are those it has. */
export function benchRead(values: FormValues, known: Known, reader: FieldReader): Bench {
  const { bench = OTHER } = values;
  const needles = reader.count('bench.needles');
  if (bench !== OTHER) {
    const chosen = known.benches.find(({ id }) => id === bench);
    if (chosen === undefined) reader.refuse('bench', 'That yarn and machine are no longer yours. Choose another.');
    const { machine, yarn, tension } = chosen ?? {};
    return { machine, yarn, tension, ...(chosen?.needles === undefined && needles !== undefined && { needles }) };
  }
  const [machine, yarn, tension] = [
    reader.text('bench.machine'),
    reader.text('bench.yarn'),
    reader.text('bench.tension'),
  ];
  return {
    ...((yarn !== '' || known.benches.length > 0) && { yarn }),
    ...(machine !== '' && { machine }),
    ...(needles !== undefined && { needles }),
    ...(tension !== '' && { tension }),
  };
}
