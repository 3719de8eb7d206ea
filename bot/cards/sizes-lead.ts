import type { Piece, Plan } from '../../core/index.js';
import type { ReplyOf } from '../reply.js';
import { LIMITS } from './limits.js';
import { counted, joined } from './names.js';

type Reply = ReplyOf<'sizes'>;

/** `Headbands for heads of 48, 52 and 56 cm`: what is planned, in few enough words for a phone. */
export function title({ piece, sizes }: Reply, plan: Plan, room: number = LIMITS.lead): string {
  const kinds = severalOf(piece);
  const names = unitOnce(sizes.map(({ name }) => name));
  const [size] = sizes;
  const [id = '', ...others] = Object.keys(size?.size.values ?? {});
  const isBody = size?.size.values[id]?.body !== undefined;
  const side = plan.sizes.find((one) => one.id === id);
  const ask = piece.asks[id];
  const [adjective = ''] = side?.adjective.split(' ') ?? [];
  const of = ask?.words.includes(adjective) ? `${names} ${adjective}` : `for ${sidesOf(ask?.label ?? id)} of ${names}`;
  const text = others.length > 0 || isBody ? `${kinds} for ${names}` : `${kinds} ${of}`;
  return text.length <= room ? text : `${kinds} in ${counted(sizes.length, 'size')}`;
}

/** `heads`; `the length round the middle` of a name of several words. */
const sidesOf = (label: string): string =>
  /^\w+$/.test(label) ? `${label.toLowerCase()}s` : `the ${label.toLowerCase()}`;

/** Several of a kind as makers call them: `scarves`; the kind's own name where it has no such word. */
function severalOf({ label, words }: Piece): string {
  const one = label.toLowerCase();
  const many = words.findLast((word) => word !== one && word.startsWith(one.slice(0, -1)) && word.endsWith('s'));
  return many === undefined ? label : label.charAt(0) + many.slice(1);
}

/** `48 cm`, `52 cm` as `48 and 52 cm`: what all end with is said once. */
function unitOnce(names: readonly string[]): string {
  const unit = /^\d[^a-z]* ([a-z]+)$/i.exec(names[0] ?? '')?.[1];
  const numbers = names.map((name) =>
    name.endsWith(` ${unit}`) ? name.slice(0, -1 - (unit?.length ?? 0)) : undefined,
  );
  const bare = numbers.filter((number) => number !== undefined && /^\d[^a-z]*$/i.test(number));
  return unit !== undefined && bare.length === names.length ? `${joined(bare as string[])} ${unit}` : joined(names);
}
