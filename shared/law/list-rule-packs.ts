import { BASIS_WORDS } from './name-law-terms.js';
import { packCode } from './pack-code.js';
import type { RulePack } from './rule-pack.js';

/**
 * One line a jurisdiction: how its law was read and from when it is known to have been in force.
 * @example listRulePacks([texas]) // 'Code  Jurisdiction  …\nTX    Texas         2026-11-25  2023-09-01  in the law itself\n'
 */
export function listRulePacks(packs: readonly RulePack[]): string {
  const rows = [
    ['Code', 'Jurisdiction', 'Read on', 'In force', 'Read'],
    ...packs.map((pack) => [
      packCode(pack),
      pack.name,
      pack.readOn,
      pack.effectiveFrom,
      BASIS_WORDS[pack.basis],
    ]),
  ];
  const widths = rows.reduce<number[]>(
    (most, row) => row.map((cell, i) => Math.max(most[i] ?? 0, cell.length)),
    [],
  );
  return rows
    .map(
      (row) =>
        `${row
          .map((cell, i) => cell.padEnd(widths[i] ?? 0))
          .join('  ')
          .trimEnd()}\n`,
    )
    .join('');
}
