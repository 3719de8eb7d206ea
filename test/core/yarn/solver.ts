import highsModule from 'highs';
import type { Ware } from '../../../core/yarn/cheapest.js';

// Its types are of a CommonJS module, whose default export Node's own loader already unwraps.
const loadHighs = highsModule as unknown as typeof highsModule.default;

/**
 * A general integer program of the same purchase, solved by HiGHS: a variable a pack, the packs of one ware within its
 * stock. Returns the least cost, or undefined where the need cannot be met.
 */
export async function integerProgram(): Promise<(wares: readonly Ware[], need: number) => number | undefined> {
  const highs = await loadHighs();
  return (wares, need) => {
    const packs = wares.flatMap(({ size, packs }, w) =>
      packs.map(({ count, minor }, p) => ({ name: `x${w}_${p}`, ware: w, count, minor, holds: count * size })),
    );
    const total = (of: (pack: (typeof packs)[number]) => number, some = packs): string =>
      some.map((pack) => `${of(pack)} ${pack.name}`).join(' + ');
    const stocks = wares.flatMap(({ stock }, w) => {
      const own = packs.filter(({ ware }) => ware === w);
      return stock === undefined || own.length === 0 ? [] : [`s${w}: ${total(({ count }) => count, own)} <= ${stock}`];
    });
    const model = [
      'Minimize',
      `cost: ${total(({ minor }) => minor)}`,
      'Subject To',
      `need: ${total(({ holds }) => holds)} >= ${need}`,
      ...stocks,
      'General',
      packs.map(({ name }) => name).join(' '),
      'End',
    ].join('\n');
    const { Status, ObjectiveValue } = highs.solve(model, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 0 });
    if (Status === 'Infeasible') return undefined;
    if (Status !== 'Optimal') throw new Error(`the solver ended ${Status}`);
    return Math.round(ObjectiveValue);
  };
}
