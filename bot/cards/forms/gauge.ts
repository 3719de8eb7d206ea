import { machineName } from '../../desk/names.js';
import { GaugeAsk, isOfPiece, type Request, type Tension } from '../../request.js';
import { benchFields, benchFilled, benchRead, OTHER } from './bench-field.js';
import { type Field, type Form, MOST_FIELDS } from './form.js';
import { stateChosen, stateField } from './state-field.js';
import { fieldReader, lengthHint, typedAgain } from './typed.js';

/** What the form has no field for is carried along as it was said. */
const Unseen = GaugeAsk.omit({ on: true, rows: true, flatWidth: true, state: true, mass: true, confirmed: true });

const UNSEEN: Readonly<Record<string, (value: string) => string>> = {
  'bench.machine': (name) => machineName({ name }),
  state: (state) => state,
  mass: (mass) => `a weight of ${mass}`,
  unseen: () => 'what else you said of it',
};

export const gaugeForm: Form = {
  title: 'Record a gauge',
  submit: 'Record',
  at: {
    Rows: 'rows',
    Length: 'length',
    'Flat width': 'flatWidth',
    Needles: 'bench.needles',
    needles: 'bench.needles',
    Weight: 'mass',
    row: 'length',
    stitch: 'flatWidth',
  },

  filled(said, known) {
    const gauge = said?.kind === 'record_gauge' ? said.gauge : undefined;
    const on = gauge?.on ?? (isOfPiece(said) ? said.ask?.on : undefined) ?? {};
    const { units } = known;
    const rows = gauge?.rows?.over?.assumed === 'rate' ? undefined : gauge?.rows;
    const unseen = JSON.stringify(Unseen.strip().parse(gauge ?? {}));
    const bench = benchFilled(on, known);
    const hasState = gaugeForm.fields(bench, known).some(({ id }) => id === 'state');
    return {
      ...bench,
      rows: rows === undefined ? '' : String(rows.count),
      length: typedAgain(rows?.over, units),
      flatWidth: typedAgain(gauge?.flatWidth, units),
      state: gauge?.state ?? (hasState ? 'rested' : ''),
      mass: typedAgain(gauge?.mass),
      unseen: unseen === '{}' ? '' : unseen,
    };
  },

  fields: (values, known) => {
    const all: Field[] = [
      ...benchFields(values, known),
      { is: 'text', id: 'rows', label: 'Rows knitted', hint: 'Without the waste rows.' },
      { is: 'text', id: 'length', label: 'Length over those rows', hint: lengthHint(known.units) },
      { is: 'text', id: 'flatWidth', label: 'Flat width', hint: 'Lying flat, edge to edge, not pulled.' },
      stateField('rested'),
      {
        is: 'text',
        id: 'mass',
        label: 'Weight without waste yarn',
        hint: 'Such as 52.4 g. Yarn is told surer with it.',
      },
    ];
    return all.slice(0, MOST_FIELDS);
  },

  unseen: (id, values) => (id in UNSEEN ? UNSEEN[id]?.(values[id] ?? '') : undefined),

  request(values, known) {
    const reader = fieldReader(values, known.units);
    const on = benchRead(values, known, reader);
    const [count, over] = [reader.count('rows'), reader.length('length')];
    const [flatWidth, mass] = [reader.length('flatWidth'), reader.mass('mass')];
    if (known.benches.length > 0 && values.bench === OTHER && on.machine === undefined && on.needles === undefined)
      reader.refuse('bench.needles', 'I need the needles of that machine, or its name.');
    if (count === undefined && over !== undefined) reader.refuse('rows', 'How many rows measured that? I need both.');
    if (count !== undefined && reader.text('length') === '')
      reader.refuse('length', 'How long are those rows? A count and its length make a gauge; neither does alone.');
    if (reader.faults.length > 0) return { ok: false, problems: reader.faults };
    const rows: Tension | undefined = over && count !== undefined ? { count, over, how: 'read' } : undefined;
    const gauge = { ...unseenOf(values), on, rows, flatWidth, mass, state: stateChosen(values.state) };
    const request: Request = { kind: 'record_gauge', gauge };
    return { ok: true, value: request };
  },
};

function unseenOf({ unseen = '' }: Readonly<Record<string, string>>): Partial<GaugeAsk> {
  return unseen === '' ? {} : Unseen.parse(JSON.parse(unseen));
}
