import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PlannedTask } from '../../shared/follow-up/plan-tasks.js';
import { type KeptTask, reconcileTasks, TASK_STATES } from '../../shared/follow-up/reconcile-tasks.js';

const planned = (different: Partial<PlannedTask> = {}): PlannedTask => ({
  key: 'insurer-told',
  template: 'insurer-told',
  order: 0,
  title: 'Tell the insurer',
  why: 'Policies ask for it.',
  source: 'Your policy',
  owner: 'manager',
  dueAt: '2026-06-14T04:59:00.000Z',
  dueWhy: 'The day on which we learned of it.',
  evidence: 'Whom, when.',
  escalates: false,
  restsOn: [],
  duty: null,
  ...different,
});
const kept = (different: Partial<KeptTask> = {}): KeptTask => ({
  key: 'insurer-told',
  round: 1,
  state: 'open',
  title: 'Tell the insurer',
  dueAt: '2026-06-14T04:59:00.000Z',
  restsOn: [],
  ...different,
});
const told = (existing: KeptTask[], plan: PlannedTask[]): [string, number, string][] =>
  reconcileTasks(existing, plan).map(({ what, round, why }) => [what, round, why]);

describe('a new plan over the tasks that are there', () => {
  it('adds what is new', () => {
    expect(told([], [planned()])).toEqual([['added', 1, 'The facts call for it.']]);
  });

  it('leaves alone what is as it was, however its time is written', () => {
    expect(told([kept({ dueAt: '2026-06-13T23:59:00-05:00' })], [planned()])).toEqual([]);
  });

  it('supersedes open work that is no longer called for', () => {
    expect(told([kept()], [])).toEqual([
      ['superseded', 1, 'The facts as they stand now no longer call for it.'],
    ]);
  });

  it('never touches work that was done and is no longer called for', () => {
    expect(told([kept({ state: 'done' })], [])).toEqual([]);
  });

  it('does not ask twice for work that was done, even when it would be due at another time now', () => {
    expect(told([kept({ state: 'done' })], [planned({ dueAt: null, title: 'Tell them' })])).toEqual([]);
  });

  it('asks again, in a round of its own, when what the work rested on has grown, and says why', () => {
    const done = kept({ state: 'done', restsOn: ['an injury beyond first aid'] });
    expect(told([done], [planned({ restsOn: ['an injury beyond first aid', 'a death'] })])).toEqual([
      ['added', 2, 'Due again; new since it was done: a death.'],
    ]);
  });

  it('does not ask again when what the work rested on has become less', () => {
    expect(told([kept({ state: 'done', restsOn: ['a death'] })], [planned()])).toEqual([]);
  });

  it('looks at the last round alone', () => {
    const rounds = [kept({ state: 'done' }), kept({ round: 2, state: 'done', restsOn: ['a death'] })];
    expect(told(rounds, [planned({ restsOn: ['a death'] })])).toEqual([]);
    expect(told([...rounds].reverse(), [planned({ restsOn: ['a death'] })])).toEqual([]);
  });

  it('moves the time of open work, and says by what', () => {
    expect(told([kept()], [planned({ dueAt: '2026-06-13T20:00:00.000Z', dueWhy: '48 hours' })])).toEqual([
      ['due-moved', 1, '48 hours'],
    ]);
    expect(told([kept({ dueAt: null })], [planned()])).toHaveLength(1);
  });

  it('follows what open work rests on and is called', () => {
    expect(told([kept()], [planned({ restsOn: ['a death'] })])).toMatchObject([
      ['changed', 1, expect.any(String)],
    ]);
    expect(told([kept()], [planned({ title: 'Tell both insurers' })])).toMatchObject([
      ['changed', 1, expect.any(String)],
    ]);
  });

  it('takes up again what was superseded', () => {
    expect(told([kept({ state: 'superseded' })], [planned()])).toEqual([
      ['revived', 1, 'The facts call for it again.'],
    ]);
  });
});

describe('any tasks and any plan', () => {
  const key = fc.constantFrom('a', 'b', 'c');
  const parts = fc.uniqueArray(fc.constantFrom('x', 'y'));
  const due = fc.constantFrom(null, '2026-06-14T04:59:00.000Z', '2026-06-15T04:59:00.000Z');
  const plan = fc.uniqueArray(
    fc.record({ key, restsOn: parts, dueAt: due }).map((different) => planned(different)),
    { selector: (task) => task.key },
  );
  const before = fc.uniqueArray(
    fc
      .record({
        key,
        restsOn: parts,
        dueAt: due,
        state: fc.constantFrom(...TASK_STATES),
        round: fc.constantFrom(1, 2),
      })
      .map((different) => kept(different)),
    { selector: (task) => `${task.key}${task.round}` },
  );

  it('keep all done work, and are settled after one pass', () => {
    fc.assert(
      fc.property(before, plan, (existing, tasks) => {
        const after = apply(existing, tasks);
        const done = existing.filter(({ state }) => state === 'done');
        expect(after).toEqual(expect.arrayContaining(done));
        expect(reconcileTasks(after, tasks)).toEqual([]);
      }),
    );
  });

  it('leave every planned task open or done', () => {
    fc.assert(
      fc.property(before, plan, (existing, tasks) => {
        const after = apply(existing, tasks);
        for (const task of tasks) {
          const last = after.filter((one) => one.key === task.key).sort((a, b) => b.round - a.round)[0];
          expect(['open', 'done']).toContain(last?.state);
        }
      }),
    );
  });
});

function apply(existing: readonly KeptTask[], tasks: readonly PlannedTask[]): KeptTask[] {
  const byId = new Map(existing.map((task) => [`${task.key} ${task.round}`, task]));
  for (const change of reconcileTasks(existing, tasks)) {
    const taskKey = 'task' in change ? change.task.key : change.key;
    const id = `${taskKey} ${change.round}`;
    if (change.what === 'superseded') {
      const task = byId.get(id);
      if (task !== undefined) byId.set(id, { ...task, state: 'superseded' });
    } else {
      const { title, dueAt, restsOn } = change.task;
      byId.set(id, { key: taskKey, round: change.round, state: 'open', title, dueAt, restsOn });
    }
  }
  return [...byId.values()];
}
