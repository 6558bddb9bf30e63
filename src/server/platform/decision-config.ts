/** What decisions go by, as the business has set it. */
export interface DecisionConfig {
  /** So many hours before the earliest clock the product proposes to report on what is known. */
  readonly leadHours: number;
  /** So many months after it was read, law is to be read again. */
  readonly recheckMonths: number;
}

/**
 * Reads DECISION_LEAD_HOURS (24) and LAW_RECHECK_MONTHS (12).
 * @param faults gets a sentence for each that cannot be used
 */
export function readDecisionConfig(
  environment: Record<string, string | undefined>,
  faults: string[],
): DecisionConfig {
  const whole = (name: string, usual: number, most: number, unit: string): number => {
    const text = environment[name] ?? String(usual);
    const value = Number(text);
    if (/^\d{1,4}$/.test(text) && value >= 1 && value <= most) return value;
    faults.push(`${name} is ${JSON.stringify(text)}: give a whole number of ${unit} from 1 to ${most}.`);
    return usual;
  };
  return {
    leadHours: whole('DECISION_LEAD_HOURS', 24, 240, 'hours'),
    recheckMonths: whole('LAW_RECHECK_MONTHS', 12, 60, 'months'),
  };
}
