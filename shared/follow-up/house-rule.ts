/**
 * A rule that rental businesses set themselves. None comes from a law, and none holds before the owner has adopted
 * dated written rules. The values lie in `forms/follow-up/house-rules.json`.
 */
export interface HouseRule {
  readonly id: HouseRuleId;
  readonly text: string;
  /** Common practice, no source. */
  readonly source: string;
  /** With its unit in `unit`; null where the rule has no figure. */
  readonly value: number | null;
  readonly unit: 'ft' | 'years' | null;
}

export const HOUSE_RULE_IDS = [
  'distance-from-craft',
  'distance-from-boats-and-docks',
  'least-depth',
  'anchoring-depth',
  'minors-not-alone',
  'life-jacket-always',
  'lanyard-always',
  'no-towing-in-the-dark',
  'observer-when-towing',
] as const;
export type HouseRuleId = (typeof HOUSE_RULE_IDS)[number];

/** Written rules that the owner adopted, from a local day on. Later ones take the place of earlier ones. */
export interface AdoptedRules {
  /** YYYY-MM-DD. */
  readonly adoptedOn: string;
  /** The written document that says so. */
  readonly document: string;
  readonly rules: readonly { readonly id: HouseRuleId; readonly value: number | null }[];
}

/** What the record shows beside an adopted rule; about the record, never about a person's fault. */
export interface Observation {
  readonly rule: HouseRuleId;
  readonly stands: 'as-adopted' | 'differs' | 'not-known';
  readonly text: string;
}

/**
 * The rules in force on a day; null before any were adopted, and then nothing is compared.
 * @example rulesOn([{ adoptedOn: '2026-05-01', document: 'Dock rules', rules: [] }], '2026-04-30') // null
 */
export function rulesOn(adopted: readonly AdoptedRules[], day: string): AdoptedRules | null {
  return adopted.reduce<AdoptedRules | null>((found, rules) => {
    if (rules.adoptedOn > day) return found;
    return found === null || rules.adoptedOn >= found.adoptedOn ? rules : found;
  }, null);
}
