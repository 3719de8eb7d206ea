import { describe, expect, test } from 'vitest';
import { benchMeant, isBorrowed, machineMeant, yarnMeant } from '../../../../bot/desk/gauge/bench.js';
import type { Profile } from '../../../../bot/store/ports.js';

const profile = (machine: string, needles: number | undefined, yarn: string): Profile => ({
  id: `${machine}/${yarn}`,
  machine: { id: machine, name: machine, needles },
  yarn: { id: yarn, name: yarn, category: undefined, tex: undefined, since: undefined },
  tension: '',
  usedAt: 0,
});
/** Used last first. */
const PROFILES = [profile('46', 46, 'grey'), profile('Old Blue', 60, 'oat'), profile('46', 46, 'oat')];

describe('the machine meant', () => {
  test.each([
    ['the one used last when none is named', {}, { name: '46', needles: 46 }],
    ['the one named, whatever its case', { machine: 'old blue' }, { name: 'Old Blue', needles: 60 }],
    ['the one with these needles', { needles: 60 }, { name: 'Old Blue', needles: 60 }],
    ['a new one, named by its needles', { needles: 24 }, { name: '24', needles: 24 }],
    ['a new one of this name', { machine: '72' }, { name: '72', needles: undefined }],
  ])('is %s', (_which, on, machine) => {
    expect(machineMeant(on, PROFILES)).toMatchObject(machine);
  });

  test('has no name while a maker has none', () => {
    expect(machineMeant({}, [])).toEqual({ name: '', needles: undefined });
    expect(yarnMeant({}, [])).toBe('');
  });
});

describe('the gauge meant', () => {
  test.each([
    ['that of the machine used last', {}, '46/grey', false],
    ['that of the machine in the yarn named', { machine: '46', yarn: 'Oat' }, '46/oat', false],
    ['that of the machine in its last yarn', { machine: 'old blue' }, 'Old Blue/oat', false],
    ['borrowed, for a machine without one', { machine: '72' }, '46/grey', true],
    ['borrowed in the yarn named', { machine: '72', yarn: 'oat' }, 'Old Blue/oat', true],
  ])('is %s', (_which, on, id, borrowed) => {
    const meant = benchMeant(on, PROFILES);
    const [first] = meant.profiles;
    expect(first?.id).toBe(id);
    expect(first && isBorrowed(first, meant)).toBe(borrowed);
  });

  test('is none in a yarn that was never measured', () => {
    expect(benchMeant({ yarn: 'silk' }, PROFILES).profiles).toEqual([]);
  });
});
