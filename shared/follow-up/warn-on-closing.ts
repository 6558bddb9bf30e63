import type { Duty } from '../determination/determination.js';
import { nameDuty } from '../determination/duty-words.js';

/** Something that speaks against closing an incident now. */
export interface ClosingWarning {
  readonly kind: 'duty-required' | 'duty-open' | 'task-open' | 'claims-clock-runs' | 'craft-held';
  readonly text: string;
}

/**
 * What is unfinished about an incident. It stops nobody: a manager may close with a reason, and sees this first.
 * @param settled ids of required duties that were filed, or decided with counsel
 * @example warnOnClosing({ duties: [], settled: new Set(), openTasks: [], clocks: [], craftHeld: [] }) // []
 */
export function warnOnClosing({
  duties,
  settled,
  openTasks,
  clocks,
  craftHeld,
}: {
  readonly duties: readonly Pick<Duty, 'id' | 'outcome'>[];
  readonly settled: ReadonlySet<string>;
  readonly openTasks: readonly { readonly title: string }[];
  readonly clocks: readonly {
    readonly name: string;
    readonly citation: string;
    readonly endsAt: string | null;
  }[];
  readonly craftHeld: readonly string[];
}): ClosingWarning[] {
  const warnings = duties.flatMap(({ id, outcome }): ClosingWarning[] => {
    if (settled.has(id)) return [];
    if (outcome === 'required') {
      return [{ kind: 'duty-required', text: `Required, and no filing is recorded: ${nameDuty(id, null)}.` }];
    }
    return outcome === 'undetermined'
      ? [{ kind: 'duty-open', text: `Cannot tell yet whether it is due: ${nameDuty(id, null)}.` }]
      : [];
  });
  return [
    ...warnings,
    ...openTasks.map(({ title }): ClosingWarning => ({ kind: 'task-open', text: `Open task: ${title}.` })),
    ...craftHeld.map((name): ClosingWarning => ({ kind: 'craft-held', text: `Still held: ${name}.` })),
    ...clocks.flatMap(({ name, citation, endsAt }): ClosingWarning[] =>
      endsAt === null
        ? []
        : [
            {
              kind: 'claims-clock-runs',
              text: `Still runs, until ${endsAt.slice(0, 10)}: ${name} (${citation}).`,
            },
          ],
    ),
  ];
}
