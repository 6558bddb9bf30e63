/** PostgreSQL cuts a longer name off without a word, and two names may then become one (its manual, "Identifiers"). */
const LONGEST = 63;

/**
 * The name of a rule: what kind, of which table, over which columns. Written into the migration's own statements, so
 * that a violation names the rule in the same words on both engines.
 * @example nameRule('uq', 'account', ['email']) // 'uq_account_email'
 */
export function nameRule(
  kind: 'pk' | 'uq' | 'fk' | 'ck' | 'ix',
  table: string,
  columns: readonly string[],
): string {
  const name = [kind, table, ...columns].join('_');
  if (name.length > LONGEST)
    throw new Error(`${name} is longer than ${LONGEST} characters: give it a short one.`);
  return name;
}
