import { type DecisionRules, USUAL_RULES } from '../../../shared/decision/decision.js';

/** What decisions go by, as the business has set it. */
export class DecisionSettings implements DecisionRules {
  constructor(
    /** So many hours before the earliest clock the product proposes to report on what is known. */
    readonly leadHours: number = USUAL_RULES.leadHours,
    /** So many months after it was read, law is to be read again. */
    readonly recheckMonths: number = USUAL_RULES.recheckMonths,
  ) {}
}
